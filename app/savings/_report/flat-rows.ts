import type { ReportContent } from "../../../lib/savings/report-content.ts";
import type { SavingRow } from "../../../lib/savings/savings-figures.ts";
import { countText } from "../../../lib/show/count-text.ts";
import { countCell, dayCell, moneyCell } from "./cells.ts";
import type { ReportWords, WordedCell } from "./worded.ts";

/** A column of rows laid out flat, for a spreadsheet and for text: named as in the interface. */
const FLAT = [
  "material",
  "quantity",
  "unit",
  "kind",
  "project",
  "source",
  "acquiredOn",
  "leftOn",
  "paid",
  "goingAtAcquisition",
  "goingAtDraw",
  "received",
  "discount",
  "timing",
  "carrying",
  "saving",
  "strictSaving",
  "currency",
  "firm",
] as const;
export type FlatRows = Readonly<{
  columns: readonly Readonly<{ key: string; label: string }>[];
  rows: readonly (readonly WordedCell[])[];
}>;

const EMPTY: WordedCell = { text: "" };

/** What must be said of a row beside its figures. */
function remarks(row: SavingRow, { s }: ReportWords): string {
  const said = [
    row.saving === null ? s("notKnown") : null,
    row.interpolated ? s("interpolated") : null,
    row.beforeCarrying && row.saving !== null ? s("beforeCarrying") : null,
  ];
  return said.filter((remark) => remark !== null).join("; ");
}

/** Every row of a report as one line of plain cells; what is not known is left empty and said at the end of the line. */
export function flatRows(content: ReportContent, words: ReportWords): FlatRows {
  const { t, s, units, locale } = words;
  const { names, currency } = content;
  const cellsOf = (row: SavingRow): Record<(typeof FLAT)[number], WordedCell> => {
    const amount = (value: SavingRow["paid"]) => (value === null ? EMPTY : moneyCell(value, words));
    const unit = content.units[row.materialId];
    return {
      material: { text: names[row.materialId] ?? "–" },
      quantity: countCell(countText(row.quantity, locale)),
      unit: { text: unit === undefined ? "" : units.one(unit) },
      kind: { text: row.missing ? s("missedAtCount") : s(`kinds.${row.kind}`) },
      project: { text: row.projectId === null ? "" : (names[row.projectId] ?? "–") },
      source: { text: s(`sources.${row.source}`) },
      acquiredOn: dayCell(row.acquiredOn, words),
      leftOn: row.on === null ? EMPTY : dayCell(row.on, words),
      paid: amount(row.paid),
      goingAtAcquisition: amount(row.goingAtAcquisition),
      goingAtDraw: amount(row.goingAtDraw),
      received: amount(row.received),
      discount: amount(row.discount),
      timing: amount(row.timing),
      carrying: amount(row.carrying),
      saving: amount(row.saving),
      strictSaving: amount(row.strictSaving),
      currency: { text: currency },
      firm: { text: remarks(row, words) },
    };
  };
  return {
    columns: FLAT.map((key) => ({ key, label: t(`flat.${key}`) })),
    rows: content.rows.map((row) => {
      const cells = cellsOf(row);
      return FLAT.map((key) => cells[key]);
    }),
  };
}
