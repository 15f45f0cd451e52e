import { expect, test } from "vitest";
import { localDate } from "../../../lib/calendar/local-date.ts";
import type { Material } from "../../../lib/materials/material.ts";
import { needsOfLines, takeoffNeedsEntry } from "../../../lib/projects/takeoff-needs.ts";
import { someMaterial } from "../../support/some-material.ts";
import { reckoned } from "../../support/takeoff-example.ts";

const ID = "018f0000-0000-7000-8000-000000000001";
const BAG = { ...someMaterial("bag"), id: "018f0000-0000-7000-8000-000000000002" };
const KNOWN = {
  ...someMaterial("bag", { yield: "0.45 cu ft" }),
  id: "018f0000-0000-7000-8000-000000000003",
};
// 10 x 9 / 3 = 30 cubic feet
const { lines } = reckoned("slab", { length: "10 ft", width: "9 ft", thickness: "4 in" }).result;

function said(material: Material, holds?: string): string[] {
  const { needs } = takeoffNeedsEntry.parse({
    takeoff: {},
    neededBy: localDate("2026-06-01"),
    needs: [{ line: "concrete", id: ID, materialId: material.id, holds }],
  });
  const read = needsOfLines(needs, lines, new Map([[material.id, material]]));
  return [
    ...read.needs.map(({ quantity }) => `${quantity.value} ${quantity.unit}`),
    ...read.faults.map(({ path, code }) => `${path} ${code}`),
  ];
}

test("concrete comes in bags by what was typed that one gives", () => {
  expect(said(BAG, "0.6 cu ft")).toEqual(["50 bag"]);
});

test("a bag of which nothing is known is asked for what it gives", () => {
  expect(said(BAG)).toEqual(["needs.0.holds missing"]);
});

test("what was typed in another measure is refused at the field", () => {
  expect(said(BAG, "20 ft")).toEqual(["needs.0.holds unit-not-convertible"]);
});

test("a bag whose own sizes say what it gives takes no second figure", () => {
  expect(said(KNOWN)).toEqual(["66.666667 bag"]);
  expect(said(KNOWN, "0.6 cu ft").at(-1)).toBe("needs.0.holds yield-known");
});
