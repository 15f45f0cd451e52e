import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import type { Lot, Receipt, StockEvent } from "./lot.ts";

/**
 * What came in and when. A lot that is no special order and names no receipts came in whole on the day it was ordered:
 * a plain purchase is one day. Source: rules.md R9.
 */
export function receiptsOf(lot: Lot): readonly Receipt[] {
  if (lot.receipts.length > 0 || lot.origin === "special-order") return lot.receipts;
  return [{ quantity: lot.quantity, on: lot.orderedOn }];
}

/** How much of a lot had come in by the end of a day. Units: purchase units. */
export function receivedBy(lot: Lot, day: LocalDate): Decimal {
  return receiptsOf(lot).reduce(
    (total, receipt) => (receipt.on <= day ? total.plus(receipt.quantity) : total),
    ZERO,
  );
}

/** A lot's own events, by day and within a day by the order of recording. */
export function inOrder(lot: Lot, events: readonly StockEvent[]): StockEvent[] {
  return events
    .filter((event) => event.lotId === lot.id)
    .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.sequence - b.sequence));
}
