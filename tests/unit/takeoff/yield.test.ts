import { expect, test } from "vitest";
import { faultsOf } from "../../../lib/fault.ts";
import { rollEntry, rollYield, yieldEntry } from "../../../lib/takeoff/yield.ts";
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
