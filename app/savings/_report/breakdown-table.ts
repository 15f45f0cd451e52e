import type { ReportContent } from "../../../lib/savings/report-content.ts";
import { savingBreakdown } from "../../../lib/savings/saving-causes.ts";
import { savingTotals } from "../../../lib/savings/saving-totals.ts";
import { moneyCell, numberCell, totalCell } from "./cells.ts";
import type { ReportWords, WordedTable } from "./worded.ts";

/** What made the saving, line by line, to the total. */
export function breakdownTable(content: ReportContent, words: ReportWords): WordedTable {
  const { t } = words;
  const { rows, currency } = content;
  const total = (which: typeof rows) => totalCell(savingTotals(which, currency), "saving", words);
  return {
    key: "breakdown",
    title: t("breakdown"),
    note: t("breakdownNote"),
    columns: [
      { key: "cause", label: t("cause"), figures: false },
      { key: "realised", label: t("realised"), figures: true },
      { key: "unrealised", label: t("unrealised"), figures: true },
      { key: "together", label: t("together"), figures: true },
      { key: "rows", label: t("rows"), figures: true },
    ],
    rows: savingBreakdown(rows, currency).map((line) => ({
      key: line.cause,
      cells: [
        { text: t(`causes.${line.cause}`) },
        moneyCell(line.realised, words, true),
        moneyCell(line.unrealised, words, true),
        moneyCell(line.amount, words, true),
        numberCell(line.rows),
      ],
    })),
    foot: [
      { text: t("total") },
      total(rows.filter(({ kind }) => kind !== "held")),
      total(rows.filter(({ kind }) => kind === "held")),
      total(rows),
      numberCell(rows.length),
    ],
  };
}
