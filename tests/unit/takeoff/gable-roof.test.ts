import { expect, test } from "vitest";
import {
  cornersOf,
  drawn,
  lined,
  measured,
  reckoned,
  refused,
  viewOf,
} from "../../support/takeoff-example.ts";

const shed = {
  length: "32 ft",
  width: "24 ft",
  slope: "9/12",
  eaveOverhang: "1 ft",
  rakeOverhang: "6 in",
  rafterSpacing: "24 in",
};

test("a 24 x 32 ft gable at 9 in 12 with overhangs is measured along its slopes", () => {
  const roof = reckoned("gable-roof", shed);
  expect(measured(roof, "slopeFactor")).toBe("1.25");
  expect(measured(roof, "planArea")).toBe("858 square-foot");
  expect(measured(roof, "roofArea")).toBe("1072.5 square-foot");
  expect(measured(roof, "rafterLength")).toBe("16.25 linear-foot");
  expect(measured(roof, "ridges")).toBe("33 linear-foot");
  expect(measured(roof, "eaves")).toBe("66 linear-foot");
  expect(measured(roof, "rakes")).toBe("65 linear-foot");
});

test("rafters stand in pairs at the spacing of the walls", () => {
  expect(lined(reckoned("gable-roof", shed), "rafters")).toEqual(["34 piece at 16.25 linear-foot"]);
});

test("rafters are not counted without a spacing", () => {
  expect(lined(reckoned("gable-roof", { ...shed, rafterSpacing: null }), "rafters")).toEqual([]);
});

test("starter runs along the eaves, and up the rakes where the wrapper asks for it", () => {
  expect(lined(reckoned("gable-roof", shed), "starter")).toEqual(["66 linear-foot"]);
  const both = reckoned("gable-roof", { ...shed, starterAlongRakes: true });
  expect(lined(both, "starter")).toEqual(["131 linear-foot"]);
});

test("a gable has no hips and no valleys to line", () => {
  const roof = reckoned("gable-roof", shed);
  expect(lined(roof, "ridgeCap")).toEqual(["33 linear-foot"]);
  expect(lined(roof, "valleyLining")).toEqual([]);
  expect(lined(roof, "edgeTrim")).toEqual(["131 linear-foot"]);
});

test("in metres it is the same roof", () => {
  const metric = { length: "10 m", width: "8 m", slope: "9/12", eaveOverhang: "500", rakeOverhang: "0" };
  const roof = reckoned("gable-roof", metric, "metric");
  expect(measured(roof, "roofArea")).toBe("112.5 square-metre");
  expect(measured(roof, "rafterLength")).toBe("5.625 linear-metre");
});

test("the drawing has two slopes over the walls and carries the rafter's length", () => {
  const roof = reckoned("gable-roof", shed);
  const plan = viewOf(roof, "plan");
  expect(drawn(plan, "facet")).toBe(2);
  expect([plan.box.width, plan.box.height]).toEqual([396, 312]);
  const end = viewOf(roof, "elevation");
  expect(end.spans.map(({ name, value }) => [name, value])).toEqual([
    ["rafterLength", 195],
    ["rise", 117],
    ["width", 288],
  ]);
  expect(end.polygons[0]?.points).toEqual([
    [12, 108],
    [156, 0],
    [300, 108],
  ]);
});

test("a flat, a steep, a negative and a metric entry are refused where they stand", () => {
  const wrong = { ...shed, slope: "0", length: "10 m", width: "-1 ft", rafterSpacing: "0", eaveOverhang: "" };
  expect(refused("gable-roof", wrong)).toEqual([
    "inputs.length mixed-units",
    "inputs.width negative",
    "inputs.slope slope-flat",
    "inputs.eaveOverhang missing",
    "inputs.rafterSpacing not-positive",
  ]);
  expect(refused("gable-roof", { ...shed, slope: "25" })).toEqual(["inputs.slope slope-too-steep"]);
});

test("the walls are drawn inside the overhangs, the ridge over their middle", () => {
  const plan = viewOf(reckoned("gable-roof", shed), "plan");
  expect(cornersOf(plan, "walls")[0]?.map(String)).toEqual(["6,12", "390,12", "390,300", "6,300"]);
  expect(cornersOf(plan, "facet").map((points) => points.map(String))).toEqual([
    ["0,0", "396,0", "396,156", "0,156"],
    ["0,156", "396,156", "396,312", "0,312"],
  ]);
  expect(plan.strokes.map(({ from, to }) => [String(from), String(to)])).toEqual([["0,156", "396,156"]]);
  const end = viewOf(reckoned("gable-roof", shed), "elevation");
  expect(end.strokes.map(({ from, to }) => [String(from), String(to)])).toEqual([
    ["0,117", "156,0"],
    ["156,0", "312,117"],
  ]);
});
