import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import type { ExposureTotals, ProjectExposure } from "../../lib/exposure/exposure-figures.ts";
import { type TotalsText, totalsText } from "../../lib/show/exposure-totals-text.ts";
import { Below, NotKnown } from "../_ui/money-text.tsx";
import { Table } from "../_ui/table.tsx";
import type { Names } from "../_workspace/names-of.ts";

type Words = Awaited<ReturnType<typeof getTranslations<"today">>>;

function toFinish(totals: TotalsText, t: Words) {
  return (
    <>
      {totals.complete ? totals.costToFinish : t("atLeast", { amount: totals.costToFinish })}
      {totals.perOrderCharges ? <Below>{t("charges", { amount: totals.perOrderCharges })}</Below> : null}
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
    toFinish(text, t),
    text.complete ? text.estimate : t("atLeast", { amount: text.estimate }),
    text.budget ?? <NotKnown>{t("noBudget")}</NotKnown>,
    variance(text, t),
    `± ${text.tenPercent}`,
  ];
}

/** Projects with what is locked in, what finishing costs, and how that stands against the budget. totals: their sum. */
export async function ProjectsTable({
  projects,
  totals,
  names,
}: Readonly<{ projects: readonly ProjectExposure[]; totals: ExposureTotals | null; names: Names }>) {
  const t = await getTranslations("today");
  const locale = await getLocale();
  const columns = ["lockedIn", "toFinish", "estimate", "budget", "variance", "tenPercent"] as const;
  return (
    <Table
      caption={t("jobs")}
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
      foot={totals && projects.length > 1 ? [t("all"), ...cells(totals, locale, t)] : undefined}
    />
  );
}
