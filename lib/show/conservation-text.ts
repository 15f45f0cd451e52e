import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import type { Lot, StockEvent } from "../stock/lot.ts";
import { lotState } from "../stock/lot-state.ts";
import { quantityText } from "./money-text.ts";

export const LOT_PARTS = ["allocated", "free", "drawn", "returned", "sold", "writtenOff", "missing"] as const;

/** Where all of a lot is, as text: acquired + found = the parts, those of nothing left out. */
export type ConservationText = Readonly<{
  acquired: string;
  found: string | null;
  parts: readonly Readonly<{ part: (typeof LOT_PARTS)[number]; quantity: string }>[];
}>;

/**
 * The sum a lot always comes to at the end of a day (R9), its parts in words.
 * Rounds: for reading. @throws {LotDisagrees} when the events contradict each other.
 */
export function conservationText(
  lot: Lot,
  events: readonly StockEvent[],
  day: LocalDate,
  locale: string,
): ConservationText {
  const state = lotState(lot, events, day);
  const sum = (held: ReadonlyMap<string, Decimal>) =>
    [...held.values()].reduce((total, quantity) => total.plus(quantity), ZERO);
  const quantities = {
    ...state,
    allocated: sum(state.allocated),
    drawn: sum(state.drawn).plus(state.drawnForNone),
  };
  return {
    acquired: quantityText(state.acquired, locale),
    found: state.found.isZero() ? null : quantityText(state.found, locale),
    parts: LOT_PARTS.filter((part) => !quantities[part].isZero()).map((part) => ({
      part,
      quantity: quantityText(quantities[part], locale),
    })),
  };
}
