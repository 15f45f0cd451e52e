import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { money } from "../../../lib/money/money.ts";
import {
  moneyText,
  plainMoney,
  quantityText,
  unitPriceText,
  wholeMoneyText,
} from "../../../lib/show/money-text.ts";

test("an amount has the places of its currency", () => {
  expect(moneyText(money("1058.645", "CAD"), "en-CA")).toBe("1,058.65");
  expect(moneyText(money("1058.5", "JPY"), "en-CA")).toBe("1,059");
});

test("an amount too long for a float keeps its cents", () => {
  expect(moneyText(money("12345678901234567.89", "CAD"), "en-CA")).toBe("12,345,678,901,234,567.89");
});

test("a gain carries its plus and a loss its minus", () => {
  expect(moneyText(money("12", "CAD"), "en-CA", { signed: true })).toBe("+12.00");
  expect(moneyText(money("-12", "CAD"), "en-CA", { signed: true })).toBe("-12.00");
  expect(moneyText(money("0", "CAD"), "en-CA", { signed: true })).toBe("0.00");
});

test("a headline leaves the cents out, half up", () => {
  expect(wholeMoneyText(money("3419.50", "CAD"), "en-CA")).toBe("3,420");
});

test("a unit price below one shows two places more", () => {
  expect(unitPriceText(money("0.0345", "CAD"), "en-CA")).toBe("0.0345");
  expect(unitPriceText(money("34.154", "CAD"), "en-CA")).toBe("34.15");
});

test("a quantity shows no needless zeros", () => {
  expect([quantityText(decimal("31.000"), "en-CA"), quantityText(decimal("2.5"), "en-CA")]).toEqual([
    "31",
    "2.5",
  ]);
});

test("plain money is text with the places of its currency", () => {
  expect(plainMoney(money("5", "USD"))).toEqual({ amount: "5.00", currency: "USD" });
});
