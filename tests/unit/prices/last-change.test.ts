import { expect, test } from "vitest";
import { decimal, roundHalfUp } from "../../../lib/decimal.ts";
import { lastChange } from "../../../lib/prices/last-change.ts";
import type { Observation } from "../../../lib/prices/observation.ts";
import { day, daysAgo, observation, SHEET, store, TODAY, valuation } from "../../support/price-example.ts";

/** "price percent", percent to two places; "none" without a price. */
function change(all: readonly Observation[], on = TODAY, given = valuation()): string {
  const found = lastChange(on, all, SHEET, given);
  if (found === null) return "none";
  return `${found.price.amount} ${found.percent === null ? "first" : roundHalfUp(found.percent, 2)}`;
}
const seen = (amount: string, ago: number, given: Partial<Observation> = {}) =>
  observation(amount, { seenOn: daysAgo(ago), ...given });

test("the change is in percent of the earlier price", () => {
  expect(change([seen("120", 20), seen("126", 5)])).toBe("126 5");
});

test("a first price has no change", () => {
  expect(change([seen("20", 5)])).toBe("20 first");
});

test("a store is compared with itself, not with the one seen before it", () => {
  expect(change([seen("20", 20), seen("40", 10, { storeId: "far" }), seen("22", 5)])).toBe("22 10");
});

test("a single sheet is compared with a single sheet, not with a lift", () => {
  expect(change([seen("20", 20), seen("15", 10, { minQuantity: decimal(40) }), seen("22", 5)])).toBe("22 10");
});

test("the shelf price is the one that changed, whatever special came after it", () => {
  expect(change([seen("20", 20), seen("22", 5), seen("9", 1, { terms: "special" })])).toBe("22 10");
});

test("where there is no shelf price the newest other price counts, but neither a receipt nor a used one", () => {
  const other = [
    seen("9", 9, { terms: "special" }),
    seen("5", 2, { terms: "paid" }),
    seen("1", 1, { terms: "used" }),
  ];
  expect(change(other)).toBe("9 first");
});

test("what was seen after the day is not known on it", () => {
  expect(change([seen("20", 20), seen("22", 5)], daysAgo(6))).toBe("20 first");
});

test("each price is valued on its own day: a tax cut between them is a change", () => {
  const taxed = valuation({ stores: [store("near", { taxRegion: "CA-NS" })] });
  const tags = [
    observation("100", { seenOn: day("2025-03-01") }),
    observation("100", { seenOn: day("2025-05-01") }),
  ];
  expect(change(tags, TODAY, taxed)).toBe("114 -0.87");
});

test("one that cannot be valued gives way to the one before it", () => {
  const abroad = observation("20", { seenOn: daysAgo(1), currency: "USD" });
  expect(change([seen("30", 20), abroad])).toBe("30 first");
});

test("no price is no change", () => {
  expect(change([])).toBe("none");
  expect(change([observation(null)])).toBe("none");
});
