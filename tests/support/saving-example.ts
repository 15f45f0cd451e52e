import { savings } from "../../lib/savings/savings.ts";
import type { SavingRow } from "../../lib/savings/savings-figures.ts";
import type { Lot, StockEvent } from "../../lib/stock/lot.ts";
import { day, observation, TODAY } from "./price-example.ts";
import { eventOf, factsOf, lotOf, needOf, revisionOf } from "./stock-example.ts";

/** For the requirement of the examples: ten sheets. */
export const a = { requirementId: "a" };
/** The shelf price just before the lot was bought, and just before it was drawn. */
export const seenBefore = observation("24.00", { seenOn: day("2026-01-04") });
export const seenLater = observation("26.00", { seenOn: day("2026-02-20") });
export const draw = eventOf("drawn", 4, "2026-02-25", a);

/** The rows of one lot, ten sheets for 200.00 unless said otherwise, as of today. */
export function rows(
  events: readonly StockEvent[],
  lot: Lot = lotOf(10, 200),
  given: Parameters<typeof factsOf>[0] = {},
): readonly SavingRow[] {
  const requirements = [needOf("a", revisionOf(10))];
  const facts = factsOf({
    requirements,
    lots: [lot],
    events,
    observations: [seenBefore, seenLater],
    ...given,
  });
  return savings(null, null, TODAY, facts).rows;
}

type Amount =
  | "paid"
  | "goingAtAcquisition"
  | "goingAtDraw"
  | "received"
  | "discount"
  | "timing"
  | "carrying"
  | "saving"
  | "strictSaving";

/** Amounts of a row as text; null is not known. */
export function amounts(row: SavingRow | undefined, ...fields: Amount[]): (string | null)[] {
  return fields.map((field) => row?.[field]?.amount.toFixed(2) ?? null);
}
