import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { type Decimal, ZERO } from "../../lib/decimal.ts";
import { roundToMinorUnit } from "../../lib/money/money.ts";
import { faultsOfEvent, faultsOfUndo } from "../../lib/stock/ledger.ts";
import { lotAccount } from "../../lib/stock/lot-account.ts";
import { LotDisagrees, type LotState, lotState } from "../../lib/stock/lot-state.ts";
import { lyingOn } from "../../lib/stock/lying.ts";
import { borneByNothing } from "../../lib/stock/storage-shares.ts";
import { law } from "../support/law.ts";
import { TODAY } from "../support/price-example.ts";
import { DAYS, recordedLot } from "../support/random-stock.ts";
import { BOUGHT, cad } from "../support/stock-example.ts";

const total = (values: Iterable<Decimal>) => [...values].reduce((all, value) => all.plus(value), ZERO);

/** Everything a lot's quantity may have become, and whether any of it is less than nothing. */
function standing(state: LotState) {
  const { free, drawnForNone, returned, sold, writtenOff, missing } = state;
  const parts = [
    free,
    drawnForNone,
    returned,
    sold,
    writtenOff,
    missing,
    ...state.allocated.values(),
    ...state.drawn.values(),
  ];
  return {
    there: total(parts).toFixed(),
    cameIn: state.acquired.plus(state.found).toFixed(),
    below: parts.some((part) => part.lessThan(0)),
  };
}

/** A day of the life of a lot of the examples, or just before. */
const someDay = fc.integer({ min: -2, max: DAYS }).map((after) => plusDays(BOUGHT, after));

describe("a lot, whatever is recorded of it in whatever order", () => {
  test("holds on every day of its life what came in, no more and no less", () => {
    law(
      fc.property(recordedLot(), ({ lot, events }) => {
        for (let after = -2; after <= DAYS; after += 1) {
          const { there, cameIn, below } = standing(lotState(lot, events, plusDays(BOUGHT, after)));
          expect([there, below]).toEqual([cameIn, false]);
        }
      }),
      { numRuns: 150 },
    );
  });

  test("never gives out more than has been received", () => {
    law(
      fc.property(recordedLot(), someDay, ({ lot, events }, day) => {
        const { received, found, gone } = lotState(lot, events, day);
        expect(gone.lessThanOrEqualTo(received.plus(found))).toBe(true);
      }),
    );
  });

  test("stands the same whatever the order its events are listed in", () => {
    law(
      fc.property(recordedLot(), someDay, fc.infiniteStream(fc.nat()), ({ lot, events }, day, numbers) => {
        const keys = new Map(events.map((event) => [event, numbers.next().value]));
        const shuffled = [...events].sort((x, y) => (keys.get(x) ?? 0) - (keys.get(y) ?? 0));
        expect(standing(lotState(lot, shuffled, day))).toEqual(standing(lotState(lot, events, day)));
        expect(lotState(lot, shuffled, day).free.toFixed()).toBe(lotState(lot, events, day).free.toFixed());
      }),
    );
  });

  test("still holds together after every undo that is allowed, and not after one that is refused", () => {
    law(
      fc.property(recordedLot(), ({ lot, events }) => {
        for (const event of events) {
          const rest = events.filter((other) => other !== event);
          const standsAtLast = () => {
            lyingOn(lot, rest, TODAY);
            const unborne = borneByNothing(lot, rest);
            if (unborne !== null) throw new LotDisagrees(unborne);
            return lotState(lot, rest, TODAY);
          };
          if (faultsOfUndo(lot, events, event.id).length === 0)
            expect(standing(standsAtLast()).below).toBe(false);
          else expect(standsAtLast).toThrow(LotDisagrees);
        }
      }),
      { numRuns: 60 },
    );
  });

  test("takes back an event just undone", () => {
    law(
      fc.property(recordedLot(), ({ lot, events }) => {
        const last = events.at(-1);
        fc.pre(last !== undefined);
        expect(faultsOfEvent(lot, events.slice(0, -1), last, TODAY)).toEqual([]);
      }),
    );
  });

  test("costs what left of it and what is there, to the cent", () => {
    law(
      fc.property(
        recordedLot(),
        someDay,
        fc.integer({ min: 0, max: 999_999 }),
        ({ lot, events }, day, mills) => {
          fc.pre(day >= lot.orderedOn);
          const cost = cad(`${mills}e-3`);
          const { withdrawals, holdings } = lotAccount(lot, cost, events, day);
          const rows = [...withdrawals, ...holdings].map((row) => row.cost.amount);
          expect(total(rows).toFixed()).toBe(roundToMinorUnit(cost).amount.toFixed());
          const charged = total([...withdrawals, ...holdings].map((row) => row.charged));
          expect(charged.lessThanOrEqualTo(lot.quantity)).toBe(true);
          expect(rows.some((row) => row.lessThan(0))).toBe(false);
        },
      ),
    );
  });
});
