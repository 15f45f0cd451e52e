import { expect, test } from "vitest";
import { purchaseUnitNamed, unitNamed } from "../../../lib/measure/unit-aliases.ts";
import { PURCHASE_UNITS, SIZE_UNITS } from "../../../lib/measure/units.ts";

test.each([
  ["MBF", "mbf"],
  ["ft", "linear-foot"],
  ["linear foot", "linear-foot"],
  ["Lin. Ft.", "linear-foot"],
  ["sq ft", "square-foot"],
  ["ft²", "square-foot"],
  ["square metre", "square-metre"],
  ["bd ft", "board-foot"],
  ["pcs", "piece"],
  ["lbs", "pound"],
])("%s is the unit %s", (text, unit) => {
  expect(purchaseUnitNamed(text)).toBe(unit);
});

test("every unit is known by its own code", () => {
  for (const unit of [...PURCHASE_UNITS, ...SIZE_UNITS]) expect(unitNamed(unit)).toBe(unit);
});

test("inches measure a size and sell nothing", () => {
  expect(unitNamed("in")).toBe("inch");
  expect(purchaseUnitNamed("in")).toBeNull();
});

test("a word that is no unit, or a name every object has, is none", () => {
  expect(unitNamed("furlong")).toBeNull();
  expect(unitNamed("constructor")).toBeNull();
  expect(unitNamed("")).toBeNull();
});
