import { describe, expect, test } from "vitest";
import { parseAmount, readBack } from "../../../lib/show/parse-amount.ts";

describe.each(["en-CA", "en-US", "fr-CA", "fr-FR", "de-DE", "de-CH"])("in every language (%s)", (locale) => {
  test.each([
    ["42.97", "42.97"],
    ["42,97", "42.97"],
    ["$1,049.99", "1049.99"],
    ["1 049,99", "1049.99"],
    ["1\u202f049,99 $", "1049.99"],
    ["1\u00a0049,99", "1049.99"],
    ["1.049,99", "1049.99"],
    ["1’049.99", "1049.99"],
    ["1,049,000", "1049000"],
    ["1.049.000", "1049000"],
    ["1,049,000.5", "1049000.5"],
    ["CAD 42.97", "42.97"],
    ["42.97 USD", "42.97"],
    ["US$42.97", "42.97"],
    ["15 %", "15"],
    ["0,365", "0.365"],
    ["0.365", "0.365"],
    ["0.5000", "0.5000"],
    [".5", "0.5"],
    ["12.", "12"],
    ["  8 ", "8"],
    ["007", "7"],
    ["0", "0"],
    ["1234,567", "1234.567"],
    ["1234567", "1234567"],
  ])("%s is read the same", (typed, amount) => {
    expect(parseAmount(typed, locale)).toBe(amount);
  });

  test.each([
    "1.2.3",
    "-5",
    "1e30",
    "",
    " ",
    "abc",
    ".",
    ",",
    "$",
    "1,2,3",
    "12 34",
    "1.04.999",
    "1,00,000",
    "1 049.999,5.",
    "1..5",
    "1,.5",
    "1 049 99",
    "+5",
    "0x10",
    "NaN",
    "Infinity",
    "4/5",
    "1.234,567.8",
    "1,234 567.8",
    "9".repeat(41),
  ])("%j cannot be told", (typed) => {
    expect(parseAmount(typed, locale)).toBeNull();
  });
});

test.each([
  ["en-CA", "1,049", "1049"],
  ["en-CA", "1.049", "1.049"],
  ["fr-CA", "1,049", "1.049"],
  ["fr-CA", "1.049", null],
  ["fr-CA", "1 049", "1049"],
  ["de-DE", "1.049", "1049"],
  ["de-DE", "1,049", "1.049"],
  ["de-CH", "1.049", "1.049"],
  ["de-CH", "1,049", null],
])("with three digits after one sign the language decides: %s %s", (locale, typed, amount) => {
  expect(parseAmount(typed, locale)).toBe(amount);
});

test("an amount is read back with the signs of the language and all its places", () => {
  expect(readBack("1049.90", "en-CA")).toBe("1,049.90");
  expect(readBack("1049.90", "fr-CA").replace(/\s/g, " ")).toBe("1 049,90");
  expect(readBack("12345678901234567890.123456", "en-CA")).toBe("12,345,678,901,234,567,890.123456");
});

test("a price never loses its decimal sign in French", () => {
  expect(parseAmount("42.97", "fr-CA")).toBe("42.97");
});
