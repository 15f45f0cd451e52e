import { expect, test } from "vitest";
import { faultsOf } from "../../../lib/fault.ts";
import { rollEntry, rollYield, typedYield, yieldEntry, yieldText } from "../../../lib/takeoff/yield.ts";
import { read } from "../../support/takeoff-example.ts";

const felt = { width: "36 in", length: "144 ft", lap: "2 in", source: "its wrapper" };

test("a roll covers its width less the lap, and says where that was read", () => {
  const roll = rollYield(rollEntry("imperial").parse(felt), "imperial");
  expect([read(roll.holds), roll.unit, roll.source]).toEqual(["408 square-foot", "roll", "its wrapper"]);
});

test("a roll in metres covers square metres", () => {
  const metric = { width: "1 m", length: "20 m", lap: "100 mm", source: "its wrapper" };
  expect(read(rollYield(rollEntry("metric").parse(metric), "metric").holds)).toBe("18 square-metre");
});

test("a lap as wide as the roll is refused", () => {
  const wide = rollEntry("imperial").safeParse({ ...felt, lap: "36 in" });
  expect(wide.error && faultsOf(wide.error)).toEqual([{ path: "lap", code: "cover-too-wide" }]);
});

test("a yield without a source is refused", () => {
  const unsourced = yieldEntry.safeParse({ unit: "bag", holds: "0.6 cu ft" });
  expect(unsourced.error && faultsOf(unsourced.error)).toEqual([{ path: "source", code: "missing" }]);
});

function typed(text: string): string {
  const yielded = typedYield().safeParse(text);
  return yielded.success ? yieldText(yielded.data) : (yielded.error.issues[0]?.message ?? "");
}

test.each([
  ["0.6 cu ft", "0.6 cubic-foot"],
  ["0,017 m3", "0.017 cubic-metre"],
  ["3/4 cu ft", "0.75 cubic-foot"],
  ["1-1/2 cu ft", "1.5 cubic-foot"],
  [" 20 ft ", "20 linear-foot"],
  ["33,3 sq ft", "33.3 square-foot"],
  ["21 pieces", "21 piece"],
])("what one gives, typed as %j, is kept as %s and read back the same", (text, kept) => {
  expect(typed(text)).toBe(kept);
  expect(typed(kept)).toBe(kept);
});

test.each([
  ["", "missing"],
  ["0.6", "length-unit-missing"],
  ["a lot", "not-a-size"],
  ["0 cu ft", "not-positive"],
  ["-1 cu ft", "negative"],
  ["1,220 sq ft", "comma-unclear"],
  ["2000000 sq ft", "too-large"],
  [`${"9".repeat(60)} ft`, "too-long"],
])("what one gives, typed as %j, is refused: %s", (text, why) => {
  expect(typed(text)).toBe(why);
});
