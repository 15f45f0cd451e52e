import { describe, expect, test } from "vitest";
import { decimal, roundHalfUp } from "../../lib/decimal.ts";
import { roundUpToPurchase } from "../../lib/materials/convert.ts";
import { type Purchase, purchaseByYield, purchaseOf } from "../../lib/takeoff/purchase.ts";
import { WASTE_ALLOWANCES } from "../../lib/takeoff/waste-allowances.ts";
import { yieldEntry } from "../../lib/takeoff/yield.ts";
import { someMaterial } from "../support/some-material.ts";
import { lined, lineOf, read, reckoned } from "../support/takeoff-example.ts";

const framing = {
  studSpacing: "16 in",
  studsPerOpening: "0",
  plateRows: "3",
  plateThickness: "1-1/2 in",
  drywallFaces: "1",
};
const sheet = someMaterial("sheet", { faceWidth: "4 ft", faceLength: "8 ft" });

function bought(purchase: Purchase) {
  if (!purchase.ok) throw new Error(purchase.reason);
  return purchase.quantity.value;
}

describe("walls", () => {
  // Derived: 24 x 12 / 16 + 1, before corners and openings.
  test("a 24 ft wall at 16 in takes 19 studs before corners and openings", () => {
    const wall = reckoned("walls", { ...framing, walls: [{ length: "24 ft", height: "97 1/8" }] });
    // Derived: 97.125 - 3 x 1.5 = 92.625 in, the precut stud (from memory) in a wall of 97-1/8 in.
    expect(lined(wall, "studs")).toEqual(["19 piece at 7.71875 linear-foot"]);
    expect(decimal("7.71875").times(12).toString()).toBe("92.625");
  });

  // Derived: 8 ft = 2438.4 mm and 16 in = 406.4 mm by GNU units 2.22 (read); the same studs in millimetres.
  test("the same wall in millimetres takes the same studs", () => {
    const metric = { ...framing, studSpacing: "406.4 mm", plateThickness: "38.1 mm" };
    const wall = reckoned(
      "walls",
      { ...metric, walls: [{ length: "7315.2 mm", height: "2466.975 mm" }] },
      "metric",
    );
    expect(lined(wall, "studs")).toEqual(["19 piece at 2.352675 linear-metre"]);
  });

  // Estimating crib sheet (college): openings under 32 ft2 are not deducted from drywall (read).
  test("a door of 20 square feet is hung over, one of 35 is not", () => {
    const door = { width: "3 ft", height: "6 ft 8 in" };
    const wide = { width: "5 ft", height: "7 ft" };
    const wall = { length: "20 ft", height: "8 ft", openings: [door, wide] };
    const takeoff = reckoned("walls", { ...framing, walls: [wall], drywallDeductsFrom: "32 sq ft" });
    expect(lined(takeoff, "drywall")).toEqual(["125 square-foot"]);
    expect(lined(takeoff, "wallSheathing")).toEqual(["105 square-foot"]);
  });
});

describe("sheets", () => {
  // Plywood count article: 800 ft2 / 32 = 25 sheets (read).
  test("a wall of 800 square feet takes 25 sheets", () => {
    const wall = reckoned("area", { parts: [{ shape: "rectangle", width: "100 ft", height: "8 ft" }] });
    expect(bought(purchaseOf(lineOf(wall, "surface"), sheet)).toString()).toBe("25");
  });

  // Derived: waste before rounding up; the naive order gives round(31.25) x 1.1 = 34, one short.
  test("1,000 square feet with ten percent waste are 35 sheets", () => {
    const wall = reckoned("area", { parts: [{ shape: "rectangle", width: "125 ft", height: "8 ft" }] });
    const before = bought(purchaseOf(lineOf(wall, "surface"), sheet));
    expect(before.toString()).toBe("31.25");
    expect(before.times("1.1").toString()).toBe("34.375");
    expect(roundUpToPurchase(before.times("1.1"), "sheet").toString()).toBe("35");
  });

  // Timber specification and conversion page: 1220 x 2440 mm is 2.9768 m2, 3.3593 sheets in 10 m2 (read).
  test("10 square metres are 3.3593 sheets of 1220 x 2440 mm", () => {
    const floor = reckoned(
      "area",
      { parts: [{ shape: "rectangle", width: "4 m", height: "2,5 m" }] },
      "metric",
    );
    const metric = someMaterial("sheet", { faceWidth: "1220 mm", faceLength: "2440 mm" });
    expect(roundHalfUp(bought(purchaseOf(lineOf(floor, "surface"), metric)), 4).toString()).toBe("3.3593");
  });
});

describe("pavers", () => {
  // Derived from the module with its joint; to two decimals.
  test.each([
    ["0", "4.5"],
    ["1/8", "4.3"],
  ])("4 x 8 in pavers with a joint of %s in are %s to the square foot", (joint, each) => {
    const bed = { baseDepth: "0", baseBeyond: "0", sandDepth: "0" };
    const size = { length: "1 ft", width: "1 ft", paverLength: "8 in", paverWidth: "4 in" };
    expect(lined(reckoned("pavers", { ...size, ...bed, joint }), "pavers", 2)).toEqual([`${each} piece`]);
  });
});

// Concrete bag yield articles (two): 80 lb = 0.60 ft3, 60 lb = 0.45, 40 lb = 0.30; 45, 60 and 90 bags a yard (read).
describe("concrete", () => {
  const bags = { "80 lb": "0.6 cu ft", "60 lb": "0.45 cu ft", "40 lb": "0.3 cu ft" } as const;
  const yieldOf = (bag: keyof typeof bags) =>
    yieldEntry.parse({ unit: "bag", holds: bags[bag], source: "concrete bag yield articles" });
  const slab = reckoned("slab", { length: "10 ft", width: "10 ft", thickness: "4 in" });
  const tube = reckoned("tube", { diameter: "8 in", height: "4 ft" });

  // Derived: 33.333 ft3, 1.2346 yd3, printed to three and four decimals.
  test("a slab of 10 x 10 ft, 4 in thick, is 33.333 cubic feet, 1.2346 cubic yards", () => {
    const concrete = lineOf(slab, "concrete");
    expect(read(concrete.quantity, 3)).toBe("33.333 cubic-foot");
    expect(roundHalfUp(bought(purchaseOf(concrete, someMaterial("cubic-yard"))), 4).toString()).toBe(
      "1.2346",
    );
  });

  test.each([
    ["80 lb", "55.56", "56"],
    ["60 lb", "74.07", "75"],
  ] as const)("that slab takes %s bags: %s, so %s", (bag, exact, whole) => {
    const needed = bought(purchaseByYield(lineOf(slab, "concrete"), yieldOf(bag)));
    expect([roundHalfUp(needed, 2).toString(), roundUpToPurchase(needed, "bag").toString()]).toEqual([
      exact,
      whole,
    ]);
  });

  test.each([
    ["80 lb", "45"],
    ["60 lb", "60"],
    ["40 lb", "90"],
  ] as const)("a cubic yard is %s bags: %s", (bag, whole) => {
    const yard = reckoned("slab", { length: "3 ft", width: "3 ft", thickness: "3 ft" });
    expect(bought(purchaseByYield(lineOf(yard, "concrete"), yieldOf(bag))).toString()).toBe(whole);
  });

  // Derived: pi x (1/3)^2 x 4 = 1.396 ft3; 2.327 bags.
  test("an 8 in tube of 4 ft is 1.396 cubic feet, three bags of 80 lb", () => {
    const needed = bought(purchaseByYield(lineOf(tube, "concrete"), yieldOf("80 lb")));
    expect(lined(tube, "concrete", 3)).toEqual(["1.396 cubic-foot"]);
    expect([roundHalfUp(needed, 3).toString(), roundUpToPurchase(needed, "bag").toString()]).toEqual([
      "2.327",
      "3",
    ]);
  });
});

// Carpentry manual, materials estimate list: 10 % for 2 in and thicker (read). Estimating crib sheet (college): drywall 5 %,
// house wrap 10 % (read). Roofing articles: simple gable 5-10 %, hip or cut-up 10-15 %; metal 5-15 % (read). Concrete
// 5-10 % (from memory).
test("the waste allowances offered are those that were read, and concrete is said to be from memory", () => {
  const told = WASTE_ALLOWANCES.map(({ name, least, most, mark }) => `${name} ${least}-${most} ${mark}`);
  expect(told).toEqual([
    "framing 10-10 read",
    "drywall 5-5 read",
    "houseWrap 10-10 read",
    "shinglesGable 5-10 read",
    "shinglesHip 10-15 read",
    "metalRoofing 5-15 read",
    "concrete 5-10 from-memory",
  ]);
});
