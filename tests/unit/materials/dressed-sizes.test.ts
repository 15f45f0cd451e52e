import { expect, test } from "vitest";
import { DRESSED_SIZES, dressedSize } from "../../../lib/materials/dressed-sizes.ts";

test("the width of an eight loses three quarters of an inch, not a half", () => {
  expect(dressedSize("2x8")?.width.value.toString()).toBe("7.25");
  expect(dressedSize("1x8")?.width.value.toString()).toBe("7.25");
});

test("a size not in the table is not computed by a rule of thumb", () => {
  expect(dressedSize("3x7")).toBeNull();
});

test("a size is found however its cross is written", () => {
  expect(dressedSize(" 2×4 ")?.name).toBe("2x4");
  expect(dressedSize("2X4")?.name).toBe("2x4");
});

test("every dressed size is smaller than its nominal one", () => {
  for (const size of DRESSED_SIZES) {
    expect(size.thickness.value.lessThan(size.nominalThickness.value)).toBe(true);
    expect(size.width.value.lessThan(size.nominalWidth.value)).toBe(true);
  }
});

test("the sizes set down from memory are marked so", () => {
  expect(DRESSED_SIZES.filter((size) => size.fromMemory).map((size) => size.name)).toEqual([
    "5/4x6",
    "1x3",
    "2x2",
    "2x3",
    "4x6",
    "6x6",
  ]);
});
