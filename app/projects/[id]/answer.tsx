import { getLocale, getTranslations } from "next-intl/server";
import type { ProjectExposure } from "../../../lib/exposure/exposure-figures.ts";
import type { ProjectStatus } from "../../../lib/projects/project.ts";
import { totalsText } from "../../../lib/show/exposure-totals-text.ts";
import { said } from "../../_ui/said.tsx";

/** The one question of a project's page: what is still to buy, what is locked in, and how that stands to the budget. */
export async function Answer({
  project,
  status,
}: Readonly<{ project: ProjectExposure; status: ProjectStatus | null }>) {
  const t = await getTranslations("projects");
  const totals = totalsText(project.totals, await getLocale());
  if (project.lines.length === 0) return t("notStarted");
  const { variance } = totals;
  const budget = { under: "budgetUnder", over: "budgetOver", on: "budgetOn" } as const;
  const stand =
    variance === null
      ? totals.budget === null
        ? null
        : t("budgetUnknown", { lines: totals.unpricedLines })
      : t.rich(budget[variance.side], { about: variance.about, b: said });
  return (
    <>
      {status === null || status === "live" ? null : `${t(`statusSaid.${status}`)} `}
      {totals.nothingToBuy
        ? t.rich("done", { locked: totals.lockedCost, currency: totals.currency, b: said })
        : t.rich("stillToBuy", {
            complete: totals.complete ? "yes" : "no",
            amount: totals.costToFinish,
            currency: totals.currency,
            locked: totals.lockedCost,
            b: said,
          })}{" "}
      {stand}
    </>
  );
}
