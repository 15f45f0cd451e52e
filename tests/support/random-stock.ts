import * as fc from "fast-check";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { decimal } from "../../lib/decimal.ts";
import { faultsOfEvent } from "../../lib/stock/ledger.ts";
import { type Lot, STOCK_EVENT_KINDS, type StockEvent } from "../../lib/stock/lot.ts";
import { TODAY } from "./price-example.ts";
import { BOUGHT, cad, lotOf } from "./stock-example.ts";

/** Days after BOUGHT that anything may happen on; the last is TODAY. */
export const DAYS = 56;

/** What somebody tries to record, whether it can have happened or not. */
const tried = fc.record({
  kind: fc.constantFrom(...STOCK_EVENT_KINDS),
  halves: fc.integer({ min: 1, max: 16 }),
  after: fc.integer({ min: -1, max: DAYS }),
  requirementId: fc.constantFrom("a", "b", null),
  cents: fc.integer({ min: 0, max: 20_000 }),
});

const FOR_MONEY: readonly StockEvent["kind"][] = ["returned", "sold"];
const FOR_ONE: readonly StockEvent["kind"][] = ["allocated", "released"];

/** A lot of sheets, some received late, some paid in two parts. */
function lotIn(id: string) {
  return fc
    .record({
      quantity: fc.integer({ min: 1, max: 20 }),
      cents: fc.integer({ min: 0, max: 99_999 }),
      late: fc.integer({ min: 0, max: 20 }),
      early: fc.integer({ min: 0, max: 10 }),
    })
    .map(({ quantity, cents, late, early }): Lot => {
      const orderedOn = plusDays(BOUGHT, early);
      return lotOf(quantity, decimal(cents).dividedBy(100), {
        id,
        origin: cents === 0 ? "salvaged" : "bought",
        orderedOn,
        receipts: [{ quantity: decimal(quantity), on: plusDays(orderedOn, late) }],
      });
    });
}

/** A lot and what was recorded of it: everything tried, in any order of days, that the ledger let through. */
export function recordedLot(id = "lot"): fc.Arbitrary<{ lot: Lot; events: readonly StockEvent[] }> {
  return fc.tuple(lotIn(id), fc.array(tried, { maxLength: 30 })).map(([lot, attempts]) => {
    const events: StockEvent[] = [];
    for (const [sequence, { kind, halves, after, requirementId, cents }] of attempts.entries()) {
      const event: StockEvent = {
        id: `${id}-${sequence}`,
        lotId: id,
        kind,
        quantity: decimal(halves).dividedBy(2),
        on: plusDays(BOUGHT, after),
        requirementId: FOR_ONE.includes(kind) ? (requirementId ?? "a") : requirementId,
        amount: FOR_MONEY.includes(kind) ? cad(decimal(cents).dividedBy(100)) : null,
        reason: null,
        placeId: null,
        fromPlaceId: null,
        sequence,
      };
      if (faultsOfEvent(lot, events, event, TODAY).length === 0) events.push(event);
    }
    return { lot, events };
  });
}
