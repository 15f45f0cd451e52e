import { expect, test } from "vitest";
import { isCurrencyCode, MINOR_UNITS } from "../../../lib/money/currencies.ts";

test("a code of the table is a currency, whatever else is not", () => {
  expect(isCurrencyCode("CAD")).toBe(true);
  expect(isCurrencyCode("cad")).toBe(false);
  expect(isCurrencyCode("XYZ")).toBe(false);
  expect(isCurrencyCode("constructor")).toBe(false);
  expect(isCurrencyCode(124)).toBe(false);
});

test("gold and the testing code have no minor unit and are no currency to price in", () => {
  expect(isCurrencyCode("XAU")).toBe(false);
  expect(isCurrencyCode("XTS")).toBe(false);
});

test("every currency has nought to four decimals", () => {
  const places = Object.values(MINOR_UNITS);
  expect(places.length).toBeGreaterThan(150);
  expect(places.every((count) => count >= 0 && count <= 4)).toBe(true);
});
