import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { percentText } from "../../../lib/show/percent-text.ts";

test("a percentage keeps the places it needs", () => {
  expect(percentText(decimal("9.975"), "en-CA")).toBe("9.975%");
  expect(percentText(decimal("15"), "en-CA")).toBe("15%");
});

test("a change carries its sign and is rounded half up to the places asked for", () => {
  expect(percentText(decimal("4.25"), "en-CA", { signed: true, places: 1 })).toBe("+4.3%");
  expect(percentText(decimal("-4.25"), "en-CA", { signed: true, places: 1 })).toBe("-4.3%");
  expect(percentText(decimal("0"), "en-CA", { signed: true })).toBe("0%");
});

test("a column of percents keeps the same places in every row", () => {
  expect(percentText(decimal("5.1"), "en-CA", { signed: true, places: 2, least: 2 })).toBe("+5.10%");
});

test("the sign stands where the language puts it", () => {
  expect(percentText(decimal("9.975"), "fr-CA").replace(/\s/g, " ")).toBe("9,975 %");
});
