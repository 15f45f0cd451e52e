import { expect, test } from "vitest";
import type { CurrencyCode } from "../../../lib/money/currencies.ts";
import {
  add,
  CurrencyMismatch,
  type Money,
  money,
  roundToMinorUnit,
  subtract,
  sum,
  times,
} from "../../../lib/money/money.ts";

const text = (value: Money): string => `${value.amount} ${value.currency}`;

test("amounts of one currency add and subtract exactly", () => {
  expect(text(add(money("0.1", "CAD"), money("0.2", "CAD")))).toBe("0.3 CAD");
  expect(text(subtract(money("0.3", "CAD"), money("0.1", "CAD")))).toBe("0.2 CAD");
});

test("mixing currencies does not compile", () => {
  // @ts-expect-error CAD and USD are different types
  expect(() => add(money(1, "CAD"), money(1, "USD"))).toThrow(CurrencyMismatch);
  // @ts-expect-error CAD and USD are different types
  expect(() => subtract(money(1, "CAD"), money(1, "USD"))).toThrow(CurrencyMismatch);
  // @ts-expect-error CAD and USD are different types
  expect(() => sum([money(1, "CAD")], "USD")).toThrow(CurrencyMismatch);
});

test("currencies that only meet at run time are refused with what to do about it", () => {
  const dollars: Money<CurrencyCode> = money(1, "USD");
  const home: Money<CurrencyCode> = money(1, "CAD");
  expect(() => add(home, dollars)).toThrow("convert one of them with a dated exchange rate first");
});

test("a unit price is not rounded before it multiplies", () => {
  // 3 for 20.00: thirty-eight cost 253.33, not 38 x 6.67 = 253.46.
  const each = money(money(20, "CAD").amount.dividedBy(3), "CAD");
  expect(text(roundToMinorUnit(times(each, 38)))).toBe("253.33 CAD");
});

test("the sum of nothing is zero of the currency", () => {
  expect(text(sum([], "JPY"))).toBe("0 JPY");
});

test("an amount is rounded half up to its currency's minor unit", () => {
  expect(text(roundToMinorUnit(money("1.005", "CAD")))).toBe("1.01 CAD");
  expect(text(roundToMinorUnit(money("0.5", "JPY")))).toBe("1 JPY");
  expect(text(roundToMinorUnit(money("1.0005", "IQD")))).toBe("1.001 IQD");
  expect(text(roundToMinorUnit(money("1.00005", "CLF")))).toBe("1.0001 CLF");
});

test("a refund is rounded away from zero, as the charge was", () => {
  expect(text(roundToMinorUnit(money("-1.005", "CAD")))).toBe("-1.01 CAD");
});
