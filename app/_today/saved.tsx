import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import type { SavingsReport } from "../../lib/savings/savings-figures.ts";
import { savingTotalsText } from "../../lib/show/savings-rows.ts";
import { Part } from "../_ui/page-head.tsx";
import { said } from "../_ui/said.tsx";

/** What buying ahead has saved or lost so far, in two sentences. */
export async function Saved({ report }: Readonly<{ report: SavingsReport }>) {
  const t = await getTranslations("today");
  const locale = await getLocale();
  const realised = savingTotalsText(report.realised, locale);
  const held = savingTotalsText(report.unrealised, locale);
  const lost = realised.saving.side === "lost";
  return (
    <Part title={t("savedTitle")}>
      <p>
        {realised.rows === 0
          ? t("savedNothing")
          : t.rich(lost ? "lost" : "saved", {
              size: realised.saving.size,
              currency: report.realised.saving.currency,
              strict: realised.strict.figure,
              b: said,
            })}
      </p>
      {held.rows > 0 ? (
        <p>{t.rich("held", { figure: held.saving.figure, side: held.saving.side, b: said })}</p>
      ) : null}
      {report.rows.some((row) => row.beforeCarrying) ? <p>{t("beforeCarrying")}</p> : null}
      <p>
        <Link href="/savings">{t("toSavings")}</Link>
      </p>
    </Part>
  );
}
