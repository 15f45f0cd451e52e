import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import type { CurrencyCode } from "../../../lib/money/currencies.ts";
import { money } from "../../../lib/money/money.ts";
import { split } from "../../../lib/money/split.ts";

function shares(amount: string, currency: CurrencyCode, weights: readonly (string | number)[]): string[] {
  return split(money(amount, currency), weights.map(decimal)).map((share) => share.amount.toString());
}

test("a delivery charge is shared over three lines without losing a cent", () => {
  expect(shares("100.00", "CAD", [1, 1, 1])).toEqual(["33.34", "33.33", "33.33"]);
});

test("the cents left over go to the largest remainders, the earlier first at a tie", () => {
  expect(shares("0.05", "CAD", [3, 7])).toEqual(["0.02", "0.03"]);
  expect(shares("10.00", "CAD", [1, 2, 4])).toEqual(["1.43", "2.86", "5.71"]);
});

test("a negative amount is shared like the positive one", () => {
  expect(shares("-100.00", "CAD", [1, 1, 1])).toEqual(["-33.34", "-33.33", "-33.33"]);
});

test("yen are shared in whole yen and dinars in thousandths", () => {
  expect(shares("100", "JPY", [1, 1, 1])).toEqual(["34", "33", "33"]);
  expect(shares("1", "IQD", [1, 1, 1])).toEqual(["0.334", "0.333", "0.333"]);
});

test("a line of no weight bears nothing", () => {
  expect(shares("10.00", "CAD", [1, 0])).toEqual(["10", "0"]);
});

test("lines that all weigh nothing bear equal parts", () => {
  expect(shares("10.00", "CAD", [0, 0])).toEqual(["5", "5"]);
});

test("an unrounded amount is rounded once, before it is shared", () => {
  expect(shares("10.005", "CAD", [1, 1])).toEqual(["5.01", "5"]);
});

test("nobody, or a negative weight, is a mistake of the program", () => {
  expect(() => shares("10", "CAD", [])).toThrow(RangeError);
  expect(() => shares("10", "CAD", [2, -1])).toThrow(RangeError);
});
