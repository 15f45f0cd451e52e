import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { Lot, StockEvent } from "./lot.ts";
import { lotState } from "./lot-state.ts";

/** So much of a lot, set aside for a requirement and not drawn. */
export type Leftover = Readonly<{ lotId: string; requirementId: string; quantity: Decimal }>;

/**
 * What some requirements have set aside and not drawn at the end of a day, lot by lot: what goes back to free stock at cost.
 * Units: purchase units. Rounds: never. @throws {LotDisagrees}. Source: rules.md R8, R9.
 */
export function leftovers(
  requirementIds: readonly string[],
  lots: readonly Lot[],
  events: readonly StockEvent[],
  day: LocalDate,
): Leftover[] {
  const wanted = new Set(requirementIds);
  return lots.flatMap((lot) =>
    [...lotState(lot, events, day).allocated]
      .filter(([requirementId]) => wanted.has(requirementId))
      .map(([requirementId, quantity]) => ({ lotId: lot.id, requirementId, quantity })),
  );
}

/**
 * A draw without the part that came back: the same lot, day, place and place in the day, for less; null: all of it came back.
 * Units: purchase units. Source: rules.md R9 (unused material from a site is an undone draw).
 */
export function drawnLess(draw: StockEvent, unused: Decimal): StockEvent | null {
  const quantity = draw.quantity.minus(unused);
  return quantity.greaterThan(0) ? { ...draw, quantity } : null;
}
