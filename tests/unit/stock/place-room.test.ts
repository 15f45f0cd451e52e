import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import type { Dimensions, Material } from "../../../lib/materials/material.ts";
import type { UnitCode } from "../../../lib/measure/units.ts";
import { loadWeight } from "../../../lib/stock/load-weight.ts";
import type { Place } from "../../../lib/stock/place.ts";
import { fitsIn, roomOf } from "../../../lib/stock/place-room.ts";
import { SHEET } from "../../support/price-example.ts";

const q = (value: string | number, unit: UnitCode) => ({ value: decimal(value), unit });
const FACE = { faceWidth: q(4, "linear-foot"), faceLength: q(8, "linear-foot") };

function material(id: string, dimensions: Dimensions, more: Partial<Material> = {}): Material {
  return { ...SHEET, id, dimensions, ...more };
}
/** A 4x8 sheet of 1/2 in, 48 lb, fifty to a lift. */
const panel = material("panel", {
  ...FACE,
  thickness: q("0.5", "inch"),
  weight: q(48, "pound"),
  perLift: q(50, "sheet"),
});
const unknown = material("unknown", {});

function place(given: Partial<Place>): Place {
  return {
    id: "shed",
    name: "shed",
    note: null,
    area: null,
    volume: null,
    weight: null,
    count: null,
    covered: null,
    ventilated: null,
    archivedOn: null,
    ...given,
  };
}
const of = (one: Material, quantity: number) => ({ material: one, quantity: decimal(quantity) });
const fits = (...given: Parameters<typeof fitsIn>) => {
  const { quantity, ...rest } = fitsIn(...given);
  return { quantity: quantity?.toFixed() ?? null, ...rest };
};

describe("how full a place is", () => {
  test("by floor: one face for each started stack of a material, whatever the lots", () => {
    const [area] = roomOf(place({ area: q(100, "square-foot") }), [of(panel, 40), of(panel, 40)]);
    // Eighty sheets, fifty to a lift: two stacks of 32 sq ft = 64 sq ft of 100; a square foot is 0.09290304 m2.
    expect(area?.used.toFixed()).toBe(decimal(64).times("0.09290304").toFixed());
    expect(area?.free?.toFixed()).toBe(decimal(36).times("0.09290304").toFixed());
  });

  test("by volume, weight and pieces", () => {
    const [, volume, weight, count] = roomOf(place({}), [of(panel, 3)]);
    expect([volume?.used.toFixed(6), weight?.used.toFixed(3), count?.used.toFixed()]).toEqual([
      "0.113267", // 3 x 32 sq ft x 1/2 in
      "65.317", // 3 x 48 lb x 0.45359237
      "3",
    ]);
    expect(volume?.free).toBeNull();
  });

  test("a size that is not known is named and never taken for zero", () => {
    const rooms = roomOf(place({ weight: q(100, "kilogram") }), [of(panel, 1), of(unknown, 2)]);
    expect(rooms.map(({ measure, unknown: who }) => [measure, who])).toEqual([
      ["area", ["unknown"]],
      ["volume", ["unknown"]],
      ["weight", ["unknown"]],
      ["count", []],
    ]);
  });

  test("what a bag makes when mixed is not the room it takes", () => {
    const bag = material("bag", { yield: q("0.6", "cubic-foot") }, { purchaseUnit: "bag" });
    expect(roomOf(place({}), [of(bag, 1)])[1]?.unknown).toEqual(["bag"]);
  });
});

describe("what still fits", () => {
  test("is the least over the limits, in whole units, with the limit that binds", () => {
    const shed = place({ weight: q(300, "kilogram"), count: decimal(20) });
    // 300 kg / 21.77 kg = 13.8; 20 pieces less 3.
    expect(fits(shed, [], panel)).toMatchObject({ quantity: "13", by: "weight" });
    expect(fits(shed, [of(panel, 12)], panel)).toMatchObject({ quantity: "1", by: "weight" });
    expect(fits(place({ count: decimal(20) }), [of(panel, 3)], panel)).toMatchObject({ quantity: "17" });
  });

  test("by floor fills the started stack, then sets whole stacks beside it", () => {
    const shed = place({ area: q(80, "square-foot") });
    expect(fits(shed, [], panel)).toMatchObject({ quantity: "100", by: "area" });
    expect(fits(shed, [of(panel, 30)], panel)).toMatchObject({ quantity: "70" }); // 20 on it, one stack of 50
    expect(fits(place({ area: q(20, "square-foot") }), [], panel)).toMatchObject({ quantity: "0" });
    expect(fits(place({ area: q(20, "square-foot") }), [of(panel, 30)], panel)).toMatchObject({
      quantity: "20",
    });
  });

  test("one stack of unknown height takes any number, if its floor is free", () => {
    const tall = material("tall", FACE);
    expect(fits(place({ area: q(40, "square-foot") }), [], tall)).toMatchObject({ quantity: null, by: null });
    expect(fits(place({ area: q(20, "square-foot") }), [], tall)).toMatchObject({
      quantity: "0",
      by: "area",
    });
  });

  test("is at most so many when something there has no known size, and not said by a limit its own size is not known for", () => {
    const shed = place({ weight: q(300, "kilogram"), count: decimal(9) });
    expect(fits(shed, [of(unknown, 1)], panel)).toEqual({
      quantity: "8",
      by: "count",
      atMost: true,
      unknown: [],
    });
    expect(fits(shed, [], unknown)).toEqual({
      quantity: "9",
      by: "count",
      atMost: false,
      unknown: ["weight"],
    });
  });

  test("an overfull place takes none", () => {
    expect(fits(place({ weight: q(10, "kilogram") }), [of(panel, 3)], panel)).toMatchObject({
      quantity: "0",
    });
  });
});

describe("the weight of a load", () => {
  test("is quantity x weight of one, with the source of the figure; what is not known is named", () => {
    const said = material("said", panel.dimensions, { sources: { weight: "printed on the lift" } });
    const { kilograms, parts, unknown: who } = loadWeight([of(said, 10), of(unknown, 2)]);
    expect(kilograms.toFixed(2)).toBe("217.72");
    expect(parts).toMatchObject([{ materialId: "said", bySize: false, source: "printed on the lift" }]);
    expect(who).toEqual(["unknown"]);
  });

  test("follows from size and density where nobody weighed it", () => {
    const sized = material("sized", {
      ...FACE,
      thickness: q("0.5", "inch"),
      density: q(500, "kilogram-per-cubic-metre"),
    });
    const { kilograms, parts } = loadWeight([of(sized, 1)]);
    expect([kilograms.toFixed(3), parts[0]?.bySize]).toEqual(["18.878", true]);
  });
});
