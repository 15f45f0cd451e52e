import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Decimal, decimal, ONE, ZERO } from "../../lib/decimal.ts";
import { roundToMinorUnit } from "../../lib/money/money.ts";
import { cheapestCover } from "../../lib/prices/cheapest-cover.ts";
import type { Offer } from "../../lib/prices/offer.ts";
import { law } from "../support/law.ts";
import { offerAt } from "../support/price-example.ts";

/** Amounts of an offer that are allowed, up to the first that covers the quantity alone. Whole units only. */
function allowed(offer: Offer, quantity: number): number[] {
  const pack = offer.packSize.toNumber();
  const min = offer.minQuantity.toNumber();
  const max = offer.maxQuantity?.toNumber() ?? Number.POSITIVE_INFINITY;
  const amounts = [0];
  for (let some = pack; some <= max; some += pack) {
    if (some < min) continue;
    amounts.push(some);
    if (some >= quantity) break;
  }
  return amounts;
}

/** The least total in cents per need left, over every allowed amount: nothing clever. Index: units covered, capped. */
function byHand(offers: readonly Offer[], quantity: number): number[] {
  let least = Array.from({ length: quantity + 1 }, (_, units) =>
    units === 0 ? 0 : Number.POSITIVE_INFINITY,
  );
  for (const offer of offers) {
    const cents = offer.price.amount.times(100).toNumber();
    const next = least.map(() => Number.POSITIVE_INFINITY);
    for (const [units, cost] of least.entries()) {
      if (cost === Number.POSITIVE_INFINITY) continue;
      for (const some of allowed(offer, quantity)) {
        const reached = Math.min(quantity, units + some);
        next[reached] = Math.min(next[reached] ?? 0, cost + some * cents);
      }
    }
    least = next;
  }
  return least;
}

const offer = fc
  .record({
    cents: fc.integer({ min: 1, max: 400 }),
    min: fc.oneof(fc.constant(1), fc.integer({ min: 1, max: 90 })),
    span: fc.oneof(fc.constant(null), fc.integer({ min: 0, max: 60 })),
    pack: fc.oneof(fc.constant(1), fc.integer({ min: 1, max: 14 })),
  })
  .map(({ cents, min, span, pack }) => {
    const least = Math.ceil(min / pack) * pack;
    const most = span === null ? null : least + Math.floor(span / pack) * pack;
    return offerAt(decimal(cents).dividedBy(100), { min: least, max: most, pack });
  });

function terms(used: Decimal = ZERO) {
  return { step: ONE, used, currency: "CAD" } as const;
}

function cents(offers: readonly Offer[], quantity: number, used = 0): number {
  const cover = cheapestCover(offers, decimal(quantity), terms(decimal(used)));
  return cover.cost.amount.times(100).toNumber();
}

describe("the cheapest cover", () => {
  test("costs what trying everything costs", () => {
    law(
      fc.property(
        fc.array(offer, { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 1, max: 200 }),
        (offers, quantity) => {
          const least = byHand(offers, quantity);
          const reached = least.findLastIndex((cost) => cost !== Number.POSITIVE_INFINITY);
          const cover = cheapestCover(offers, decimal(quantity), terms());
          expect(cover.uncovered.toNumber()).toBe(quantity - reached);
          expect(cover.cost.amount.times(100).toNumber()).toBe(least[reached]);
        },
      ),
      { numRuns: 1500 },
    );
  });

  test("with some used ones allowed costs what trying everything costs", () => {
    const maybeUsed = fc
      .tuple(offer, fc.boolean())
      .map(([one, used]): Offer => (used ? { ...one, terms: "used" } : one));
    law(
      fc.property(
        fc.array(maybeUsed, { minLength: 1, maxLength: 5 }),
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 0, max: 70 }),
        (offers, quantity, used) => {
          const plain = byHand(
            offers.filter(({ terms }) => terms !== "used"),
            quantity,
          );
          const second = byHand(
            offers.filter(({ terms }) => terms === "used"),
            Math.max(1, Math.min(used, quantity)),
          );
          const least = plain.map(() => Number.POSITIVE_INFINITY);
          for (const [units, cost] of plain.entries())
            for (const [some, more] of second.entries()) {
              if (some > used) continue;
              const reached = Math.min(quantity, units + some);
              least[reached] = Math.min(least[reached] ?? 0, cost + more);
            }
          const reached = least.findLastIndex((cost) => cost !== Number.POSITIVE_INFINITY);
          const cover = cheapestCover(offers, decimal(quantity), terms(decimal(used)));
          expect(cover.uncovered.toNumber()).toBe(quantity - reached);
          expect(cover.cost.amount.times(100).toNumber()).toBe(least[reached]);
        },
      ),
      { numRuns: 1000 },
    );
  });

  test("is itself allowed: whole packs, within minimum and maximum, and adds up", () => {
    law(
      fc.property(fc.array(offer, { maxLength: 8 }), fc.integer({ min: 1, max: 300 }), (offers, quantity) => {
        const cover = cheapestCover(offers, decimal(quantity), terms());
        let taken = ZERO;
        let cost = ZERO;
        for (const take of cover.takes) {
          expect(take.quantity.modulo(take.offer.packSize).isZero()).toBe(true);
          expect(take.quantity.greaterThanOrEqualTo(take.offer.minQuantity)).toBe(true);
          expect(take.offer.maxQuantity?.lessThan(take.quantity) ?? false).toBe(false);
          taken = taken.plus(take.quantity);
          cost = cost.plus(take.quantity.times(take.offer.price.amount));
        }
        expect(taken.toFixed()).toBe(cover.quantity.minus(cover.uncovered).plus(cover.over).toFixed());
        expect(cover.cost.amount.toFixed()).toBe(
          roundToMinorUnit({ amount: cost, currency: "CAD" }).amount.toFixed(),
        );
        expect(cover.over.isZero() || cover.uncovered.isZero()).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  test("never costs more for one more offer while both cover all", () => {
    law(
      fc.property(
        fc.array(offer, { minLength: 1, maxLength: 7 }),
        offer,
        fc.integer({ min: 1, max: 300 }),
        (offers, more, quantity) => {
          fc.pre(cheapestCover(offers, decimal(quantity), terms()).uncovered.isZero());
          expect(cents([...offers, more], quantity)).toBeLessThanOrEqual(cents(offers, quantity));
        },
      ),
      { numRuns: 500 },
    );
  });

  test("never costs less for one unit more", () => {
    law(
      fc.property(
        fc.array(offer, { minLength: 1, maxLength: 7 }),
        fc.integer({ min: 1, max: 300 }),
        (offers, quantity) => {
          expect(cents(offers, quantity + 1)).toBeGreaterThanOrEqual(cents(offers, quantity));
        },
      ),
      { numRuns: 500 },
    );
  });

  test("is the same cover whatever the order of the offers", () => {
    law(
      fc.property(
        fc
          .array(offer, { minLength: 2, maxLength: 7 })
          .chain((offers) =>
            fc.tuple(
              fc.constant(offers),
              fc.shuffledSubarray(offers, { minLength: offers.length, maxLength: offers.length }),
            ),
          ),
        fc.integer({ min: 1, max: 200 }),
        ([offers, shuffled], quantity) => {
          const taken = (some: readonly Offer[]) =>
            cheapestCover(some, decimal(quantity), terms())
              .takes.map((take) => `${take.offer.observationId} ${take.quantity.toFixed()}`)
              .sort();
          expect(taken(shuffled)).toEqual(taken(offers));
        },
      ),
      { numRuns: 300 },
    );
  });

  test("scales with the prices", () => {
    law(
      fc.property(
        fc.array(offer, { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 1, max: 200 }),
        fc.integer({ min: 2, max: 50 }),
        (offers, quantity, factor) => {
          const dearer = offers.map((one) => ({
            ...one,
            price: { ...one.price, amount: one.price.amount.times(factor) },
          }));
          expect(cents(dearer, quantity)).toBe(cents(offers, quantity) * factor);
        },
      ),
      { numRuns: 300 },
    );
  });
});
