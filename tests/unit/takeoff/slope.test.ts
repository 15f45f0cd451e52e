import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { halfSpan, hipFactor, riseOver, slope, slopeFactor } from "../../../lib/takeoff/slope.ts";

function answer(given: string): string {
  const read = slope().safeParse(given);
  return read.success ? String(read.data) : (read.error.issues[0]?.message ?? "");
}

test.each([
  ["4/12", "4"],
  ["4:12", "4"],
  ["4 in 12", "4"],
  ["4", "4"],
  ["1:3", "4"],
  ["1/2", "6"],
  ["3 1/2", "3.5"],
  ["3-1/2 in 12", "3.5"],
  ["3,5/12", "3.5"],
  ["24", "24"],
  ["2/7", "3.428571"],
  ["0", "slope-flat"],
  ["0/12", "slope-flat"],
  ["24.1", "slope-too-steep"],
  ["25 in 12", "slope-too-steep"],
  ["-4/12", "negative"],
  ["4/0", "not-a-slope"],
  ["1/0", "not-a-slope"],
  ["3 1/0", "not-a-slope"],
  ["24+", "not-a-slope"],
  ["steep", "not-a-slope"],
  ["18°", "not-a-slope"],
  ["", "missing"],
])("a slope %j is %s in 12", (text, expected) => {
  expect(answer(text)).toBe(expected);
});

test("the slope factor of 5 in 12 is 13/12, of 9 in 12 a quarter more than plan", () => {
  expect(slopeFactor(decimal(5)).times(12).toString()).toBe("13");
  expect(slopeFactor(decimal(9)).toString()).toBe("1.25");
});

test("a hip at 6 in 12 is half as long again as the run", () => {
  expect(hipFactor(decimal(6)).toString()).toBe("1.5");
});

test("a run of 14 ft at 4 in 12 rises 4 ft 8 in", () => {
  expect(riseOver(decimal(168), decimal(4)).toString()).toBe("56");
});

test("the run of a roof is half of the smaller side, whichever is named first", () => {
  expect([halfSpan(decimal(24), decimal(40)), halfSpan(decimal(40), decimal(24))].map(String)).toEqual([
    "12",
    "12",
  ]);
});
