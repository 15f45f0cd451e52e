import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { type Decimal, decimal, ZERO } from "../../lib/decimal.ts";
import { movingAverageCost, periodicAverageCost } from "../../lib/stock/average-cost.ts";
import { costFlow, totalIn } from "../../lib/stock/cost-flow.ts";
import { fifoCost } from "../../lib/stock/fifo-cost.ts";
import { faultsOfEvent, faultsOfUndo } from "../../lib/stock/ledger.ts";
import type { Lot, StockEvent } from "../../lib/stock/lot.ts";
import { lotAccount } from "../../lib/stock/lot-account.ts";
import { lotState } from "../../lib/stock/lot-state.ts";
import { lyingOn } from "../../lib/stock/lying.ts";
import { isStorageMoney, storageShares } from "../../lib/stock/storage-shares.ts";
import { law } from "../support/law.ts";
import { TODAY } from "../support/price-example.ts";
import { DAYS, recordedLot } from "../support/random-stock.ts";
import { BOUGHT, cad } from "../support/stock-example.ts";

const total = (values: Iterable<Decimal>) => [...values].reduce((all, value) => all.plus(value), ZERO);
const someDay = fc.integer({ min: -2, max: DAYS }).map((after) => plusDays(BOUGHT, after));
const MANY = { numRuns: 1000 };

/** All of a lot's storage shares on a day, as text, and their sum. */
function storage(lot: Lot, events: readonly StockEvent[], day: typeof TODAY) {
  const account = lotAccount(lot, cad(100), events, day);
  const found = storageShares(lot, events, account, day, "CAD", (amount) => amount);
  if (found === null) throw new Error("every rate of this law is known");
  const parts = [...found.left.values(), ...found.held.values()].map(({ amount }) => amount);
  return { parts, total: found.total.amount };
}

describe("a lot moved, stored, drawn and counted in any order", () => {
  test("lies, in all, where what has come in and not gone is", () => {
    law(
      fc.property(recordedLot(), someDay, ({ lot, events }, day) => {
        const { received, found, gone } = lotState(lot, events, day);
        const lying = lyingOn(lot, events, day);
        expect(total(lying.map(({ quantity }) => quantity)).toFixed()).toBe(
          received.plus(found).minus(gone).toFixed(),
        );
        expect(lying.every(({ quantity }) => quantity.greaterThan(0))).toBe(true);
        expect(new Set(lying.map(({ placeId }) => placeId)).size).toBe(lying.length);
      }),
      MANY,
    );
  });

  test("gives to what left and to what is there, to the cent, all that storing it cost", () => {
    law(
      fc.property(recordedLot(), someDay, ({ lot, events }, day) => {
        const entered = events.filter((event) => event.on <= day && isStorageMoney(event));
        const { parts, total: whole } = storage(lot, events, day);
        expect(total(parts).toFixed()).toBe(whole.toFixed());
        expect(whole.toFixed()).toBe(total(entered.map(({ amount }) => amount?.amount ?? ZERO)).toFixed());
        expect(parts.some((part) => part.lessThan(0))).toBe(false);
      }),
      MANY,
    );
  });

  test("is as it was when an event that was undone is recorded again", () => {
    law(
      fc.property(recordedLot(), ({ lot, events }) => {
        for (const event of events) {
          const rest = events.filter((other) => other !== event);
          if (faultsOfUndo(lot, events, event.id).length > 0) continue;
          expect(faultsOfEvent(lot, rest, event, TODAY)).toEqual([]);
          const lying = (some: readonly StockEvent[]) =>
            lyingOn(lot, some, TODAY).map(({ placeId, quantity }) => `${placeId} ${quantity}`);
          expect(lying([...rest, event])).toEqual(lying(events));
        }
      }),
      { numRuns: 300 },
    );
  });

  test("changes no total by the order in which events of one day were recorded, where both orders can be", () => {
    law(
      fc.property(recordedLot(), someDay, fc.infiniteStream(fc.nat()), ({ lot, events }, day, numbers) => {
        const shuffled = events.map((event) => ({ ...event, sequence: numbers.next().value }));
        const can = () => [lotState(lot, shuffled, TODAY), lyingOn(lot, shuffled, TODAY)];
        try {
          can();
        } catch {
          return; // Events that need each other: not independent.
        }
        const [one, other] = [lotState(lot, events, day), lotState(lot, shuffled, day)];
        for (const field of ["returned", "sold", "writtenOff", "missing", "gone", "found"] as const)
          expect(other[field].toFixed()).toBe(one[field].toFixed());
        const [before, after] = [storage(lot, events, day), storage(lot, shuffled, day)];
        expect(after.total.toFixed()).toBe(before.total.toFixed());
        const cents = (parts: readonly Decimal[]) => total(parts).toFixed();
        expect(cents(after.parts)).toBe(cents(before.parts));
      }),
      MANY,
    );
  });
});

describe("lots of one material, whatever became of them", () => {
  const lots = fc.tuple(
    recordedLot("one"),
    recordedLot("two"),
    recordedLot("three"),
    fc.array(fc.integer({ min: 0, max: 99_999 }), { minLength: 3, maxLength: 3 }),
  );

  test.each([
    ["first in first out", fifoCost],
    ["moving average", movingAverageCost],
    ["periodic average", periodicAverageCost],
  ])("cost by %s what came in: in is out and left", (_name, method) => {
    law(
      fc.property(lots, someDay, ([one, two, three, mills], day) => {
        const costed = [one, two, three].map((given, at) => ({
          ...given,
          cost: cad(decimal(mills[at] ?? 0).dividedBy(1000)),
        }));
        const flow = costFlow(costed, day);
        const came = totalIn(flow, "CAD");
        const { issues, left } = method(flow, "CAD");
        expect(total([...issues.map(({ cost }) => cost.amount), left.cost.amount]).toFixed()).toBe(
          came.cost.amount.toFixed(),
        );
        expect(total([...issues.map(({ quantity }) => quantity), left.quantity]).toFixed()).toBe(
          came.quantity.toFixed(),
        );
        expect(issues.some(({ cost }) => cost.amount.lessThan(0))).toBe(false);
        expect(left.quantity.isZero() && !left.cost.amount.isZero()).toBe(false);
      }),
      { numRuns: 500 },
    );
  });
});
