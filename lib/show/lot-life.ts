import type { LocalDate } from "../calendar/local-date.ts";
import { money } from "../money/money.ts";
import type { Lot, StockEvent } from "../stock/lot.ts";
import { type CountText, countText } from "./count-text.ts";
import { type LotEventText, lotEvents } from "./lot-events.ts";
import { moneyText } from "./money-text.ts";

type Placed = Readonly<{ placeId: string | null; fromPlaceId: string | null; actId: string | null }>;

/**
 * One dated step of a lot's life. `id` of what can be undone; null: it cannot be. together: undone with all that was done with it
 * (a stock-take, a move between projects).
 */
export type LifeStep =
  | Readonly<{ step: "ordered"; on: LocalDate; quantity: CountText }>
  | Readonly<{
      step: "received";
      on: LocalDate;
      id: string | null;
      quantity: CountText;
      placeId: string | null;
    }>
  | Readonly<{ step: "paid"; on: LocalDate; id: string | null; amount: string; home: string | null }>
  | Readonly<{ step: "event"; on: LocalDate; event: LotEventText; places: Placed }>;

type Kept = StockEvent & Readonly<{ undoneAt?: string | null }>;

/** The order of steps of one day: ordered, paid, received, then what happened to it. */
const RANK = { ordered: 0, paid: 1, received: 2, event: 3 } as const;

/**
 * A lot's whole life, the newest first: ordered, received and paid in parts, and everything that happened to it. Undone events stay
 * readable; undone receipts and payments are in the change log. Rounds: for reading. @throws {LotDisagrees} as `lotEvents`.
 */
export function lotLife(lot: Lot, events: readonly Kept[], locale: string): LifeStep[] {
  const { currency } = lot.paid;
  const kept = new Map(events.map((event) => [event.id, event]));
  const received = lot.receipts.map(({ id, on, quantity, placeId }): LifeStep => {
    const text = countText(quantity, locale);
    return { step: "received", on, id: id ?? null, quantity: text, placeId: placeId ?? lot.placeId };
  });
  const paid = lot.payments
    .filter(({ amount }) => !amount.isZero())
    .map(({ id, on, amount, home }): LifeStep => {
      const figure = moneyText(money(amount, currency), locale, { currency: true });
      const charged =
        home === null || lot.paidHome === null ? null : moneyText(money(home, lot.paidHome.currency), locale);
      return { step: "paid", on, id: id ?? null, amount: figure, home: charged };
    });
  const happened = lotEvents(lot, events, locale).map((event): LifeStep => {
    const own = kept.get(event.id);
    const places = {
      placeId: own?.placeId ?? null,
      fromPlaceId: own?.fromPlaceId ?? null,
      actId: own?.actId ?? null,
    };
    return { step: "event", on: event.on, event, places };
  });
  const ordered: LifeStep = {
    step: "ordered",
    on: lot.orderedOn,
    quantity: countText(lot.quantity, locale),
  };
  const early = [...received, ...paid, ordered].sort(
    (a, b) => b.on.localeCompare(a.on) || RANK[b.step] - RANK[a.step],
  );
  // Events come newest first already; a stable sort by day keeps their order within it.
  return [...happened, ...early].sort((a, b) => b.on.localeCompare(a.on));
}
