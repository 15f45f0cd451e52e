import { getLocale, getTranslations } from "next-intl/server";
import { SAVING_KINDS, type SavingsReport, type SavingTotals } from "../../lib/savings/savings-figures.ts";
import { savingTotalsText } from "../../lib/show/savings-rows.ts";
import { Below } from "../_ui/money-text.tsx";
import { Table } from "../_ui/table.tsx";
import { Gain } from "./gain.tsx";

/** Totals by what became of the stock, all that is realised, and what is set aside: the parts add up to the saving. */
export async function TotalsTable({ report }: Readonly<{ report: SavingsReport }>) {
  const t = await getTranslations("savings");
  const locale = await getLocale();
  const kinds = SAVING_KINDS.flatMap((kind) => {
    const totals = kind === "held" ? undefined : report.byKind[kind];
    return totals === undefined ? [] : [{ key: kind, label: t(`kinds.${kind}`), totals }];
  });
  const all: readonly Readonly<{ key: string; label: string; totals: SavingTotals }>[] = [
    ...(kinds.length > 1 ? kinds : []),
    { key: "realised", label: t("realised"), totals: report.realised },
    { key: "held", label: t("unrealisedColumn"), totals: report.unrealised },
  ];
  const unsplit = all.some(({ totals }) => !totals.unsplit.amount.isZero());
  const text = (totals: SavingTotals) => savingTotalsText(totals, locale);
  const strict = (totals: SavingTotals) => (
    <>
      <Gain gain={text(totals).strict} />
      {totals.strictNotKnown > 0 ? <Below>{t("without", { count: totals.strictNotKnown })}</Below> : null}
    </>
  );
  return (
    <Table
      caption={t("totals")}
      captionHidden
      cards
      least="42rem"
      columns={[
        { key: "kind", label: t("kind") },
        { key: "discount", label: t("discount"), figures: true },
        { key: "timing", label: t("timing"), figures: true },
        ...(unsplit ? [{ key: "unsplit", label: t("unsplit"), figures: true }] : []),
        { key: "carrying", label: t("carrying"), figures: true },
        { key: "saving", label: t("saving"), figures: true },
        { key: "strict", label: t("strict"), figures: true },
      ]}
      rows={all.map(({ key, label, totals }) => ({
        key,
        cells: [
          <>
            {key === "realised" ? <strong>{label}</strong> : label}
            <Below>
              {t("rowsCount", { count: totals.rows })}
              {totals.notKnown > 0 ? `, ${t("notKnownShort", { count: totals.notKnown })}` : ""}
            </Below>
          </>,
          text(totals).discount,
          text(totals).timing,
          ...(unsplit ? [text(totals).unsplit ?? "–"] : []),
          text(totals).carrying,
          <Gain key="saving" gain={text(totals).saving} />,
          strict(totals),
        ],
      }))}
    />
  );
}
