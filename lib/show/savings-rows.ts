import type { LocalDate } from "../calendar/local-date.ts";
import type { Money } from "../money/money.ts";
import { rowKey } from "../savings/row-key.ts";
import type { SavingKind, SavingRow, SavingsReport, SavingTotals } from "../savings/savings-figures.ts";
import { type CountText, countText } from "./count-text.ts";
import { moneyText } from "./money-text.ts";

/** A figure that may be a loss: the sign, the word for it and the size, so that colour is never the only sign. */
export type GainText = Readonly<{ side: "saved" | "lost" | "even"; figure: string; size: string }>;

/** "+512.40", "-31.00" or "0.00" with its side. Rounds: to the minor unit. */
export function gainText(value: Money, locale: string): GainText {
  const side = value.amount.isZero() ? "even" : value.amount.isNegative() ? "lost" : "saved";
  return {
    side,
    figure: moneyText(value, locale, { signed: true }),
    size: moneyText({ amount: value.amount.abs(), currency: value.currency }, locale),
  };
}

/** What would make an unknown saving known. paid: the lot's tax, region or rate; received: the rate of the day it came. */
export type Missing = "price-at-acquisition" | "price-at-draw" | "price-today" | "paid" | "received";

/** One row of the savings table as text; null is "not known". */
export type SavingRowText = Readonly<{
  key: string;
  lotId: string;
  materialId: string;
  projectId: string | null;
  kind: SavingKind;
  state: SavingRow["state"];
  quantity: CountText;
  acquiredOn: LocalDate;
  on: LocalDate | null;
  paid: string | null;
  goingAtAcquisition: string | null;
  goingAtDraw: string | null;
  received: string | null;
  discount: string | null;
  timing: string | null;
  carrying: string | null;
  saving: GainText | null;
  strict: GainText | null;
  source: SavingRow["source"];
  interpolated: boolean;
  beforeCarrying: boolean;
  missing: Missing | null;
  /** Written off because it was missed at a count. */
  missedAtCount: boolean;
}>;

function missingOf(row: SavingRow): Missing | null {
  const used = row.kind === "drawn" || row.kind === "held";
  if (row.paid === null) return "paid";
  if (row.state === "not-known" && !used) return "received";
  if (row.state === "not-known") return row.on === null ? "price-today" : "price-at-draw";
  return row.discount === null && used ? "price-at-acquisition" : null;
}

/** A saving as text. Rounds: nothing further; the amounts are in minor units already (R10). */
export function savingRowText(row: SavingRow, locale: string): SavingRowText {
  const text = (value: Money | null) => (value === null ? null : moneyText(value, locale));
  const signed = (value: Money | null) =>
    value === null ? null : moneyText(value, locale, { signed: true });
  const gain = (value: Money | null) => (value === null ? null : gainText(value, locale));
  return {
    key: rowKey(row),
    lotId: row.lotId,
    materialId: row.materialId,
    projectId: row.projectId,
    kind: row.kind,
    state: row.state,
    quantity: countText(row.quantity, locale),
    acquiredOn: row.acquiredOn,
    on: row.on,
    paid: text(row.paid),
    goingAtAcquisition: text(row.goingAtAcquisition),
    goingAtDraw: text(row.goingAtDraw),
    received: text(row.received),
    discount: signed(row.discount),
    timing: signed(row.timing),
    carrying: text(row.carrying),
    saving: gain(row.saving),
    strict: gain(row.strictSaving),
    source: row.source,
    interpolated: row.interpolated,
    beforeCarrying: row.beforeCarrying,
    missing: missingOf(row),
    missedAtCount: row.missing,
  };
}

/** Totals as text: saving = discount + timing + unsplit - carrying. unsplit null: every row has its split. */
export type SavingTotalsText = Readonly<{
  saving: GainText;
  strict: GainText;
  discount: string;
  timing: string;
  unsplit: string | null;
  carrying: string;
  rows: number;
  notKnown: number;
  strictNotKnown: number;
}>;

/** A total for reading. Rounds: nothing further. */
export function savingTotalsText(totals: SavingTotals, locale: string): SavingTotalsText {
  return {
    saving: gainText(totals.saving, locale),
    strict: gainText(totals.strictSaving, locale),
    discount: moneyText(totals.discount, locale, { signed: true }),
    timing: moneyText(totals.timing, locale, { signed: true }),
    unsplit: totals.unsplit.amount.isZero() ? null : moneyText(totals.unsplit, locale, { signed: true }),
    carrying: moneyText(totals.carrying, locale),
    rows: totals.rows,
    notKnown: totals.notKnown,
    strictNotKnown: totals.strictNotKnown,
  };
}

/** Rows of a report, the newest leaving first, what is still held at the end. */
export function savingRows(report: SavingsReport, locale: string): SavingRowText[] {
  const order = (row: SavingRow) => row.on ?? "";
  return [...report.rows]
    .sort((a, b) => order(b).localeCompare(order(a)) || b.acquiredOn.localeCompare(a.acquiredOn))
    .map((row) => savingRowText(row, locale));
}
