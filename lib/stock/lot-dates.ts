import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import type { Lot, StockEvent } from "./lot.ts";

/** How much of a lot had come in by the end of a day. Units: purchase units. No receipts: nothing has come in yet (R9). */
export function receivedBy(lot: Lot, day: LocalDate): Decimal {
  const [only] = lot.receipts;
  if (only !== undefined && lot.receipts.length === 1) return only.on <= day ? only.quantity : ZERO;
  return lot.receipts.reduce(
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
