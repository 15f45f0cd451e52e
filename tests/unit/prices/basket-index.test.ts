import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { type BasketItem, basketIndex } from "../../../lib/prices/basket-index.ts";

const some = (value: number | null) => (value === null ? null : decimal(value));
const item = (key: string, quantity: number | null, base: number | null, now: number | null): BasketItem => ({
  key,
  quantity: some(quantity),
  basePrice: some(base),
  price: some(now),
});

const SHEETS = item("sheets", 10, 20, 22);

test("over all of it, the index says so and what it costs", () => {
  const found = basketIndex([SHEETS, item("studs", 100, 4, 3)]);
  expect(found).toMatchObject({ known: true, coverage: { whole: true, missing: [] } });
  if (!found.known) throw new Error("not known");
  expect([found.baseCost, found.cost].map(String)).toEqual(["600", "520"]);
  expect(found.level.level.toFixed(4)).toBe("86.6667");
});

test("a price not known is left out, and the share of the rest is said", () => {
  const found = basketIndex([SHEETS, item("studs", 100, 4, null)]);
  expect(found.known && found.level.level.toFixed()).toBe("110");
  expect(found.coverage.whole).toBe(false);
  expect(found.coverage.shareOfBaseCost?.times(3).toFixed(20)).toBe("1.00000000000000000000");
});

test.each([
  ["quantity", item("x", null, 1, 1)],
  ["base-price", item("x", 1, null, 1)],
  ["price", item("x", 1, 1, null)],
  ["both-prices", item("x", 1, null, null)],
] as const)("what is missing is named: %s", (missing, wrong) => {
  expect(basketIndex([SHEETS, wrong]).coverage.missing).toEqual([{ key: "x", missing }]);
});

test("with nothing known on both sides the index is not known, never 100 and never 0", () => {
  const found = basketIndex([item("sheets", 10, 20, null), item("studs", 100, null, 3)]);
  expect(found.known).toBe(false);
  expect(found.coverage.shareOfBaseCost?.toFixed()).toBe("0");
  expect(basketIndex([item("studs", 100, null, 3)]).coverage.shareOfBaseCost).toBeNull();
  expect(basketIndex([])).toMatchObject({ known: false, coverage: { whole: false } });
});

test("a material of which nothing is required does not count, priced or not", () => {
  const found = basketIndex([SHEETS, item("studs", 0, null, null)]);
  expect(found.coverage).toMatchObject({ whole: true, missing: [] });
  expect(found.coverage.known.map(({ key }) => key)).toEqual(["sheets"]);
});
