import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { quantityOf } from "../../../lib/measure/quantity-text.ts";
import type { UnitCode } from "../../../lib/measure/units.ts";
import { sizeText, sizeTyped } from "../../../lib/show/size-text.ts";

const size = (value: string, unit: UnitCode) => ({ value: decimal(value), unit });

test.each([
  ["92.625", "92 5/8"],
  ["0.625", "5/8"],
  ["48", "48"],
  ["0.015625", "1/64"],
])("%s inches are %s on a tape", (value, tape) => {
  expect(sizeTyped(size(value, "inch"))).toBe(tape);
});

test("what is no sixty-fourth of an inch stays in decimals", () => {
  expect(sizeTyped(size("0.47", "inch"))).toBe("0.47");
});

test("millimetres and feet stay in decimals", () => {
  expect(sizeTyped(size("1219.5", "millimetre"))).toBe("1219.5");
  expect(sizeTyped(size("8.5", "linear-foot"))).toBe("8.5");
});

test("a size shown in a field is read back unchanged", () => {
  const given = size("92.625", "inch");
  expect(quantityOf(`${sizeTyped(given)} inch`)).toEqual(given);
});

test("a size for reading is a fraction of an inch, or at most three places", () => {
  expect(sizeText(size("0.5", "inch"), "en-CA")).toBe("1/2");
  expect(sizeText(size("2.9728972", "square-metre"), "en-CA")).toBe("2.973");
});
