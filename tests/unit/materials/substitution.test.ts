import { describe, expect, test } from "vitest";
import type { Identity } from "../../../lib/materials/identity.ts";
import type { Category, DimensionName, Material } from "../../../lib/materials/material.ts";
import { goesIntoOpening, substitutionRefusals } from "../../../lib/materials/substitution.ts";
import { lumber, someMaterial } from "../../support/some-material.ts";

type Sizes = Partial<Record<DimensionName, string>>;

function of(category: Category) {
  return (sizes: Sizes, identity: Identity = {}): Material =>
    someMaterial("each", sizes, { category, identity });
}
const panel = of("sheet-goods");
const doorOf = of("doors");

/** Why the second may not stand in for the first, as "code by". */
function why(asked: Material, offered: Material): string[] {
  return substitutionRefusals(asked, offered).map(
    ({ code, by }) => `${code.replace("alternative-", "")} ${by}`,
  );
}

describe("in place of a panel", () => {
  const asked = panel({ nominalThickness: "1/2 in" });

  test("a thinner one is refused, however near: 7/16 and 15/32 are not 1/2", () => {
    for (const thickness of ["7/16 in", "15/32 in"])
      expect(why(asked, panel({ nominalThickness: thickness }))).toEqual(["thinner thickness"]);
  });

  test("the same or a thicker one is the buyer's to decide", () => {
    for (const thickness of ["1/2 in", "19/32 in"])
      expect(why(asked, panel({ nominalThickness: thickness }))).toEqual([]);
  });

  test("one named in millimetres is not mapped onto inches", () => {
    expect(why(asked, panel({ nominalThickness: "12.5 mm" }))).toEqual(["not-comparable thickness"]);
    expect(why(panel({ nominalThickness: "12.5 mm" }), asked)).toEqual(["not-comparable thickness"]);
  });

  test("named in two systems, the two are compared as measured where both were", () => {
    const metric = panel({ nominalThickness: "12.5 mm", thickness: "12.4 mm" });
    expect(why(panel({ nominalThickness: "15/32 in", thickness: "12 mm" }), metric)).toEqual([]);
    expect(why(panel({ nominalThickness: "1/2 in", thickness: "12.7 mm" }), metric)).toEqual([
      "thinner thickness",
    ]);
  });

  test("one whose thickness nobody knows is not taken on trust", () => {
    expect(why(asked, panel({}))).toEqual(["not-comparable thickness"]);
    expect(why(panel({}), asked)).toEqual([]);
  });

  test("a thickness that was only measured counts as the one it is sold by", () => {
    expect(why(asked, panel({ thickness: "1/2 in" }))).toEqual([]);
    expect(why(panel({ thickness: "5/8 in" }), asked)).toEqual(["thinner thickness"]);
  });

  test("a thickness in a unit of something else tells nothing", () => {
    expect(why(asked, panel({ thickness: "5 lb" }))).toEqual(["not-comparable thickness"]);
  });
});

describe("in place of a board", () => {
  const graded = (nominal: string, grade?: string) => ({
    ...lumber(nominal, "8 ft"),
    identity: grade === undefined ? {} : { grade },
  });

  test("a smaller nominal size is refused, a larger one not", () => {
    expect(why(graded("2x6"), graded("2x4"))).toEqual(["thinner nominalWidth"]);
    expect(why(graded("2x6"), graded("1.25x6"))).toEqual(["thinner nominalThickness"]);
    expect(why(graded("2x6"), graded("2x8"))).toEqual([]);
    expect(why(graded("2x6"), { ...graded("2x6"), dimensions: {} })).toEqual([
      "not-comparable nominalThickness",
      "not-comparable nominalWidth",
    ]);
  });

  test("a lower grade is refused, one of another family or of none cannot be compared", () => {
    expect(why(graded("2x6", "No. 2"), graded("2x6", "No. 3"))).toEqual(["lower-grade grade"]);
    expect(why(graded("2x6", "No. 2"), graded("2x6", "Stud"))).toEqual(["not-comparable grade"]);
    expect(why(graded("2x6", "No. 2"), graded("2x6"))).toEqual(["not-comparable grade"]);
    expect(why(graded("2x6", "No. 2"), graded("2x6", "No. 1"))).toEqual([]);
    expect(why(graded("2x6"), graded("2x6", "Utility"))).toEqual([]);
  });

  test("every reason is given, none hidden by the first", () => {
    const treated = {
      ...graded("2x6", "No. 2"),
      identity: { grade: "No. 2", treatment: "ground-contact" } as const,
    };
    expect(why(treated, graded("2x4", "No. 3"))).toEqual([
      "thinner nominalWidth",
      "lower-grade grade",
      "wrong-treatment treatment",
    ]);
  });
});

describe("in place of a door", () => {
  const sizes = { width: "36 in", length: "80 in", jambDepth: "4-9/16 in" };
  const asked = doorOf(sizes, { hand: "left", doorKind: "prehung" });

  test("one of the other hand, another jamb or another size is refused", () => {
    expect(why(asked, doorOf(sizes, { hand: "right", doorKind: "prehung" }))).toEqual(["wrong-hand hand"]);
    expect(why(asked, doorOf(sizes, { hand: "left-reverse", doorKind: "prehung" }))).toEqual([
      "wrong-hand hand",
    ]);
    expect(why(asked, doorOf({ ...sizes, jambDepth: "6-9/16 in" }, asked.identity))).toEqual([
      "wrong-jamb jambDepth",
    ]);
    expect(why(asked, doorOf({ ...sizes, width: "34 in" }, asked.identity))).toEqual(["wrong-size width"]);
    expect(why(asked, doorOf({ ...sizes, length: "84 in" }, asked.identity))).toEqual(["wrong-size length"]);
  });

  test("a slab is another kind than a door in its frame", () => {
    expect(why(asked, doorOf(sizes, { hand: "left", doorKind: "slab" }))).toEqual(["wrong-kind doorKind"]);
  });

  test("one whose hand, jamb and frame nobody noted is not taken on trust", () => {
    expect(why(asked, doorOf({ width: "36 in", length: "80 in" }))).toEqual([
      "not-comparable doorKind",
      "not-comparable hand",
      "not-comparable jambDepth",
    ]);
  });

  test("the same size in other units is the same size", () => {
    expect(why(asked, doorOf({ ...sizes, width: "3 ft" }, asked.identity))).toEqual([]);
    expect(why(asked, doorOf({ ...sizes, width: "914.4 mm" }, asked.identity))).toEqual([]);
  });

  test("a slab of no hand takes another slab of its size", () => {
    const slab = doorOf({ width: "30 in", length: "80 in" }, { doorKind: "slab" });
    expect(why(slab, doorOf({ width: "30 in", length: "80 in" }, { doorKind: "slab" }))).toEqual([]);
  });
});

describe("of another kind", () => {
  test("a thing is refused, and not compared further", () => {
    expect(why(panel({ nominalThickness: "1/2 in" }), of("roofing")({}))).toEqual(["wrong-kind category"]);
  });

  test("nothing is said of what was filed under other things", () => {
    expect(why(panel({}), of("other")({}))).toEqual([]);
    expect(why(of("other")({}), panel({}))).toEqual([]);
  });

  test("a plain nail does not stand in for a galvanized one", () => {
    const nail = of("fasteners");
    expect(why(nail({}, { treatment: "hot-dip-galvanized" }), nail({}))).toEqual([
      "wrong-treatment treatment",
    ]);
  });
});

test("only doors and windows have an opening to go into", () => {
  const left = doorOf({}, { hand: "left" });
  expect(goesIntoOpening(left, doorOf({}, { hand: "right" }))).toBe(false);
  expect(goesIntoOpening(left, doorOf({}, { hand: "left" }))).toBe(true);
  expect(goesIntoOpening(panel({ nominalThickness: "1/2 in" }), panel({ nominalThickness: "3/8 in" }))).toBe(
    true,
  );
});
