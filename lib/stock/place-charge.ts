import { daysBetween, type LocalDate, plusDays } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import type { Lot, StockEvent } from "./lot.ts";
import { lyingIn } from "./lying.ts";

/** How much room over how many days a lot took in a place, and the last day it lay there. */
export type Stay = Readonly<{ weight: Decimal; lastDay: LocalDate }>;

/** Days on which what lies there may change, from the first to the last of a span, each once, in order. */
function turns(lot: Lot, events: readonly StockEvent[], from: LocalDate, until: LocalDate): LocalDate[] {
  const days = [from, ...lot.receipts.map(({ on }) => on), ...events.map(({ on }) => on)];
  return [...new Set(days)].filter((on) => from <= on && on <= until).sort();
}

/**
 * What of a place's cost over a span of days a lot is weighed by:
 *     sum over the days, both ends counted, of the room it took there at the end of the day
 * space: the room so much of it takes; null: not known. The answer is null when nothing of it lay there, "unknown" when its size is not
 * known. Units: room x days. Rounds: never. Source: rules.md R10 (storage money entered).
 */
export function stayIn(
  placeId: string,
  { lot, events }: Readonly<{ lot: Lot; events: readonly StockEvent[] }>,
  { from, until }: Readonly<{ from: LocalDate; until: LocalDate }>,
  space: (quantity: Decimal) => Decimal | null,
): Stay | null | "unknown" {
  const own = events.filter((event) => event.lotId === lot.id);
  const starts = turns(lot, own, from, until);
  let weight = ZERO;
  let lastDay: LocalDate | null = null;
  for (const [at, start] of starts.entries()) {
    const end = starts[at + 1] ?? plusDays(until, 1);
    const quantity = lyingIn(lot, own, start, placeId);
    if (quantity.isZero()) continue;
    const room = space(quantity);
    if (room === null) return "unknown";
    weight = weight.plus(room.times(daysBetween(start, end)));
    lastDay = plusDays(end, -1);
  }
  return lastDay === null ? null : { weight, lastDay };
}
