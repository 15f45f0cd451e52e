import { expect, test } from "vitest";
import { WASTE_ALLOWANCES, wasteAllowancesFor } from "../../../lib/takeoff/waste-allowances.ts";

test("shingles have two allowances, for a simple gable and for hips", () => {
  expect(wasteAllowancesFor("shingles").map(({ name }) => name)).toEqual(["shinglesGable", "shinglesHip"]);
});

test("nothing is suggested where nothing was read", () => {
  expect(wasteAllowancesFor("counted")).toEqual([]);
});

test("each allowance is a range with a source", () => {
  for (const { least, most, source } of WASTE_ALLOWANCES) {
    expect(least.lessThanOrEqualTo(most) && least.greaterThan(0)).toBe(true);
    expect(source).not.toBe("");
  }
});
