import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Decimal, decimal, ONE, roundHalfUp } from "../../lib/decimal.ts";
import { convertFor, purchaseStep, roundUpToPurchase } from "../../lib/materials/convert.ts";
import type { Material } from "../../lib/materials/material.ts";
import { PURCHASE_UNITS, UNITS, type UnitCode } from "../../lib/measure/units.ts";
import { allInPrice } from "../../lib/prices/all-in-price.ts";
import { law } from "../support/law.ts";
import { observation, TODAY, valuation } from "../support/price-example.ts";
import { someMaterial } from "../support/some-material.ts";

const CODES = Object.keys(UNITS) as UnitCode[];
const amount = fc.integer({ min: 1, max: 100_000_000 }).map((value) => decimal(value).dividedBy(1000));
const sixteenths = (most: number) => fc.integer({ min: 1, max: most * 16 }).map((value) => `${value}/16 in`);

/** Boards, panels and bundles of any size. */
const material: fc.Arbitrary<Material> = fc
  .record({
    purchaseUnit: fc.constantFrom(
      ...([
        "piece",
        "sheet",
        "bundle",
        "bag",
        "linear-foot",
        "square-foot",
        "mbf",
        "msf",
        "msf-3-8",
      ] as const),
      "cubic-yard" as const,
    ),
    nominalThickness: sixteenths(4),
    nominalWidth: sixteenths(12),
    length: fc.integer({ min: 1, max: 24 }).map((feet) => `${feet} ft`),
    faceWidth: sixteenths(48),
    thickness: sixteenths(4),
    pieces: fc.option(fc.integer({ min: 2, max: 60 }).map((count) => `${count} pieces`)),
    weight: fc.option(fc.integer({ min: 1, max: 90 }).map((pounds) => `${pounds} lb`)),
    density: fc.option(fc.integer({ min: 20, max: 150 }).map((pounds) => `${pounds} pcf`)),
    coverageWidth: fc.option(sixteenths(36)),
    coverageLength: fc.option(fc.integer({ min: 1, max: 100 }).map((feet) => `${feet} ft`)),
    yield: fc.option(fc.integer({ min: 1, max: 9 }).map((tenths) => `0.${tenths} cu ft`)),
  })
  .map(({ purchaseUnit, ...sizes }) => {
    const known = Object.entries(sizes).filter(([, size]) => size !== null);
    return someMaterial(purchaseUnit, Object.fromEntries(known), { id: "sheet" });
  });
const near = (a: Decimal, b: Decimal) => expect(a.dividedBy(b).minus(1).abs().lessThan("1e-30")).toBe(true);

describe("a quantity of a material", () => {
  test("read in another unit and back is what it was", () => {
    law(
      fc.property(
        material,
        amount,
        fc.constantFrom(...CODES),
        fc.constantFrom(...CODES),
        (one, value, from, to) => {
          const there = convertFor(one, { value, unit: from }, to);
          if (!there.ok) return;
          const back = convertFor(one, { value: there.value, unit: to }, from);
          expect(back.ok).toBe(true);
          if (back.ok) near(back.value, value);
        },
      ),
      { numRuns: 2000 },
    );
  });

  test("that cannot be read one way cannot be read the other", () => {
    law(
      fc.property(
        material,
        amount,
        fc.constantFrom(...CODES),
        fc.constantFrom(...CODES),
        (one, value, from, to) => {
          const there = convertFor(one, { value, unit: from }, to).ok;
          expect(convertFor(one, { value, unit: to }, from).ok).toBe(there);
        },
      ),
      { numRuns: 2000 },
    );
  });

  test("rounded up to what can be bought is enough, and less than a step too much", () => {
    law(
      fc.property(amount, fc.constantFrom(...PURCHASE_UNITS), (value, unit) => {
        const bought = roundUpToPurchase(value, unit);
        expect(bought.greaterThanOrEqualTo(value)).toBe(true);
        expect(bought.minus(value).lessThan(purchaseStep(unit))).toBe(true);
        expect(roundUpToPurchase(bought, unit).toFixed()).toBe(bought.toFixed());
      }),
    );
  });
});

test("one price, stated per any unit the material can be read in, is the same price", () => {
  law(
    fc.property(material, amount, fc.constantFrom(...PURCHASE_UNITS), (one, value, unit) => {
      const inOne = convertFor(one, { value: ONE, unit: one.purchaseUnit }, unit);
      if (!inOne.ok) return;
      const perUnit = value.dividedBy(inOne.value);
      const seen = { ...observation("1"), amount: { amount: perUnit, currency: "CAD" as const } };
      const found = allInPrice({ ...seen, per: { quantity: ONE, unit } }, one, valuation(), TODAY);
      expect(found.known && roundHalfUp(found.price.amount, 2).toFixed()).toBe(
        roundHalfUp(value, 2).toFixed(),
      );
    }),
    { numRuns: 1000 },
  );
});
