import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { money } from "../../../lib/money/money.ts";
import {
  type IndexLevel,
  type IndexPoints,
  levelOf,
  type PercentChange,
  percentBetween,
  pointsBetween,
  realChange,
  rebased,
} from "../../../lib/prices/index-levels.ts";
import {
  contributions,
  fisherIndex,
  jevonsIndex,
  laspeyresIndex,
  loweIndex,
  paascheIndex,
} from "../../../lib/prices/index-numbers.ts";
import { realPrice } from "../../../lib/prices/real-price.ts";

const line = (quantity: number, base: number, now: number, baseQuantity = quantity) => ({
  quantity: decimal(quantity),
  baseQuantity: decimal(baseQuantity),
  basePrice: decimal(base),
  price: decimal(now),
});
const at = (level: number): IndexLevel => ({ level: decimal(level) });

describe("an index", () => {
  test("weighs each price by the quantity of the basket", () => {
    expect(loweIndex([line(1, 10, 20), line(3, 10, 10)])?.level.toFixed()).toBe("125");
  });

  test("of Laspeyres takes the base's quantities, of Paasche the other side's", () => {
    const lines = [line(3, 10, 20, 1), line(1, 10, 10, 3)];
    expect(laspeyresIndex(lines)?.level.toFixed()).toBe("125");
    expect(paascheIndex(lines)?.level.toFixed()).toBe("175");
  });

  test("of Jevons knows no quantities: one doubled and one halved is no change", () => {
    expect(jevonsIndex([line(1, 10, 20), line(900, 10, 5)])?.level.toFixed(20)).toBe(
      "100.00000000000000000000",
    );
  });

  test.each([
    ["Lowe", loweIndex],
    ["Laspeyres", laspeyresIndex],
    ["Paasche", paascheIndex],
    ["Fisher", fisherIndex],
    ["Jevons", jevonsIndex],
    ["contributions", contributions],
  ])("of no lines is not known (%s)", (_, index) => {
    expect(index([])).toBeNull();
  });

  test("of a basket of nothing is not known", () => {
    expect(loweIndex([line(0, 10, 20)])).toBeNull();
    expect(fisherIndex([line(0, 10, 20, 1)])).toBeNull();
    expect(contributions([line(0, 10, 20)])).toBeNull();
  });

  test.each([
    ["a price of zero", line(1, 10, 0)],
    ["a base price of zero", line(1, 0, 10)],
    ["a price below zero", line(1, 10, -1)],
    ["a quantity below zero", line(-1, 10, 10)],
  ])("refuses %s: what is not known is left out, never 0", (_, wrong) => {
    expect(() => loweIndex([wrong])).toThrow(RangeError);
    expect(() => contributions([wrong])).toThrow(RangeError);
  });

  test("of Jevons refuses a price of zero", () => {
    expect(() => jevonsIndex([line(1, 10, 0)])).toThrow(RangeError);
  });
});

test("a contribution carries what rounding left over to the next, so none is off by more than one in its last place", () => {
  const thirds = [line(1, 3, 4), line(1, 3, 4), line(1, 3, 4)];
  expect(contributions(thirds, 0)?.map(({ points }) => points.toFixed())).toEqual(["11", "11", "11"]);
  expect(contributions(thirds, 1)?.map(({ points }) => points.toFixed())).toEqual(["11.1", "11.1", "11.1"]);
  const sixths = [line(1, 2, 3), line(1, 2, 3), line(1, 2, 3)];
  expect(contributions(sixths, 0)?.map(({ points }) => points.toFixed())).toEqual(["17", "16", "17"]);
});

describe("percent and index points", () => {
  test("from 120 to 126 are six points and five percent", () => {
    expect(pointsBetween(at(120), at(126)).points.toFixed()).toBe("6");
    expect(percentBetween(at(120), at(126)).percent.toFixed()).toBe("5");
  });

  test("are different types: one never stands where the other belongs", () => {
    const percent = (change: PercentChange) => change.percent?.toFixed();
    const points = (change: IndexPoints) => change.points?.toFixed();
    // @ts-expect-error index points are no percent
    expect(percent(pointsBetween(at(120), at(126)))).toBeUndefined();
    // @ts-expect-error a percent is no index points
    expect(points(percentBetween(at(120), at(126)))).toBeUndefined();
    // @ts-expect-error index points are no level
    expect(() => rebased(pointsBetween(at(120), at(126)), at(100))).toThrow();
  });

  test("a level on another base moves by the same percents", () => {
    expect(rebased(at(126), at(120)).level.toFixed()).toBe("105");
    expect(levelOf(decimal("1.05")).level.toFixed()).toBe("105");
  });

  test.each([0, -5])("nothing is measured against a level of %i", (level) => {
    expect(() => percentBetween(at(level), at(100))).toThrow(RangeError);
    expect(() => rebased(at(100), at(level))).toThrow(RangeError);
    expect(() => realPrice(money(1, "CAD"), at(level), at(100))).toThrow(RangeError);
    expect(() => realPrice(money(1, "CAD"), at(100), at(level))).toThrow(RangeError);
  });

  test("a fall of the whole leaves no money to be real in", () => {
    expect(() => realChange({ percent: decimal(5) }, { percent: decimal(-100) })).toThrow(RangeError);
  });
});

test("a real price is the nominal one in the money of the other day, in its own currency", () => {
  const real = realPrice(money(30, "USD"), at(150), at(120));
  expect(`${real.amount.toFixed()} ${real.currency}`).toBe("24 USD");
});
