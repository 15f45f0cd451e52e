import { expect, test } from "vitest";
import { quantityOf } from "../../../lib/measure/quantity-text.ts";

const read = (text: string): string | null => {
  const quantity = quantityOf(text);
  return quantity === null ? null : `${quantity.value} ${quantity.unit}`;
};

test.each([
  ["48 in", "48 inch"],
  ["48in", "48 inch"],
  ['48"', "48 inch"],
  ["92-5/8 in", "92.625 inch"],
  ["92 5/8 in", "92.625 inch"],
  ["7/16 in", "0.4375 inch"],
  [".75 in", "0.75 inch"],
  ["1220 mm", "1220 millimetre"],
  ["8 ft", "8 linear-foot"],
  ["8'", "8 linear-foot"],
  ["12.5 linear feet", "12.5 linear-foot"],
  ["33.3 sq ft", "33.3 square-foot"],
  ["33.3 ft2", "33.3 square-foot"],
  ["21 pieces", "21 piece"],
  ["30 kg", "30 kilogram"],
  ["  2.5   MBF ", "2.5 mbf"],
])("%j is read as %s", (text, expected) => {
  expect(read(text)).toBe(expected);
});

test.each([
  ["8' 6-1/2\"", "102.5 inch"],
  ["7 ft 8-5/8 in", "92.625 inch"],
  ["6'8\"", "80 inch"],
])("feet and inches %j are read together as %s", (text, expected) => {
  expect(read(text)).toBe(expected);
});

test.each([
  "",
  "48",
  "in",
  "48 parsecs",
  "-3 in",
  "1,220 mm",
  "1.2.3 in",
  "3/0 in",
  "48 in in",
  "8 ft 6",
  "8 ft 3 kg",
  "1e3 mm",
  `${"9".repeat(80)} in`,
])("%j is not guessed at", (text) => {
  expect(quantityOf(text)).toBeNull();
});
