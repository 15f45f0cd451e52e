import * as fc from "fast-check";
import { expect, test } from "vitest";
import { type Decimal, decimal } from "../../lib/decimal.ts";
import { inUnit, sameMeasure } from "../../lib/measure/in-unit.ts";
import { UNITS, type UnitCode } from "../../lib/measure/units.ts";
import { law } from "../support/law.ts";

const CODES = Object.keys(UNITS) as UnitCode[];
const amount = fc.integer({ min: 1, max: 1_000_000_000 }).map((value) => decimal(value).dividedBy(1000));
const unit = fc.constantFrom(...CODES);
/** Units of one measure with the first. */
const alike = unit.chain((first) => {
  const others = fc.constantFrom(...CODES.filter((code) => sameMeasure(first, code)));
  return fc.tuple(fc.constant(first), others, others);
});
const near = (a: Decimal, b: Decimal) => expect(a.dividedBy(b).minus(1).abs().lessThan("1e-30")).toBe(true);

test("a quantity read in another unit and back is what it was", () => {
  law(
    fc.property(amount, alike, (value, [from, to]) => {
      near(inUnit({ value: inUnit({ value, unit: from }, to), unit: to }, from), value);
    }),
    { numRuns: 500 },
  );
});

test("by way of a third unit it is the same", () => {
  law(
    fc.property(amount, alike, (value, [from, through, to]) => {
      const step = { value: inUnit({ value, unit: from }, through), unit: through };
      near(inUnit(step, to), inUnit({ value, unit: from }, to));
    }),
    { numRuns: 500 },
  );
});

test("units of two measures are never read in each other", () => {
  law(
    fc.property(amount, unit, unit, (value, from, to) => {
      fc.pre(!sameMeasure(from, to));
      expect(() => inUnit({ value, unit: from }, to)).toThrow("convert through a material's dimensions");
    }),
    { numRuns: 500 },
  );
});
