import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import type { Material } from "../../../lib/materials/material.ts";
import type { UnitCode } from "../../../lib/measure/units.ts";
import { fitsText, lyingTexts, placeText } from "../../../lib/show/place-text.ts";
import { weightText } from "../../../lib/show/weight-text.ts";
import type { Place } from "../../../lib/stock/place.ts";
import { SHEET } from "../../support/price-example.ts";

const q = (value: string | number, unit: UnitCode) => ({ value: decimal(value), unit });
const panel: Material = {
  ...SHEET,
  id: "panel",
  dimensions: { faceWidth: q(4, "linear-foot"), faceLength: q(8, "linear-foot"), weight: q(48, "pound") },
  sources: { weight: "the maker's sheet" },
};
const unknown: Material = { ...SHEET, id: "unknown", dimensions: {} };
const of = (material: Material, quantity: number) => ({ material, quantity: decimal(quantity) });
const shed: Place = {
  id: "shed",
  name: "Shed",
  note: null,
  area: null,
  volume: null,
  weight: q(2000, "pound"),
  count: decimal(60),
  covered: null,
  ventilated: null,
  archivedOn: null,
};

test("a limit is read in the unit it was given in, with what is used and what is left", () => {
  // 40 x 48 lb = 1,920 lb
  const { rooms, lots, panels } = placeText(shed, [of(panel, 40)], "en-CA");
  expect({ lots, panels }).toEqual({ lots: 1, panels: true });
  expect(rooms).toMatchObject([
    { measure: "weight", unit: "pound", used: "1,920", limit: "2,000", free: "80", over: null },
    { measure: "count", unit: "piece", used: "40", limit: "60", free: "20", over: null },
  ]);
});

test("an overfull place says by how much", () => {
  // 52 x 48 lb = 2,496 lb
  const [weight] = placeText(shed, [of(panel, 52)], "en-CA").rooms;
  expect(weight).toMatchObject({ used: "2,496", over: "496" });
  expect(weight?.share).toBeCloseTo(1.248, 10);
});

test("what has no known weight is named beside the sum, never taken for zero", () => {
  const { rooms, weight } = placeText(shed, [of(panel, 10), of(unknown, 5)], "en-CA");
  expect(rooms[0]).toMatchObject({ used: "480", unknown: ["unknown"] });
  expect(weight).toMatchObject({ pounds: "480", unknown: ["unknown"], none: false });
});

test("a weight says where it was read, in kilograms and pounds", () => {
  // 52 x 48 x 0.45359237 = 1132.17 kg
  expect(weightText([of(panel, 52)], "en-CA")).toMatchObject({
    kilograms: "1,132",
    pounds: "2,496",
    parts: [{ materialId: "panel", source: "the maker's sheet", bySize: false }],
  });
  expect(weightText([of(unknown, 5)], "en-CA")).toMatchObject({ none: true, unknown: ["unknown"] });
});

test("what fits is text, and no limit is no number", () => {
  const fits = { quantity: decimal("1000"), by: "weight", atMost: false, unknown: [] } as const;
  expect(fitsText(fits, "en-CA").quantity).toEqual({ text: "1,000", exact: "1000" });
  expect(fitsText({ ...fits, quantity: null }, "en-CA").quantity).toBeNull();
});

test("where nothing lies is not said", () => {
  const lying = [
    { placeId: "shed", quantity: decimal(30) },
    { placeId: null, quantity: decimal(0) },
  ];
  expect(lyingTexts(lying, "en-CA")).toEqual([{ placeId: "shed", quantity: "30", exact: "30" }]);
});
