import { expect, test } from "vitest";
import { faultsOf } from "../../../lib/fault.ts";
import { materialEntry, materialPatch } from "../../../lib/materials/material-entry.ts";

const SHEET = { name: "Spruce plywood 1/2 in, 4x8", category: "sheet-goods", purchaseUnit: "sheet" };

function codes(given: Record<string, unknown>): string[] {
  const parsed = materialEntry.safeParse({ ...SHEET, ...given });
  return parsed.success ? [] : faultsOf(parsed.error).map((fault) => `${fault.path} ${fault.code}`);
}

test.each([
  ["48 in", "48", "inch"],
  ["1220 mm", "1220", "millimetre"],
  ["8 ft", "8", "linear-foot"],
  ['2"', "2", "inch"],
  ["45 lb", "45", "pound"],
  ["33.3 sq ft", "33.3", "square-foot"],
  ["2.4m", "2.4", "linear-metre"],
])("a size of %s is %s in %s", (text, value, unit) => {
  const parsed = materialEntry.parse({ ...SHEET, dimensions: { length: text } });
  expect(parsed.dimensions.length?.value.toString()).toBe(value);
  expect(parsed.dimensions.length?.unit).toBe(unit);
});

test.each([
  ["48", "not-a-size"],
  ["1/2 in", "not-a-size"],
  ["in", "not-a-size"],
  ["48 furlong", "unknown-unit"],
  ["0 in", "not-positive"],
  ["-2 in", "not-positive"],
  ["1,220 mm", "not-a-size"],
  [48, "not-text"],
])("a size of %j is refused as %s", (text, code) => {
  expect(codes({ dimensions: { faceWidth: text } })).toEqual([`dimensions.faceWidth ${code}`]);
});

test("pieces may be a bare count", () => {
  const parsed = materialEntry.parse({ ...SHEET, purchaseUnit: "bundle", dimensions: { pieces: "21" } });
  expect(parsed.dimensions.pieces?.value.toString()).toBe("21");
  expect(parsed.dimensions.pieces?.unit).toBe("piece");
});

test("a category is known by its name in any capitals, a unit by its usual abbreviation", () => {
  const parsed = materialEntry.parse({ ...SHEET, category: "Dimensional lumber", purchaseUnit: "MBF" });
  expect(parsed).toMatchObject({ category: "dimensional-lumber", purchaseUnit: "mbf" });
});

test("an unknown category, unit, dimension or field is named", () => {
  expect(
    codes({ category: "boats", purchaseUnit: "inch", dimensions: { girth: "2 in" }, colour: "red" }),
  ).toEqual([
    "category unknown-choice",
    "purchaseUnit unknown-unit",
    "dimensions.girth unknown-field",
    "colour unknown-field",
  ]);
});

test("a recheck interval is a whole number of days, 1 to 3,650", () => {
  expect(materialEntry.parse({ ...SHEET, recheckDays: 14 }).recheckDays).toBe(14);
  expect(materialEntry.parse({ ...SHEET, recheckDays: "14" }).recheckDays).toBe(14);
  expect(codes({ recheckDays: 0 })).toEqual(["recheckDays not-positive"]);
  expect(codes({ recheckDays: 3651 })).toEqual(["recheckDays too-large"]);
  expect(codes({ recheckDays: 1.5 })).toEqual(["recheckDays not-a-number"]);
  expect(codes({ recheckDays: "soon" })).toEqual(["recheckDays not-a-number"]);
});

test("a change names only what changes", () => {
  expect(materialPatch.parse({ note: null })).toEqual({ note: null });
});

test("what a material is beside its sizes is chosen from what the trade knows", () => {
  const door = { name: "Door", category: "doors", purchaseUnit: "each" };
  const identity = {
    hand: "Left reverse",
    doorKind: "prehung",
    grade: " No. 2 ",
    treatment: "ground contact",
  };
  expect(materialEntry.parse({ ...door, identity }).identity).toEqual({
    hand: "left-reverse",
    doorKind: "prehung",
    grade: "No. 2",
    treatment: "ground-contact",
  });
  expect(codes({ identity: { hand: "middle", colour: "red" } })).toEqual([
    "identity.hand unknown-choice",
    "identity.colour unknown-field",
  ]);
});

test("each figure may say where it was read, and only figures", () => {
  const parsed = materialEntry.parse({ ...SHEET, shelfLifeDays: 90, sources: { weight: "the wrapper" } });
  expect(parsed).toMatchObject({ shelfLifeDays: 90, sources: { weight: "the wrapper" } });
  expect(codes({ sources: { name: "the tag" } })).toEqual(["sources.name unknown-field"]);
});

test("nothing known is nothing said", () => {
  expect(materialEntry.parse(SHEET)).toMatchObject({ identity: {}, sources: {}, shelfLifeDays: null });
});
