import { expect, test } from "vitest";
import { PURCHASE_UNITS, SIZE_UNITS, UNITS } from "../../../lib/measure/units.ts";

test("every unit has a factor above zero and says where it comes from", () => {
  const codes = [...PURCHASE_UNITS, ...SIZE_UNITS];
  expect(Object.keys(UNITS).sort()).toEqual([...codes].sort());
  for (const code of codes) {
    expect(UNITS[code].factor.isPositive()).toBe(true);
    expect(UNITS[code].source).not.toBe("");
  }
});

test("no two units share a Recommendation 20 code", () => {
  const codes = Object.values(UNITS).flatMap(({ rec20 }) => rec20 ?? []);
  expect(new Set(codes).size).toBe(codes.length);
});

test("sheets, bundles, rolls, bags, boxes and thousands of square feet have no live code", () => {
  for (const code of ["sheet", "bundle", "roll", "bag", "box", "msf"] as const)
    expect(UNITS[code].rec20).toBeNull();
});

test("board feet are no volume", () => {
  expect(UNITS["board-foot"].dimension).not.toBe(UNITS["cubic-foot"].dimension);
});
