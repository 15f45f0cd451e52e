import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type LocalDate, plusDays } from "../../lib/calendar/local-date.ts";
import { Decimal, decimal, roundHalfUp } from "../../lib/decimal.ts";
import { money } from "../../lib/money/money.ts";
import { allInPrice, valuedAsSeen } from "../../lib/prices/all-in-price.ts";
import { goingPriceOn } from "../../lib/prices/going-price.ts";
import { lastChange } from "../../lib/prices/last-change.ts";
import type { Observation } from "../../lib/prices/observation.ts";
import { offersOn } from "../../lib/prices/offers.ts";
import { priceSeries } from "../../lib/prices/series.ts";
import { law } from "../support/law.ts";
import { daysAgo, SHEET, TODAY } from "../support/price-example.ts";
import { MARKET, somePrice } from "../support/random-prices.ts";

/** Places compared where a division may leave dust. */
const PLACES = 20;

/** Every answer of a day, its figures as text without dust. */
function answers(day: LocalDate, all: readonly Observation[]): string {
  const found = {
    offers: offersOn(day, all, SHEET, MARKET),
    going: goingPriceOn(day, all, SHEET, MARKET),
    change: lastChange(day, all, SHEET, MARKET),
    series: priceSeries(all, SHEET, MARKET, {
      from: null,
      until: day,
      unit: "square-foot",
      currency: "home",
    }),
  };
  return JSON.stringify(found, (_, value) =>
    value instanceof Decimal ? roundHalfUp(value, PLACES).toFixed() : value,
  );
}

const past = fc.integer({ min: 0, max: 60 }).map((ago) => daysAgo(ago));
const history = fc.array(somePrice(), { maxLength: 20 });

test("a sighting made after a day never changes an answer as of that day", () => {
  law(
    fc.property(past, history, fc.array(somePrice(60, 5), { maxLength: 6 }), (day, all, more) => {
      const later = more.map((one) => (one.seenOn > day ? one : { ...one, seenOn: plusDays(day, 1) }));
      // On today itself a sighting of tomorrow counts as today's: it is made, then, by today.
      const after = day === TODAY ? later.filter(({ seenOn }) => seenOn > plusDays(TODAY, 1)) : later;
      expect(answers(day, [...all, ...after])).toBe(answers(day, all));
    }),
    { numRuns: 400 },
  );
});

test("the order in which sightings stand never matters", () => {
  const shuffled = fc
    .array(somePrice(), { minLength: 2, maxLength: 15 })
    .chain((all) =>
      fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length, maxLength: all.length })),
    );
  law(
    fc.property(past, shuffled, (day, [all, other]) => {
      expect(answers(day, other)).toBe(answers(day, all));
    }),
    { numRuns: 300 },
  );
});

test("when every price and fee is so many times as much, so is every unrounded figure", () => {
  const times = (all: readonly Observation[], factor: number): Observation[] =>
    all.map((seen) => ({
      ...seen,
      amount: seen.amount && money(seen.amount.amount.times(factor), seen.amount.currency),
      fees: seen.fees.map((fee) => ({ ...fee, amount: fee.amount?.times(factor) ?? null })),
    }));
  law(
    fc.property(past, history, fc.integer({ min: 2, max: 40 }), (day, all, factor) => {
      const going = goingPriceOn(day, all, SHEET, MARKET);
      const dearer = goingPriceOn(day, times(all, factor), SHEET, MARKET);
      expect(dearer.known).toBe(going.known);
      if (going.known && dearer.known)
        expect(roundHalfUp(dearer.price.amount, PLACES).toFixed()).toBe(
          roundHalfUp(going.price.amount.times(factor), PLACES).toFixed(),
        );
      const prices = (some: readonly Observation[], by: number) =>
        offersOn(day, some, SHEET, MARKET).offers.map(
          ({ observationId, price }) => `${observationId} ${roundHalfUp(price.amount.times(by), PLACES)}`,
        );
      expect(prices(times(all, factor), 1)).toEqual(prices(all, factor));
    }),
    { numRuns: 300 },
  );
});

describe("the sightings of a day", () => {
  test("are each an offer or left out with a reason, once, and none made later is either", () => {
    law(
      fc.property(past, history, (day, all) => {
        const { offers, leftOut } = offersOn(day, all, SHEET, MARKET);
        const answered = [...offers, ...leftOut].map(({ observationId }) => observationId).sort();
        const known = all.filter(({ seenOn }) => seenOn <= day).map(({ id }) => id);
        expect(answered).toEqual(known.sort());
      }),
      { numRuns: 300 },
    );
  });

  test("make at most one offer per store, terms and minimum", () => {
    const dense = fc.array(
      somePrice(20).map((seen) => ({ ...seen, storeId: "far" })),
      { maxLength: 20 },
    );
    law(
      fc.property(fc.integer({ min: 0, max: 10 }).map(daysAgo), dense, (day, all) => {
        const { offers } = offersOn(day, all, SHEET, MARKET);
        const kinds = offers.map(({ observationId, storeId, terms }) => {
          const minimum = all.find(({ id }) => id === observationId)?.minQuantity ?? decimal(1);
          return `${storeId} ${terms} ${minimum}`;
        });
        expect(new Set(kinds).size).toBe(kinds.length);
      }),
      { numRuns: 300 },
    );
  });
});

describe("a price", () => {
  const one = somePrice().filter(({ amount }) => amount !== null);

  test("with its tax in it is, on the day seen, what the tag says, to any cent", () => {
    law(
      fc.property(one, (seen) => {
        const tag = { ...seen, storeId: "far", taxRegion: "CA-NS", taxIncluded: true, fees: [] };
        const amount = seen.amount?.amount ?? decimal(0);
        const home = { ...tag, amount: money(amount, "CAD") };
        const was = valuedAsSeen(home, SHEET, MARKET);
        expect(was.known && roundHalfUp(was.price.amount, PLACES).toFixed()).toBe(
          roundHalfUp(amount.dividedBy(seen.per.quantity), PLACES).toFixed(),
        );
      }),
    );
  });

  test("never costs more than the cash it takes, nor less than it is before tax", () => {
    const registered = { ...MARKET, registrations: [{ tax: "HST", from: daysAgo(40), until: null }] };
    law(
      fc.property(one, past, (seen, day) => {
        const found = allInPrice(seen, SHEET, registered, day);
        if (!found.known) return;
        expect(found.price.amount.lessThanOrEqualTo(found.cash.amount)).toBe(true);
        expect(found.beforeTax.amount.lessThanOrEqualTo(found.price.amount)).toBe(true);
      }),
    );
  });
});
