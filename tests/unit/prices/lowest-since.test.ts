import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { lowestSince } from "../../../lib/prices/lowest-since.ts";
import type { Observation } from "../../../lib/prices/observation.ts";
import { day, observation, rate, SHEET, store, valuation } from "../../support/price-example.ts";

const logged = observation("20.00", { seenOn: day("2026-03-02") });
const seen = (amount: string, on: string, given: Partial<Observation> = {}) =>
  observation(amount, { seenOn: day(on), ...given });
const lowest = (others: readonly Observation[], one = logged, given = valuation()) =>
  lowestSince(one, others, SHEET, given);

test("a price as low, fourteen months ago, makes this the lowest in fourteen months", () => {
  const found = lowest([seen("20.00", "2025-01-02"), seen("25.00", "2025-06-01")]);
  expect([found.lowestInMonths, found.lowestEver]).toEqual([14, false]);
});

test("months are whole ones: a day short is one less", () => {
  expect(lowest([seen("19.00", "2025-01-03")]).lowestInMonths).toBe(13);
});

test("the newest price as low counts", () => {
  expect(lowest([seen("19.00", "2025-01-02"), seen("20.00", "2026-01-02")]).lowestInMonths).toBe(2);
});

test("none as low makes it the lowest ever, over what is known", () => {
  expect(lowest([seen("21.00", "2025-03-02"), seen("25.00", "2025-06-01")])).toEqual({
    lowestInMonths: null,
    lowestEver: true,
    knownMonths: 12,
    observations: 2,
  });
});

test("a first price is not called the lowest", () => {
  expect(lowest([])).toEqual({ lowestInMonths: null, lowestEver: false, knownMonths: 0, observations: 0 });
});

test("the same day and the price itself do not count", () => {
  expect(lowest([logged, seen("10.00", "2026-03-02")]).observations).toBe(0);
});

test("used ones stand beside used ones only", () => {
  const used = seen("5.00", "2025-01-02", { terms: "used" });
  expect(lowest([used]).observations).toBe(0);
  expect(lowest([used], { ...logged, terms: "used" }).observations).toBe(1);
});

test("each price is valued on its own day", () => {
  const taxed = valuation({ stores: [store("near", { taxRegion: "CA-NS" })] });
  expect(lowest([seen("19.90", "2025-03-02")], logged, taxed).lowestEver).toBe(true);
  expect(lowest([seen("19.90", "2025-04-02")], logged, taxed).lowestEver).toBe(false);
});

test("a foreign price counts once its import charges are confirmed", () => {
  const abroad = seen("10.00", "2026-02-02", { storeId: "across", exemptFrom: ["Sales tax"] });
  const there = (importCharges: [] | null) =>
    valuation({ stores: [store("near"), store("across", { taxRegion: "US-ME", importCharges })] });
  expect(lowest([abroad], logged, there(null)).observations).toBe(0);
  expect(lowest([abroad], logged, there([])).lowestInMonths).toBe(1);
});

test("a third that does not end is as low as the same third read another way", () => {
  const three = { quantity: decimal(3), unit: "sheet" } as const;
  const six = { quantity: decimal(6), unit: "sheet" } as const;
  const earlier = seen("40.00", "2026-01-02", { per: six });
  expect(lowest([earlier], { ...logged, per: three }).lowestInMonths).toBe(2);
});

test("a price without a rate on its day is not held against it", () => {
  const dollars = observation("10.00", { seenOn: day("2025-01-02"), currency: "USD" });
  const there = valuation({ rates: [rate("2026-03-01", "USD", "CAD", "1.40")] });
  expect(lowest([dollars], logged, there).observations).toBe(0);
});
