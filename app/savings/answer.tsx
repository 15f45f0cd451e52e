import { getLocale, getTranslations } from "next-intl/server";
import type { SavingsReport } from "../../lib/savings/savings-figures.ts";
import { savingTotalsText } from "../../lib/show/savings-rows.ts";
import { said } from "../_ui/said.tsx";

/** Saved or lost, in both measures, and what is not realised yet. */
export async function Answer({ report }: Readonly<{ report: SavingsReport }>) {
  const t = await getTranslations("savings");
  const locale = await getLocale();
  const realised = savingTotalsText(report.realised, locale);
  const held = savingTotalsText(report.unrealised, locale);
  const saving = { saved: "answerSaved", lost: "answerLost", even: "answerEven" } as const;
  const strict = { saved: "strictSaved", lost: "strictLost", even: "strictEven" } as const;
  const { currency } = report.realised.saving;
  return (
    <>
      {realised.rows === 0
        ? t("answerNone")
        : t.rich(saving[realised.saving.side], { size: realised.saving.size, currency, b: said })}{" "}
      {realised.rows === 0
        ? null
        : t.rich(strict[realised.strict.side], { size: realised.strict.size, b: said })}{" "}
      {held.rows === 0
        ? null
        : t.rich("unrealised", { figure: held.saving.figure, side: held.saving.side, b: said })}{" "}
      {realised.notKnown > 0 ? `${t("notKnownCount", { count: realised.notKnown })}.` : null}
    </>
  );
}
