import { getLocale, getTranslations } from "next-intl/server";
import type { ProjectExposure } from "../../../lib/exposure/exposure-figures.ts";
import { type TotalsText, totalsText } from "../../../lib/show/exposure-totals-text.ts";
import { restsText } from "../../../lib/show/to-buy.ts";
import { NotKnown } from "../../_ui/money-text.tsx";
import { Notice } from "../../_ui/notice.tsx";
import { KeyFigures, Part } from "../../_ui/page-head.tsx";
import { said } from "../../_ui/said.tsx";

type Words = Awaited<ReturnType<typeof getTranslations<"projects">>>;

function againstBudget({ variance, budget, unpricedLines }: TotalsText, t: Words) {
  if (budget === null) return { value: <NotKnown>{t("noBudget")}</NotKnown>, note: null };
  const note = t("ofBudget", { budget });
  if (variance === null)
    return { value: <NotKnown>{t("notWhole", { lines: unpricedLines })}</NotKnown>, note };
  if (variance.side === "on") return { value: t("onBudget"), note };
  return {
    value: variance.amount,
    note: `${variance.side === "under" ? t("under") : t("overBudget")}, ${note}`,
  };
}

/** The job in five figures, and in sentences what they rest on. */
export async function WholeJob({ project }: Readonly<{ project: ProjectExposure }>) {
  const t = await getTranslations("projects");
  const locale = await getLocale();
  const totals = totalsText(project.totals, locale);
  const rests = restsText(project, locale);
  const least = totals.complete ? null : t("atLeastBelow");
  const budget = againstBudget(totals, t);
  return (
    <Part title={t("exposed")} note={t("inCurrency", { currency: totals.currency })}>
      <KeyFigures
        figures={[
          { key: "locked", label: t("lockedCost"), value: totals.lockedCost, note: t("lockedNote") },
          {
            key: "finish",
            label: t("costToFinish"),
            value: totals.costToFinish,
            note:
              least ?? (totals.perOrderCharges ? t("plusCharges", { amount: totals.perOrderCharges }) : null),
          },
          {
            key: "ten",
            label: t("tenPercent"),
            value: `± ${totals.tenPercent}`,
            note: t("tenPercentNote"),
          },
          { key: "estimate", label: t("estimate"), value: totals.estimate, note: least },
          { key: "variance", label: t("variance"), value: budget.value, note: budget.note },
        ]}
      />
      {totals.unpricedLines > 0 ? (
        <Notice tone="warn">
          <p>{t("unpricedSentence", { lines: totals.unpricedLines })}</p>
        </Notice>
      ) : null}
      {rests.lapsing ? (
        <Notice>
          <p>
            {t.rich("lapsingSentence", { amount: rests.lapsing, b: said })}{" "}
            {rests.withoutLapsing === null
              ? t("lapsingUncovered")
              : t.rich("lapsingMore", { more: rests.withoutLapsing, b: said })}
          </p>
        </Notice>
      ) : null}
      {rests.stale ? (
        <Notice tone="warn">
          <p>{t.rich("staleSentence", { amount: rests.stale, b: said })}</p>
        </Notice>
      ) : null}
      {totals.unrealisedSaving ? (
        <p>{t.rich("unrealisedSentence", { figure: totals.unrealisedSaving, b: said })}</p>
      ) : null}
    </Part>
  );
}
