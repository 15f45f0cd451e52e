import { expect, test } from "vitest";
import { lined, measured, reckoned, refused, viewOf } from "../../support/takeoff-example.ts";

test("a slab is length by width by thickness, as often as it is poured", () => {
  const slab = { length: "10 ft", width: "12 ft", thickness: "4 in", count: "2" };
  expect(lined(reckoned("slab", slab), "concrete")).toEqual(["80 cubic-foot"]);
  const metric = { length: "3 m", width: "4 m", thickness: "100 mm" };
  expect(lined(reckoned("slab", metric, "metric"), "concrete")).toEqual(["1.2 cubic-metre"]);
  expect(viewOf(reckoned("slab", slab), "section").box).toEqual({ x: 0, y: 0, width: 144, height: 4 });
});

test("footings of one section add up by their lengths", () => {
  const runs = [{ length: "32 ft" }, { length: "32 ft" }, { length: "21 ft" }, { length: "21 ft" }];
  const takeoff = reckoned("footing", { runs, width: "18 in", depth: "8 in" });
  expect(measured(takeoff, "runLength")).toBe("106 linear-foot");
  expect(lined(takeoff, "concrete")).toEqual(["106 cubic-foot"]);
  expect(viewOf(takeoff, "plan").polygons.length).toBe(4);
});

test("tubes are circles, as many as stated", () => {
  const tubes = { diameter: "12 in", height: "4 ft", count: "6" };
  expect(lined(reckoned("tube", tubes), "concrete")).toEqual(["18.849556 cubic-foot"]);
  const plan = viewOf(reckoned("tube", tubes), "plan");
  expect(plan.box.width).toBeCloseTo(12, 9);
  expect(plan.box.height).toBeCloseTo(12, 9);
  expect(plan.spans[0]?.value).toBe(12);
});

test("no thickness, no runs and half a tube are refused", () => {
  expect(refused("slab", { length: "1 ft", width: "1 ft", thickness: "0" })).toEqual([
    "inputs.thickness not-positive",
  ]);
  expect(refused("footing", { runs: [], width: "1 ft", depth: "1 ft" })).toEqual(["inputs.runs missing"]);
  expect(refused("tube", { diameter: "8 in", height: "4 ft", count: "1.5" })).toEqual([
    "inputs.count not-whole",
  ]);
});

test("footings are drawn a width apart", () => {
  const footing = { runs: [{ length: "32 ft" }, { length: "21 ft" }], width: "18 in", depth: "8 in" };
  const { polygons } = viewOf(reckoned("footing", footing), "plan");
  expect(polygons.map(({ points }) => [String(points[0]), String(points[2])])).toEqual([
    ["0,0", "384,18"],
    ["0,36", "252,54"],
  ]);
});
