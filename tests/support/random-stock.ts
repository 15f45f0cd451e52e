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
  placeId: fc.constantFrom("shed", "loft", null, null),
  fromPlaceId: fc.constantFrom("shed", "loft", null, null),
});

const FOR_MONEY: readonly StockEvent["kind"][] = ["returned", "sold", "stored"];
const FOR_ONE: readonly StockEvent["kind"][] = ["allocated", "released"];

/** A lot of sheets, some received late, some paid in two parts. */
function lotIn(id: string) {
  return fc
    .record({
      quantity: fc.integer({ min: 1, max: 20 }),
      cents: fc.integer({ min: 0, max: 99_999 }),
      late: fc.integer({ min: 0, max: 20 }),
      early: fc.integer({ min: 0, max: 10 }),
      placeId: fc.constantFrom("shed", null),
    })
    .map(({ quantity, cents, late, early, placeId }): Lot => {
      const orderedOn = plusDays(BOUGHT, early);
      return lotOf(quantity, decimal(cents).dividedBy(100), {
        id,
        origin: cents === 0 ? "salvaged" : "bought",
        orderedOn,
        placeId,
        receipts: [{ quantity: decimal(quantity), on: plusDays(orderedOn, late) }],
      });
    });
}

/** A lot and what was recorded of it: everything tried, in any order of days, that the ledger let through. */
export function recordedLot(id = "lot"): fc.Arbitrary<{ lot: Lot; events: readonly StockEvent[] }> {
  return fc.tuple(lotIn(id), fc.array(tried, { maxLength: 30 })).map(([lot, attempts]) => {
    const events: StockEvent[] = [];
    for (const [sequence, one] of attempts.entries()) {
      const { kind, halves, after, requirementId, cents, placeId, fromPlaceId } = one;
      const ofNobody = kind === "moved" || kind === "stored";
      const paid = FOR_MONEY.includes(kind) || (kind === "moved" && cents % 2 === 0);
      const event: StockEvent = {
        id: `${id}-${sequence}`,
        lotId: id,
        kind,
        quantity: kind === "stored" ? decimal(0) : decimal(halves).dividedBy(2),
        on: plusDays(BOUGHT, after),
        requirementId: FOR_ONE.includes(kind) ? (requirementId ?? "a") : ofNobody ? null : requirementId,
        amount: paid ? cad(decimal(cents).dividedBy(100)) : null,
        reason: null,
        placeId: FOR_ONE.includes(kind) ? null : placeId,
        fromPlaceId: kind === "moved" && fromPlaceId !== placeId ? fromPlaceId : null,
        sequence,
      };
      if (faultsOfEvent(lot, events, event, TODAY).length === 0) events.push(event);
    }
    return { lot, events };
  });
}
