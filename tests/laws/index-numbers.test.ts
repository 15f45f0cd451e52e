import * as fc from "fast-check";
import { expect, test } from "vitest";
import { type Decimal, decimal, HUNDRED, ONE, roundHalfUp, ZERO } from "../../lib/decimal.ts";
import { basketIndex } from "../../lib/prices/basket-index.ts";
import { fisherContributions } from "../../lib/prices/fisher-contributions.ts";
import type { IndexLevel } from "../../lib/prices/index-levels.ts";
import {
  contributions,
  fisherIndex,
  jevonsIndex,
  laspeyresIndex,
  loweIndex,
  paascheIndex,
  type TwoBasketsLine,
} from "../../lib/prices/index-numbers.ts";
import { law } from "../support/law.ts";

/** Places compared where a division or a root may leave dust. */
const PLACES = 25;
const level = (index: IndexLevel | null) => roundHalfUp(index?.level ?? ZERO, PLACES).toFixed(PLACES);
const cents = (most: number) =>
  fc.integer({ min: 1, max: most }).map((value): Decimal => decimal(value).dividedBy(100));
const line: fc.Arbitrary<TwoBasketsLine> = fc.record({
  basePrice: cents(99_999),
  price: cents(99_999),
  baseQuantity: cents(9_999),
  quantity: cents(9_999),
});
const lines = fc.array(line, { minLength: 1, maxLength: 12 });
const factor = fc.integer({ min: 1, max: 5_000 }).map((value) => decimal(value).dividedBy(1000));

const ALL = { laspeyresIndex, paascheIndex, fisherIndex, jevonsIndex, loweIndex };

/** Base and compared side change places. */
const turned = (basket: readonly TwoBasketsLine[]) =>
  basket.map((one) => ({
    basePrice: one.price,
    price: one.basePrice,
    baseQuantity: one.quantity,
    quantity: one.baseQuantity,
  }));

test("contributions sum to the change of the index exactly, however few places they are shown with", () => {
  law(
    fc.property(lines, fc.integer({ min: 0, max: 20 }), (basket, places) => {
      const parts = contributions(basket, places) ?? [];
      const sum = parts.reduce((so, { points }) => so.plus(points), ZERO);
      const change = (loweIndex(basket)?.level ?? ZERO).minus(HUNDRED);
      expect(parts).toHaveLength(basket.length);
      expect(sum.toFixed()).toBe(roundHalfUp(change, places).toFixed());
    }),
    { numRuns: 400 },
  );
});

test("contributions to Fisher's index sum to its change too, each of the sign of its own price", () => {
  law(
    fc.property(lines, fc.integer({ min: 0, max: 20 }), (basket, places) => {
      const parts = fisherContributions(basket, places) ?? [];
      const sum = parts.reduce((so, { points }) => so.plus(points), ZERO);
      const change = (fisherIndex(basket)?.level ?? ZERO).minus(HUNDRED);
      expect(sum.toFixed()).toBe(roundHalfUp(change, places).toFixed());
      for (const [at, { points }] of (fisherContributions(basket) ?? []).entries()) {
        const own = basket[at]?.price.comparedTo(basket[at]?.basePrice ?? ZERO) ?? 0;
        expect(points.isZero() || own === (points.isNegative() ? -1 : 1)).toBe(true);
      }
    }),
    { numRuns: 60 },
  );
});

test("with one basket at both sides they are those of the basket", () => {
  law(
    fc.property(lines, (basket) => {
      const one = basket.map((line) => ({ ...line, baseQuantity: line.quantity }));
      const shown = (parts: ReturnType<typeof contributions>) =>
        parts?.map(({ points }) => roundHalfUp(points, 15).toFixed(15));
      expect(shown(fisherContributions(one, 30))).toEqual(shown(contributions(one, 30)));
    }),
    { numRuns: 100 },
  );
});

test("a contribution is never off by more than one in its last place", () => {
  law(
    fc.property(lines, fc.integer({ min: 0, max: 6 }), (basket, places) => {
      const cost = basket.reduce((sum, one) => sum.plus(one.quantity.times(one.basePrice)), ZERO);
      const exact = basket.map(({ quantity, price, basePrice }) =>
        price.minus(basePrice).times(quantity).times(100).dividedBy(cost),
      );
      contributions(basket, places)?.forEach(({ points }, index) => {
        const off = points.minus(exact[index] ?? ZERO).abs();
        expect(off.lessThanOrEqualTo(decimal(10).pow(-places).plus("1e-18"))).toBe(true);
      });
    }),
  );
});

test("Fisher lies between Laspeyres and Paasche", () => {
  law(
    fc.property(lines, (basket) => {
      const [l, p, f] = [laspeyresIndex(basket), paascheIndex(basket), fisherIndex(basket)].map(
        (one) => one?.level ?? ZERO,
      );
      const inside = (f ?? ZERO).minus(l ?? ZERO).times((f ?? ZERO).minus(p ?? ZERO));
      expect(inside.lessThanOrEqualTo("1e-30")).toBe(true);
    }),
  );
});

test.each([
  ["Fisher", fisherIndex],
  ["Jevons", jevonsIndex],
])("%s turned round in time is its inverse", (_, index) => {
  law(
    fc.property(lines, (basket) => {
      const forth = index(basket)?.level ?? ZERO;
      const back = index(turned(basket))?.level ?? ZERO;
      expect(level({ level: forth.times(back).dividedBy(HUNDRED) })).toBe(level({ level: HUNDRED }));
    }),
  );
});

test("Laspeyres turned round is the inverse of Paasche", () => {
  law(
    fc.property(lines, (basket) => {
      const back = laspeyresIndex(turned(basket))?.level ?? ZERO;
      const forth = paascheIndex(basket)?.level ?? ZERO;
      expect(level({ level: forth.times(back).dividedBy(HUNDRED) })).toBe(level({ level: HUNDRED }));
    }),
  );
});

test.each(Object.entries(ALL))("%s: all prices times k is the index times k", (_, index) => {
  law(
    fc.property(lines, factor, (basket, k) => {
      const scaled = basket.map((one) => ({ ...one, price: one.price.times(k) }));
      expect(level(index(scaled))).toBe(level({ level: (index(basket)?.level ?? ZERO).times(k) }));
    }),
  );
});

test.each(Object.entries(ALL))("%s: bought by another unit, nothing changes", (_, index) => {
  law(
    fc.property(fc.array(fc.tuple(line, factor), { minLength: 1, maxLength: 12 }), (pairs) => {
      const other = pairs.map(([one, units]) => ({
        basePrice: one.basePrice.times(units),
        price: one.price.times(units),
        baseQuantity: one.baseQuantity.dividedBy(units),
        quantity: one.quantity.dividedBy(units),
      }));
      expect(level(index(other))).toBe(level(index(pairs.map(([one]) => one))));
    }),
  );
});

test.each(Object.entries(ALL))("%s: unchanged prices stand at 100", (_, index) => {
  law(
    fc.property(lines, (basket) => {
      expect(level(index(basket.map((one) => ({ ...one, price: one.basePrice }))))).toBe(
        level({ level: HUNDRED }),
      );
    }),
  );
});

test("a price not known changes nothing of the index over the rest, and the share is never above the whole", () => {
  const gap = fc.constantFrom("none", "basePrice", "price", "quantity");
  law(
    fc.property(fc.array(fc.tuple(line, gap), { minLength: 1, maxLength: 12 }), (pairs) => {
      const items = pairs.map(([one, missing], index) => ({
        key: String(index),
        quantity: missing === "quantity" ? null : one.quantity,
        basePrice: missing === "basePrice" ? null : one.basePrice,
        price: missing === "price" ? null : one.price,
      }));
      const found = basketIndex(items);
      const rest = pairs.filter(([, missing]) => missing === "none").map(([one]) => one);
      expect(found.known ? level(found.level) : null).toBe(rest.length === 0 ? null : level(loweIndex(rest)));
      expect(found.coverage.missing.length).toBe(pairs.length - rest.length);
      expect(found.coverage.whole).toBe(rest.length === pairs.length);
      expect(found.coverage.shareOfBaseCost?.lessThanOrEqualTo(ONE) ?? true).toBe(true);
    }),
  );
});
