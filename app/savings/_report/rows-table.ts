import type { ReportContent } from "../../../lib/savings/report-content.ts";
import { rowKey } from "../../../lib/savings/row-key.ts";
import { savingTotals } from "../../../lib/savings/saving-totals.ts";
import type { SavingRow } from "../../../lib/savings/savings-figures.ts";
import { countText } from "../../../lib/show/count-text.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { gainCell, moneyCell } from "./cells.ts";
import type { ReportWords, WordedCell, WordedTable } from "./worded.ts";

/** The newest leaving first, what is set aside at the end. */
function newestFirst(rows: readonly SavingRow[]): SavingRow[] {
  return [...rows].sort(
    (a, b) => (b.on ?? "").localeCompare(a.on ?? "") || b.acquiredOn.localeCompare(a.acquiredOn),
  );
}

/** What became of how many, for which project, and how it was come by. */
function under(row: SavingRow, content: ReportContent, { s, units, locale }: ReportWords): string[] {
  const quantity = countText(row.quantity, locale);
  const unit = content.units[row.materialId];
  const what = [
    `${quantity.text} ${unit === undefined ? "" : units.of(unit, quantity.exact)}`.trim(),
    row.missing ? s("missedAtCount") : s(`kinds.${row.kind}`),
    ...(row.on === null ? [] : [dayText(row.on, locale)]),
  ];
  return [
    what.join(", "),
    ...(row.projectId === null ? [] : [content.names[row.projectId] ?? "–"]),
    s("acquiredBy", { source: s(`sources.${row.source}`), day: dayText(row.acquiredOn, locale) }),
    ...(row.interpolated ? [s("interpolated")] : []),
    ...(row.beforeCarrying && row.saving !== null ? [s("beforeCarrying")] : []),
  ];
}

/** Each quantity once, with its amounts and their difference in parts. */
export function rowsTable(content: ReportContent, words: ReportWords): WordedTable {
  const { t, s } = words;
  const { rows, currency } = content;
  const none: WordedCell = { text: "–" };
  const totals = savingTotals(rows, currency);
  return {
    key: "each-row",
    title: t("eachRow"),
    note: s("rowsNote", { currency }),
    columns: [
      { key: "material", label: s("material"), figures: false },
      { key: "paid", label: s("paid"), figures: true },
      { key: "then", label: s("goingThen"), figures: true },
      { key: "now", label: t("lastColumn"), figures: true },
      { key: "discount", label: s("discount"), figures: true },
      { key: "timing", label: s("timing"), figures: true },
      { key: "carrying", label: s("carrying"), figures: true },
      { key: "saving", label: s("saving"), figures: true },
      { key: "strict", label: s("strict"), figures: true },
    ],
    rows: newestFirst(rows).map((row) => {
      const isUsed = row.kind === "drawn" || row.kind === "held";
      const received =
        row.received === null ? none : { ...moneyCell(row.received, words), under: [s("received")] };
      return {
        key: rowKey(row),
        why: rowKey(row),
        faint: row.kind === "held",
        cells: [
          { text: content.names[row.materialId] ?? "–", under: under(row, content, words) },
          moneyCell(row.paid, words),
          isUsed ? moneyCell(row.goingAtAcquisition, words) : none,
          isUsed ? moneyCell(row.goingAtDraw, words) : received,
          isUsed ? moneyCell(row.discount, words, true) : none,
          isUsed ? moneyCell(row.timing, words, true) : none,
          row.carrying === null ? { text: s("notCounted") } : moneyCell(row.carrying, words),
          gainCell(row.saving, words),
          gainCell(row.strictSaving, words),
        ],
      };
    }),
    foot: [
      { text: t("total") },
      none,
      none,
      none,
      moneyCell(totals.discount, words, true),
      moneyCell(totals.timing, words, true),
      moneyCell(totals.carrying, words),
      gainCell(totals.saving, words),
      gainCell(totals.strictSaving, words),
    ],
  };
}
