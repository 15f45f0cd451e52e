import { describe, expect, test } from "vitest";
import { decimal, roundHalfUp } from "../../lib/decimal.ts";
import { convertFor } from "../../lib/materials/convert.ts";
import type { Material } from "../../lib/materials/material.ts";
import { substitutionRefusals } from "../../lib/materials/substitution.ts";
import { doorSizeOf } from "../../lib/measure/door-size.ts";
import { inUnit } from "../../lib/measure/in-unit.ts";
import { quantityOf } from "../../lib/measure/quantity-text.ts";
import type { UnitCode } from "../../lib/measure/units.ts";
import { fromCatalogue } from "../support/catalogue-material.ts";
import { someMaterial } from "../support/some-material.ts";

function panel(nominalThickness: string, thickness?: string): Material {
  const face = { faceWidth: "48 in", faceLength: "96 in" };
  const sizes = { ...face, nominalThickness, ...(thickness === undefined ? {} : { thickness }) };
  return someMaterial("sheet", sizes, { category: "sheet-goods" });
}
function refusals(asked: Material, offered: Material): string[] {
  return substitutionRefusals(asked, offered).map(({ code }) => code);
}
function value(material: Material, amount: string, from: UnitCode, to: UnitCode) {
  const read = convertFor(material, { value: decimal(amount), unit: from }, to);
  if (!read.ok) throw new Error(read.reason);
  return read.value;
}

/** Thickness category; least and most, in inches, as printed; the same in millimetres, as printed. */
const CATEGORIES = [
  ["3/8", "0.344", "0.406", "8.73", "10.32"],
  ["7/16", "0.406", "0.469", "10.32", "11.91"],
  ["15/32", "0.438", "0.500", "11.11", "12.70"],
  ["1/2", "0.469", "0.531", "11.91", "13.49"],
  ["19/32", "0.563", "0.625", "14.29", "15.88"],
  ["5/8", "0.594", "0.656", "15.08", "16.67"],
  ["23/32", "0.688", "0.750", "17.46", "19.05"],
  ["3/4", "0.719", "0.781", "18.26", "19.84"],
] as const;

// "Performance Category and Thickness", quoting US PS 1, unsanded: 1/32 in (0.8 mm) to either side; inches to three
// decimals, millimetres to two (read). IRC R503: the category is the nominal panel thickness (read).
describe("thickness categories", () => {
  test.each(CATEGORIES)(
    "%s in lies in the middle of %s to %s in, %s to %s mm",
    (name, least, most, low, high) => {
      const size = quantityOf(`${name} in`);
      if (size === null) throw new Error(name);
      const half = decimal(1).dividedBy(32);
      const ends = [size.value.minus(half), size.value.plus(half)];
      // Printed to a thousandth, so to half of one.
      for (const [end, printed] of [
        [ends[0], least],
        [ends[1], most],
      ] as const)
        expect(end?.minus(printed).abs().lessThanOrEqualTo("0.0005")).toBe(true);
      const millimetres = ends.map((end) =>
        roundHalfUp(inUnit({ value: end, unit: "inch" }, "millimetre"), 2).toFixed(2),
      );
      expect(millimetres).toEqual([low, high]);
    },
  );

  // Derived: half a thousandth inside both ranges, a sheet can be either; only its stamp tells.
  test.each([
    ["15/32", "7/16", "0.455 in"],
    ["1/2", "15/32", "0.485 in"],
    ["5/8", "19/32", "0.610 in"],
    ["3/4", "23/32", "0.735 in"],
  ])(
    "a sheet stamped %s and one stamped %s are two materials, both measuring %s",
    (thicker, thinner, measured) => {
      const [asked, offered] = [panel(`${thicker} in`, measured), panel(`${thinner} in`, measured)];
      expect(refusals(asked, offered)).toEqual(["alternative-thinner"]);
      expect(refusals(offered, asked)).toEqual([]);
    },
  );

  // CSA O121 and O151 go by 9.5, 12.5, 15.5 and 18.5 mm (from memory); none is mapped by itself.
  test.each([
    ["ply-9-5-mm", "ply-3-8"],
    ["ply-12-5-mm", "ply-1-2"],
    ["ply-12-5-mm", "ply-15-32"],
    ["ply-15-5-mm", "ply-5-8"],
    ["ply-18-5-mm", "ply-3-4"],
  ])("%s is not %s by another name", (metric, imperial) => {
    expect(refusals(fromCatalogue(imperial), fromCatalogue(metric))).toEqual(["alternative-not-comparable"]);
    expect(refusals(fromCatalogue(metric), fromCatalogue(imperial))).toEqual(["alternative-not-comparable"]);
  });

  // Naive: 7/16 and 15/32, both called half inch at the counter, become one series with a jump.
  test("7/16 and 15/32 are two entries of the catalogue, with two weights", () => {
    const [one, other] = [fromCatalogue("ply-15-32"), fromCatalogue("osb-7-16")];
    expect(one.name).not.toBe(other.name);
    expect(refusals(one, other)).toEqual(["alternative-thinner"]);
  });
});

// Derived: nominal thickness over 3/8 in, to six decimals.
describe("the 3/8 in basis", () => {
  test.each([
    ["ply-1-4", "0.666667"],
    ["osb-7-16", "1.166667"],
    ["ply-15-32", "1.25"],
    ["ply-1-2", "1.333333"],
    ["ply-19-32", "1.583333"],
    ["ply-5-8", "1.666667"],
    ["ply-23-32", "1.916667"],
    ["ply-3-4", "2"],
  ])("a thousand square feet of %s are %s on it", (key, factor) => {
    expect(roundHalfUp(value(fromCatalogue(key), "1", "msf", "msf-3-8"), 6).toString()).toBe(factor);
  });

  test("a hundred sheets of 7/16 are 3.2 of surface and 3.733333 on the 3/8 in basis", () => {
    const osb = fromCatalogue("osb-7-16");
    expect(value(osb, "100", "sheet", "msf").toString()).toBe("3.2");
    expect(roundHalfUp(value(osb, "100", "sheet", "msf-3-8"), 6).toString()).toBe("3.733333");
  });

  // Derived: 420 per MSF 3/8 of 3/4 in is 840 per MSF of surface, 26.88 a sheet.
  test("a mill's price on the basis is not its price of surface", () => {
    const sheet = fromCatalogue("ply-3-4");
    const per = (unit: UnitCode) =>
      decimal(420)
        .dividedBy(value(sheet, "1", "msf-3-8", unit))
        .toString();
    expect([per("msf"), per("sheet")]).toEqual(["840", "26.88"]);
  });
});

describe("doors", () => {
  // Derived: 2 ft 8 in by 6 ft 8 in.
  test.each(["2/8 x 6/8", "2868"])("%s is 32 x 80 in, 812.8 x 2032 mm", (called) => {
    const size = doorSizeOf(called);
    const millimetres = (value = decimal(0)) => inUnit({ value, unit: "inch" }, "millimetre").toString();
    expect([size?.width.toString(), size?.height.toString()]).toEqual(["32", "80"]);
    expect([millimetres(size?.width), millimetres(size?.height)]).toEqual(["812.8", "2032"]);
  });

  // Wall depth: stud width and board on both sides; jambs of 4-9/16 and 6-9/16 in (read for 1/2 in board; 5/8 derived).
  test.each([
    ["spruce-pine-fir-2x4-8-ft", "gypsum-1-2-4x8", "4.5", "door-interior-30-left-4", true],
    ["spruce-pine-fir-2x6-8-ft", "gypsum-1-2-4x8", "6.5", "door-entry-36-left-6", true],
    ["spruce-pine-fir-2x4-8-ft", "gypsum-5-8", "4.75", "door-interior-30-left-4", false],
  ])(
    "a wall of %s with %s on both sides is %s in: the jamb of %s is deep enough: %s",
    (stud, board, wall, door, fits) => {
      const [width, thickness] = [
        fromCatalogue(stud).dimensions.width,
        fromCatalogue(board).dimensions.thickness,
      ];
      const depth = width && thickness && width.value.plus(thickness.value.times(2));
      expect(depth?.toString()).toBe(wall);
      expect(fromCatalogue(door).dimensions.jambDepth?.value.greaterThanOrEqualTo(wall)).toBe(fits);
    },
  );

  // Four hands, from memory. A cheap door of another hand or jamb is no offer for the one required.
  test.each([
    ["door-entry-36-right-6", "alternative-wrong-hand"],
    ["door-entry-36-left-reverse-6", "alternative-wrong-hand"],
    ["door-entry-36-left-4", "alternative-wrong-jamb"],
    ["slab-36", "alternative-wrong-kind"],
  ])("%s does not stand in for a left-hand door with a 6-9/16 jamb: %s", (key, code) => {
    expect(refusals(fromCatalogue("door-entry-36-left-6"), fromCatalogue(key))).toContain(code);
  });

  test("a 32 in door does not go into a 30 in opening", () => {
    expect(refusals(fromCatalogue("slab-30"), fromCatalogue("slab-32"))).toEqual(["alternative-wrong-size"]);
  });
});

// PS 20 families by name: Select Structural, No. 1, 2, 3; Construction, Standard, Utility; Stud (read); which is better
// within a family: common practice.
describe("grades", () => {
  const graded = (grade: string): Material => ({
    ...fromCatalogue("spruce-pine-fir-2x6-8-ft"),
    identity: { grade },
  });

  test.each([
    ["No. 2", "Select Structural", []],
    ["No. 2", "No. 1", []],
    ["No. 2", "No. 3", ["alternative-lower-grade"]],
    ["Construction", "Standard", ["alternative-lower-grade"]],
    ["Standard", "Utility", ["alternative-lower-grade"]],
    ["No. 2", "Stud", ["alternative-not-comparable"]],
  ])("where %s is required %s is refused as %j", (asked, offered, codes) => {
    expect(refusals(graded(asked), graded(offered))).toEqual(codes);
  });
});

// IRC R317.3 and IBC 2304.9.5: fasteners in treated wood are hot-dip galvanized, stainless, silicon bronze or copper (read).
test("in treated wood a plain nail does not stand in for a galvanized one, stainless does", () => {
  const galvanized = fromCatalogue("nail-16d-galvanized");
  expect(refusals(galvanized, fromCatalogue("nail-16d-5"))).toEqual(["alternative-wrong-treatment"]);
  expect(refusals(galvanized, fromCatalogue("deck-screw"))).toEqual([]);
});
