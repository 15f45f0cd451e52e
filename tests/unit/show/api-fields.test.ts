import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { money } from "../../../lib/money/money.ts";
import {
  decimalShape,
  enteredMoney,
  exactDigits,
  totalDigits,
  totalDigitsOrNull,
  unitPriceDigits,
} from "../../../lib/show/api-fields.ts";

test("digits are plain, never with an exponent", () => {
  expect(exactDigits(decimal("0.0000001"))).toBe("0.0000001");
  expect(exactDigits(decimal("1000000000000000000000000"))).toBe("1000000000000000000000000");
});

test("an amount as entered keeps its places and has at least those of its currency", () => {
  expect(enteredMoney(money("41.9", "CAD"))).toEqual({ amount: "41.90", currency: "CAD" });
  expect(enteredMoney(money("41.9005", "CAD")).amount).toBe("41.9005");
  expect(enteredMoney(money("500", "JPY")).amount).toBe("500");
  expect(enteredMoney(money("1.5", "KWD")).amount).toBe("1.500");
});

test("a total is rounded to the minor unit, half up", () => {
  expect(totalDigits(money("2.675", "CAD"))).toBe("2.68");
  expect(totalDigits(money("-0.005", "CAD"))).toBe("-0.01");
  expect(totalDigits(money("1.0005", "KWD"))).toBe("1.001");
  expect(totalDigitsOrNull(null)).toBeNull();
});

test("a unit price has at most six places", () => {
  expect(unitPriceDigits(money(decimal(20).dividedBy(3), "CAD"))).toBe("6.666667");
  expect(unitPriceDigits(money("45.6", "CAD"))).toBe("45.60");
});

test("a decimal in an answer is text: a number, an exponent or a comma is none", () => {
  expect(decimalShape.safeParse("-12.50").success).toBe(true);
  for (const wrong of [12.5, "1e3", "1,5", "", "12.", null]) {
    expect(decimalShape.safeParse(wrong).success).toBe(false);
  }
});
