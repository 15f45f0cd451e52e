import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { Lot, StockEvent } from "../stock/lot.ts";
import { inOrder } from "../stock/lot-dates.ts";
import { lotState } from "../stock/lot-state.ts";
import { type CountText, countText } from "./count-text.ts";
import { moneyText, quantityText } from "./money-text.ts";

/** What happened to a lot, as text; on hand and free before and after it; an undone one changed nothing. */
export type LotEventText = Readonly<{
  id: string;
  kind: StockEvent["kind"];
  on: LocalDate;
  quantity: CountText;
  requirementId: string | null;
  amount: string | null;
  reason: string | null;
  undone: boolean;
  free: Readonly<{ before: string; after: string }> | null;
  there: Readonly<{ before: string; after: string }> | null;
}>;

type Kept = StockEvent & Readonly<{ undoneAt?: string | null }>;

/** Quantities after so many of the events; a later event of the same day has not happened yet. */
function standing(lot: Lot, events: readonly StockEvent[], day: LocalDate) {
  const { free, allocated } = lotState(lot, events, day);
  const setAside = [...allocated.values()].reduce<Decimal>((total, held) => total.plus(held), free.times(0));
  return { free, there: free.plus(setAside) };
}

/**
 * Events of a lot with what was free, and what was there in all, before and after each: the newest first. Quantities in
 * purchase units. Rounds: for reading. @throws {LotDisagrees} when the live events contradict each other.
 */
export function lotEvents(lot: Lot, events: readonly Kept[], locale: string): LotEventText[] {
  const live = inOrder(
    lot,
    events.filter((event) => !event.undoneAt),
  );
  const text = (value: Decimal) => quantityText(value, locale);
  return inOrder(lot, events)
    .map((event: Kept) => {
      const at = live.indexOf(event);
      const before = at < 0 ? null : standing(lot, live.slice(0, at), event.on);
      const after = at < 0 ? null : standing(lot, live.slice(0, at + 1), event.on);
      return {
        id: event.id,
        kind: event.kind,
        on: event.on,
        quantity: countText(event.quantity, locale),
        requirementId: event.requirementId,
        amount: event.amount === null ? null : moneyText(event.amount, locale, { currency: true }),
        reason: event.reason,
        undone: Boolean(event.undoneAt),
        free: before && after && { before: text(before.free), after: text(after.free) },
        there: before && after && { before: text(before.there), after: text(after.there) },
      };
    })
    .reverse();
}
