import * as fc from "fast-check";
import { expect, test } from "vitest";
import { decimal, ONE, ZERO } from "../../lib/decimal.ts";
import { money } from "../../lib/money/money.ts";
import { cheapestCover } from "../../lib/prices/cheapest-cover.ts";
import { packOfFree } from "../../lib/prices/free-with-bought.ts";
import type { Observation } from "../../lib/prices/observation.ts";
import { offersOn } from "../../lib/prices/offers.ts";
import { law } from "../support/law.ts";
import { observation, SHEET, store, TODAY, valuation } from "../support/price-example.ts";

/** A tag as a person reads it, in whole numbers: cents for so many, from, at most, in packs of. */
type Tag = Readonly<{ cents: number; per: number; min: number; max: number | null; pack: number }>;

/** Every `per` divides it, so that a price of one is a whole number of parts of a cent. */
const PARTS = 60;
const STORES = Array.from({ length: 8 }, (_, at) => store(`store ${at}`));

const limits = {
  cents: fc.integer({ min: 1, max: 4000 }),
  max: fc.option(fc.integer({ min: 0, max: 70 }), { nil: null, freq: 2 }),
};
/** A shelf price, "3 for 20.00", "10 and more", full packs, and "buy 2, get 1 free", each perhaps limited. */
const tag: fc.Arbitrary<Tag> = fc
  .record({
    ...limits,
    kind: fc.constantFrom("shelf", "for", "break", "pack", "free", "any"),
    count: fc.integer({ min: 2, max: 6 }),
    from: fc.integer({ min: 2, max: 60 }),
    packs: fc.integer({ min: 2, max: 42 }),
  })
  .map(({ cents, max, kind, count, from, packs }) => {
    const min = kind === "break" || kind === "any" ? from : 1;
    const pack = kind === "pack" || kind === "any" ? packs : kind === "free" ? count : 1;
    const per = kind === "for" || kind === "free" ? count : 1;
    const least = Math.ceil(min / pack) * pack;
    return { cents, per, min, max: max === null ? null : least + max, pack };
  });

/** The tag as it is kept: each at a store of its own, so that none replaces another. */
function seen({ cents, per, min, max, pack }: Tag, at: number): Observation {
  return observation(null, {
    storeId: `store ${at}`,
    terms: min > 1 ? "quantity-break" : "shelf",
    amount: money(decimal(cents).dividedBy(100), "CAD"),
    per: { quantity: decimal(per), unit: "sheet" },
    minQuantity: min > 1 ? decimal(min) : null,
    maxQuantity: max === null ? null : decimal(max),
    packSize: pack > 1 ? decimal(pack) : null,
  });
}

function coverOf(tags: readonly Tag[], quantity: number) {
  const { offers } = offersOn(TODAY, tags.map(seen), SHEET, valuation({ stores: STORES }));
  return cheapestCover(offers, decimal(quantity), { step: ONE, used: ZERO, currency: "CAD" });
}

/**
 * The least money for exactly so many units, by trying everything: a dynamic programme over whole units, read from the
 * tags. Index: units taken, up to `most`. In parts of a cent.
 */
function leastByUnits(tags: readonly Tag[], most: number): number[] {
  let least = Array.from({ length: most + 1 }, (_, units) => (units === 0 ? 0 : Number.POSITIVE_INFINITY));
  for (const { cents, per, min, max, pack } of tags) {
    const each = (cents * PARTS) / per;
    const next = [...least];
    for (let some = pack; some <= Math.min(most, max ?? most); some += pack) {
      if (some < min) continue;
      for (let before = 0; before + some <= most; before += 1) {
        const cost = (least[before] ?? 0) + some * each;
        if (cost < (next[before + some] ?? 0)) next[before + some] = cost;
      }
    }
    least = next;
  }
  return least;
}

/** No cheapest way takes as much more than needed as this: it would do without one of its tags, or with a pack less. */
const BEYOND = 110;

function beaten(tags: readonly Tag[], quantity: number): { cents: number; units: number } | null {
  const enough = leastByUnits(tags, quantity + BEYOND).slice(quantity);
  const least = Math.min(...enough);
  // Half up to the cent, in whole numbers. Of equal totals, the smaller quantity.
  return least === Number.POSITIVE_INFINITY
    ? null
    : { cents: Math.floor((2 * least + PARTS) / (2 * PARTS)), units: quantity + enough.indexOf(least) };
}

test("the cheapest way to buy n is never beaten by trying everything, nor leaves more over", () => {
  let covered = 0;
  let over = 0;
  law(
    fc.property(
      fc.array(tag, { minLength: 1, maxLength: 6 }),
      fc.integer({ min: 1, max: 200 }),
      (tags, quantity) => {
        const best = beaten(tags, quantity);
        const cover = coverOf(tags, quantity);
        expect(cover.uncovered.greaterThan(0)).toBe(best === null);
        if (best === null) return;
        covered += 1;
        if (best.units > quantity) over += 1;
        expect(cover.cost.amount.times(100).toNumber()).toBe(best.cents);
        expect(cover.over.toNumber()).toBe(best.units - quantity);
      },
    ),
    { numRuns: 400 },
  );
  // The cases tried are no idle ones: most can be covered, and in many more than needed is bought.
  expect([covered > 200, over > 60]).toEqual([true, true]);
});

test("quantity breaks of one store: the least over its breaks of the larger of n and the break, times the price", () => {
  const breaks = fc.uniqueArray(fc.integer({ min: 2, max: 120 }), { maxLength: 4 }).chain((mins) =>
    fc.tuple(
      fc.constant([1, ...mins]),
      fc.array(fc.integer({ min: 1, max: 4000 }), {
        minLength: mins.length + 1,
        maxLength: mins.length + 1,
      }),
    ),
  );
  law(
    fc.property(breaks, fc.integer({ min: 1, max: 200 }), ([mins, prices], quantity) => {
      const tags = mins.map((min, at): Tag => ({ cents: prices[at] ?? 1, per: 1, min, max: null, pack: 1 }));
      const inOneStore = tags.map((one) => ({ ...seen(one, 0), storeId: "store 0" }));
      const { offers } = offersOn(TODAY, inOneStore, SHEET, valuation({ stores: STORES }));
      expect(offers).toHaveLength(mins.length);
      const cover = cheapestCover(offers, decimal(quantity), { step: ONE, used: ZERO, currency: "CAD" });
      const textbook = Math.min(...tags.map(({ min, cents }) => Math.max(min, quantity) * cents));
      expect(cover.cost.amount.times(100).toNumber()).toBe(textbook);
    }),
    { numRuns: 300 },
  );
});

test("ten are bought when nine cost more, for every price and break where that is so", () => {
  law(
    fc.property(
      fc.integer({ min: 2, max: 200 }),
      fc.integer({ min: 2, max: 4000 }),
      fc.integer({ min: 1, max: 3999 }),
      (many, shelf, less) => {
        const cheaper = Math.max(1, shelf - less);
        const tags: Tag[] = [
          { cents: shelf, per: 1, min: 1, max: null, pack: 1 },
          { cents: cheaper, per: 1, min: many, max: null, pack: 1 },
        ];
        const cover = coverOf(tags, many - 1);
        const overPays = many * cheaper < (many - 1) * shelf;
        expect(cover.over.toNumber()).toBe(overPays ? 1 : 0);
      },
    ),
    { numRuns: 300 },
  );
});

test("buy a, get b free, with single ones at the same price: whole packs, then the rest paid for, never more than a", () => {
  law(
    fc.property(
      fc.integer({ min: 1, max: 9 }),
      fc.integer({ min: 1, max: 9 }),
      fc.integer({ min: 1, max: 4000 }),
      fc.integer({ min: 1, max: 200 }),
      (paid, free, cents, quantity) => {
        const given = { amount: decimal(cents), per: ONE };
        const { amount, per, packSize } = packOfFree(given, { paid: decimal(paid), free: decimal(free) });
        const pack = {
          cents: amount.toNumber(),
          per: per.toNumber(),
          min: 1,
          max: null,
          pack: packSize.toNumber(),
        };
        const cover = coverOf([{ cents, per: 1, min: 1, max: null, pack: 1 }, pack], quantity);
        const rest = quantity % (paid + free);
        const units = Math.floor(quantity / (paid + free)) * paid + Math.min(rest, paid);
        expect(cover.cost.amount.times(100).toNumber()).toBe(units * cents);
      },
    ),
    { numRuns: 300 },
  );
});
