import { expect, test } from "vitest";
import { doorCall, doorSizeOf } from "../../../lib/measure/door-size.ts";

function size(text: string): string | null {
  const read = doorSizeOf(text);
  return read && `${read.width} x ${read.height}`;
}

test.each([
  ["2868", "32 x 80"],
  ["2/8 x 6/8", "32 x 80"],
  ["2-8x6-8", "32 x 80"],
  ["3068", "36 x 80"],
  ["2/10 × 6/8", "34 x 80"],
  ["21068", "34 x 80"],
  ["32 x 80", "32 x 80"],
  ["36x80 in", "36 x 80"],
])("a door called %s is %s inches", (text, inches) => {
  expect(size(text)).toBe(inches);
});

test.each(["2x4", "door", "286", "0868", "2/12 x 6/8", ""])("%j is no size of a door", (text) => {
  expect(size(text)).toBeNull();
});

test("a door of 32 by 80 inches is called 2868, and is read back", () => {
  expect(doorCall(32, 80)).toBe("2868");
  for (const width of [24, 28, 30, 32, 34, 36]) expect(size(doorCall(width, 80))).toBe(`${width} x 80`);
});
