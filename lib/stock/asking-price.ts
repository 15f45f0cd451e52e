import { latestOnOrBefore } from "../calendar/as-of.ts";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import { type Money, roundToMinorUnit, subtract, times } from "../money/money.ts";
import type { StockEvent } from "./lot.ts";

/** What is asked for one purchase unit of a lot from a day on; amount null: from that day it is no longer for sale. */
export type AskingPrice = Readonly<{
  id: string;
  lotId: string;
  amount: Money | null;
  since: LocalDate;
  note: string | null;
  sequence: number;
}>;

/** What is asked on a day: the newest from that day or earlier, of one day the one recorded later; null: not for sale. */
export function askingOn(asked: readonly AskingPrice[], lotId: string, day: LocalDate): AskingPrice | null {
  const own = asked.filter((one) => one.lotId === lotId).sort((a, b) => a.sequence - b.sequence);
  const newest = latestOnOrBefore(own, day, ({ since }) => since);
  return newest?.amount == null ? null : newest;
}

/** A sale beside what was asked for it on its day. asked, difference null: nothing was asked then, or in another currency. */
export type SaleBeside = Readonly<{
  event: StockEvent;
  sold: Money;
  asked: Money | null;
  difference: Money | null;
}>;

/** Asked for so many: price x quantity. Rounds: once, half up, to the minor unit. */
export function askedFor(asking: Money, quantity: Decimal): Money {
  return roundToMinorUnit(times(asking, quantity));
}

/**
 * A lot's sales, each beside what was asked on its day: difference = sold - asked x quantity (below zero: sold for less).
 * Units: the currency of the sale. Rounds: what was asked, once, half up, to the minor unit.
 */
export function salesBeside(
  asked: readonly AskingPrice[],
  lotId: string,
  events: readonly StockEvent[],
): SaleBeside[] {
  return events.flatMap((event) => {
    if (event.lotId !== lotId || event.kind !== "sold" || event.amount === null) return [];
    const sold = event.amount;
    const asking = askingOn(asked, lotId, event.on)?.amount ?? null;
    const whole = asking?.currency === sold.currency ? askedFor(asking, event.quantity) : null;
    return [{ event, sold, asked: whole, difference: whole === null ? null : subtract(sold, whole) }];
  });
}
