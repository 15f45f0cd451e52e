import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { Lot, StockEvent } from "./lot.ts";
import { lotState } from "./lot-state.ts";

/** What a count brings to light; null: exactly what is in the books. */
export type CountDifference = Readonly<{ kind: "found" | "missing"; quantity: Decimal }> | null;

/**
 * What follows from counting a lot at the end of a day.
 *     there should be = received + found - drawn - returned - sold - written off - missing
 *     difference = counted - there should be;  above: found, below: missing
 * Units: purchase units. Rounds: never. @throws {LotDisagrees} when the events contradict each other. Source: rules.md R9.
 */
export function countDifference(
  lot: Lot,
  events: readonly StockEvent[],
  day: LocalDate,
  counted: Decimal,
): CountDifference {
  const { received, found, gone } = lotState(lot, events, day);
  const difference = counted.minus(received.plus(found).minus(gone));
  if (difference.isZero()) return null;
  return { kind: difference.isNegative() ? "missing" : "found", quantity: difference.abs() };
}
