import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import type { ExposureTotals, WorkspaceExposure } from "../../lib/exposure/exposure-figures.ts";
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

/** Every job with what is locked in, what finishing costs, and how that stands against its budget. */
export async function ProjectsTable({
  exposure,
  names,
}: Readonly<{ exposure: WorkspaceExposure; names: Names }>) {
  const t = await getTranslations("today");
  const locale = await getLocale();
  const columns = ["lockedIn", "toFinish", "estimate", "budget", "variance", "tenPercent"] as const;
  return (
    <Table
      caption={t("inCurrency", { currency: exposure.totals.costToFinish.currency })}
      captionHidden
      least="46rem"
      columns={[
        { key: "project", label: t("project") },
        ...columns.map((key) => ({ key, label: t(key), figures: true })),
      ]}
      rows={exposure.projects.map((project) => ({
        key: project.projectId,
        cells: [
          <Link key="name" href={`/projects/${project.projectId}`}>
            {names.project(project.projectId)}
          </Link>,
          ...cells(project.totals, locale, t),
        ],
      }))}
      foot={exposure.projects.length > 1 ? [t("all"), ...cells(exposure.totals, locale, t)] : undefined}
    />
  );
}
