import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import type { ExposureTotals, ProjectExposure } from "../../lib/exposure/exposure-figures.ts";
import { type TotalsText, totalsText } from "../../lib/show/exposure-totals-text.ts";
import { Below, NotKnown } from "../_ui/money-text.tsx";
import { Table } from "../_ui/table.tsx";
import type { Names } from "../_workspace/names-of.ts";

type Words = Awaited<ReturnType<typeof getTranslations<"today">>>;

/** A sum that is not whole says so below itself, so that the figures stay in line. */
function summed(amount: string, totals: TotalsText, t: Words) {
  return (
    <>
      {amount}
      {totals.complete ? null : <Below>{t("atLeastBelow")}</Below>}
    </>
  );
}

function variance(totals: TotalsText, t: Words) {
  if (totals.variance === null)
    return <NotKnown>{totals.budget === null ? t("noBudget") : t("incomplete")}</NotKnown>;
  if (totals.variance.side === "on") return t("on");
  return (
    <>
      {totals.variance.amount} <Below>{t(totals.variance.side)}</Below>
    </>
  );
}

function cells(totals: ExposureTotals, locale: string, t: Words) {
  const text = totalsText(totals, locale);
  return [
    text.lockedCost,
    <>
      {summed(text.costToFinish, text, t)}
      {text.perOrderCharges ? <Below>{t("charges", { amount: text.perOrderCharges })}</Below> : null}
    </>,
    summed(text.estimate, text, t),
    text.budget ?? <NotKnown>{t("noBudget")}</NotKnown>,
    variance(text, t),
    `± ${text.tenPercent}`,
  ];
}

export type ProjectsTableProps = Readonly<{
  caption: string;
  projects: readonly ProjectExposure[];
  names: Names;
  /** Their sum, for the foot; null: no foot. */
  totals?: ExposureTotals | null;
}>;

/** Projects with what is locked in, what finishing costs, and how that stands against the budget. */
export async function ProjectsTable({ caption, projects, names, totals = null }: ProjectsTableProps) {
  const t = await getTranslations("today");
  const locale = await getLocale();
  const columns = ["lockedIn", "toFinish", "estimate", "budget", "variance", "tenPercent"] as const;
  return (
    <Table
      caption={caption}
      captionHidden
      cards
      least="46rem"
      columns={[
        { key: "project", label: t("project") },
        ...columns.map((key) => ({ key, label: t(key), figures: true })),
      ]}
      rows={projects.map((project) => ({
        key: project.projectId,
        cells: [
          <Link key="name" href={`/projects/${project.projectId}`}>
            {names.project(project.projectId)}
          </Link>,
          ...cells(project.totals, locale, t),
        ],
      }))}
      foot={totals && projects.length > 1 ? [t("allLive"), ...cells(totals, locale, t)] : undefined}
    />
  );
}
