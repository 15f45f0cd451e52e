import { expect, test } from "vitest";
import { purchaseUnitNamed, unitNamed } from "../../../lib/measure/unit-aliases.ts";
import { PURCHASE_UNITS, SIZE_UNITS } from "../../../lib/measure/units.ts";

test.each([
  ["MBF", "mbf"],
  ["msf", "msf"],
  ["ft", "linear-foot"],
  ["'", "linear-foot"],
  ["Linear Foot", "linear-foot"],
  ["lineal feet", "linear-foot"],
  ["sq ft", "square-foot"],
  ["sq. ft.", "square-foot"],
  ["ft2", "square-foot"],
  ["m²", "square-metre"],
  ["squares", "square"],
  ["bd ft", "board-foot"],
  ["in", "inch"],
  ['"', "inch"],
  ["yd", "yard"],
  ["mm", "millimetre"],
  ["m", "linear-metre"],
  ["lbs", "pound"],
  ["EA", "each"],
  ["pcs", "piece"],
  ["MSF 3/8", "msf-3-8"],
  ["lb/ft3", "pound-per-cubic-foot"],
])("%j means %s", (text, unit) => {
  expect(unitNamed(text)).toBe(unit);
});

test("every unit is understood by its own code", () => {
  for (const unit of [...PURCHASE_UNITS, ...SIZE_UNITS]) expect(unitNamed(unit)).toBe(unit);
});

test("a capital M alone is a thousand to one and a metre to another, so it is neither", () => {
  expect(unitNamed("M")).toBeNull();
});

test("a word that is no unit is none", () => {
  expect(unitNamed("furlong")).toBeNull();
  expect(unitNamed("")).toBeNull();
  expect(unitNamed("constructor")).toBeNull();
});

test("nothing is bought by the inch", () => {
  expect(purchaseUnitNamed("inch")).toBeNull();
  expect(purchaseUnitNamed("sheet")).toBe("sheet");
});
