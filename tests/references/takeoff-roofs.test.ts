import { describe, expect, test } from "vitest";
import { decimal, roundHalfUp } from "../../lib/decimal.ts";
import { roundUpToPurchase } from "../../lib/materials/convert.ts";
import { type Purchase, purchaseByYield, purchaseOf } from "../../lib/takeoff/purchase.ts";
import type { TakeoffLine } from "../../lib/takeoff/result.ts";
import { hipFactor, slopeFactor } from "../../lib/takeoff/slope.ts";
import { rollEntry, rollYield, yieldEntry } from "../../lib/takeoff/yield.ts";
import { someMaterial } from "../support/some-material.ts";
import { lined, lineOf, measured, read, reckoned } from "../support/takeoff-example.ts";

/** Rise in 12, slope factor and hip factor to four decimals. */
const FACTORS = [
  [1, "1.0035", "1.4167"],
  [2, "1.0138", "1.4240"],
  [3, "1.0308", "1.4361"],
  [4, "1.0541", "1.4530"],
  [5, "1.0833", "1.4743"],
  [6, "1.1180", "1.5000"],
  [7, "1.1577", "1.5298"],
  [8, "1.2019", "1.5635"],
  [9, "1.2500", "1.6008"],
  [10, "1.3017", "1.6415"],
  [11, "1.3566", "1.6853"],
  [12, "1.4142", "1.7321"],
  [13, "1.4743", "1.7815"],
  [14, "1.5366", "1.8333"],
  [15, "1.6008", "1.8875"],
  [16, "1.6667", "1.9437"],
  [17, "1.7341", "2.0017"],
  [18, "1.8028", "2.0616"],
  [19, "1.8727", "2.1230"],
  [20, "1.9437", "2.1858"],
  [21, "2.0156", "2.2500"],
  [22, "2.0883", "2.3154"],
  [23, "2.1619", "2.3819"],
  [24, "2.2361", "2.4495"],
] as const;

// Derived (Pythagoras), printed to four decimals; 4 in 12 = 1.054 in University of Regina Math Central QQ.09.03, 6 in 12 =
// 1.118 in "Roof slope multiplying factors" (both read, to three).
describe("slope and hip factors", () => {
  test.each(FACTORS)("%s in 12 is %s along the slope and %s along the hip", (rise, slope, hip) => {
    expect([slopeFactor(decimal(rise)).toFixed(4), hipFactor(decimal(rise)).toFixed(4)]).toEqual([
      slope,
      hip,
    ]);
  });

  test("5, 9 and 16 in 12 and the hips at 6 and 21 in 12 come out even", () => {
    const slopes = [5, 9, 16].map((rise) => slopeFactor(decimal(rise)).times(12).toString());
    const hips = [6, 21].map((rise) => hipFactor(decimal(rise)).toString());
    expect([...slopes, ...hips]).toEqual(["13", "15", "20", "1.5", "2.25"]);
  });
});

/** A plan of 3,350 square feet at 4 in 12, as the question has it; 67 x 50 ft is one such plan. */
const asked = reckoned("gable-roof", {
  length: "67 ft",
  width: "50 ft",
  slope: "4:12",
  eaveOverhang: "0",
  rakeOverhang: "0",
});
const bundle = yieldEntry.parse({ unit: "bundle", holds: "33.333333 sq ft", source: "three to a square" });
const thirds = someMaterial("bundle", { coverage: "1/3 square" });

function withWaste(purchase: Purchase, percent: number): string[] {
  if (!purchase.ok) throw new Error(purchase.reason);
  const required = purchase.quantity.value.times(decimal(100 + percent)).dividedBy(100);
  return [roundHalfUp(required, 2).toString(), roundUpToPurchase(required, "bundle").toString()];
}

// University of Regina Math Central QQ.09.03: 3,350 ft2 of plan at 4:12 (question read); the figures derived, to two
// decimals. Three bundles a square: roofing reference articles (read).
describe("3,350 square feet of plan at 4 in 12", () => {
  test("are 3,531.21 square feet of roof, 35.31 squares", () => {
    expect(measured(asked, "planArea")).toBe("3350 square-foot");
    expect(measured(asked, "roofArea", 2)).toBe("3531.21 square-foot");
    const { value } = lineOf(asked, "shingles").quantity;
    expect(value.dividedBy(100).toFixed(2)).toBe("35.31");
  });

  test("at three bundles a square are 106 bundles, with ten percent waste 117", () => {
    const purchase = purchaseOf(lineOf(asked, "shingles"), thirds);
    expect(withWaste(purchase, 0)).toEqual(["105.94", "106"]);
    expect(withWaste(purchase, 10)).toEqual(["116.53", "117"]);
    expect(withWaste(purchaseByYield(lineOf(asked, "shingles"), bundle), 10)[1]).toBe("117");
  });
});

// Roofing reference articles: 40 squares are 120 bundles, 132 with 10 % (read, whole bundles).
test("40 squares at three a square are 120 bundles, 132 with waste", () => {
  const roof = reckoned("roofing", { slopedArea: "40 squares", eaves: "100 ft" });
  const purchase = purchaseOf(lineOf(roof, "shingles"), thirds);
  expect([withWaste(purchase, 0)[1], withWaste(purchase, 10)[1]]).toEqual(["120", "132"]);
});

// "Roof slope multiplying factors": a 28 ft house at 4/12 has a rafter of 14.75 ft, 14 ft 9 in (read, to a quarter foot);
// 14.757 ft derived.
test("a rafter of a 28 ft house at 4 in 12 without overhang is 14.757 ft", () => {
  const house = { length: "40 ft", width: "28 ft", slope: "4/12", eaveOverhang: "0", rakeOverhang: "0" };
  const roof = reckoned("gable-roof", { ...house, rafterSpacing: "16 in" });
  expect(measured(roof, "rafterLength", 3)).toBe("14.757 linear-foot");
  expect(lined(roof, "rafters", 2)).toEqual(["62 piece at 14.76 linear-foot"]);
});

// Felt coverage article: 36 in x 144 ft = 432 ft2, laps of 2 to 4 in, plan on 400 to 432 (read); net of 2 in derived.
test("a felt roll of 432 square feet covers 408 with a lap of 2 in and 384 with 4 in", () => {
  const covers = (lap: string) => {
    const roll = rollEntry("imperial").parse({
      width: "36 in",
      length: "144 ft",
      lap,
      source: "felt coverage article",
    });
    return read(rollYield(roll, "imperial").holds);
  };
  expect(["0", "2 in", "4 in"].map(covers)).toEqual([
    "432 square-foot",
    "408 square-foot",
    "384 square-foot",
  ]);
});

// Metal panel coverage guides (two): order by coverage width, not overall width (rule read); figures derived.
test("a 40 ft eave takes 14 panels that cover 36 in, not the 13 of their 38 in overall", () => {
  const slopes = [{ eave: "40 ft", slopeLength: "12 ft 6 in" }];
  const panels = (coverWidth: string) =>
    reckoned("metal-panels", { slopes, coverWidth, overallWidth: "38 in" });
  expect(lined(panels("36 in"), "metalPanels")).toEqual(["14 piece at 12.5 linear-foot"]);
  expect(lined(panels("38 in"), "metalPanels")).toEqual(["13 piece at 12.5 linear-foot"]);
});

test("a panel that covers 36 in, 12.5 ft long, covers 37.5 square feet, not the 39.58 of 38 in", () => {
  const one = {
    slopes: [{ eave: "36 in", slopeLength: "12.5 ft" }],
    coverWidth: "36 in",
    overallWidth: "38 in",
  };
  expect(measured(reckoned("metal-panels", one), "coveredArea")).toBe("37.5 square-foot");
  // The same guides list a 26.5 in panel that covers 21.5 in on a roof (read): its side lap is 5 in.
  const narrow = { ...one, coverWidth: "21.5 in", overallWidth: "26.5 in" };
  expect(measured(reckoned("metal-panels", narrow), "sideLap", 4)).toBe("0.4167 linear-foot");
});

// Caps by length: total ridge + hip / feet per bundle; about 20 to 33 ft a bundle, from memory (read the wrapper).
test("66 ft of ridge and hip at 20 ft a bundle of caps are 3.3 bundles, at 33 ft 2", () => {
  const roof = reckoned("roofing", { slopedArea: "1000", eaves: "60 ft", ridges: "30 ft", hips: "36 ft" });
  const caps: TakeoffLine = lineOf(roof, "ridgeCap");
  const bundles = (holds: string) => {
    const bought = purchaseByYield(caps, yieldEntry.parse({ unit: "bundle", holds, source: "from memory" }));
    return bought.ok ? read(bought.quantity) : bought.reason;
  };
  expect([bundles("20 ft"), bundles("33 ft")]).toEqual(["3.3 bundle", "2 bundle"]);
});
