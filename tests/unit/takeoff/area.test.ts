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

const wall = { shape: "rectangle", width: "24 ft", height: "8 ft" };
const gable = { shape: "triangle", width: "24 ft", height: "9 ft" };
const window = { width: "3 ft", height: "4 ft", count: "2" };

test("rectangles and triangles add up, openings come off", () => {
  const takeoff = reckoned("area", { parts: [wall, gable], openings: [window] });
  expect(measured(takeoff, "wholeArea")).toBe("300 square-foot");
  expect(measured(takeoff, "openingArea")).toBe("24 square-foot");
  expect(lined(takeoff, "surface")).toEqual(["276 square-foot"]);
});

test("parts alike are counted, not repeated", () => {
  const takeoff = reckoned("area", { parts: [{ ...gable, count: "2" }] });
  expect(lined(takeoff, "surface")).toEqual(["216 square-foot"]);
});

test("a triangle is known by its three sides", () => {
  const sides = { shape: "three-sides", side: "13 ft", secondSide: "14 ft", thirdSide: "15 ft" };
  expect(lined(reckoned("area", { parts: [sides] }), "surface")).toEqual(["84 square-foot"]);
});

test("in metric it is square metres", () => {
  const sheet = { shape: "rectangle", width: "1220 mm", height: "2,44 m" };
  expect(lined(reckoned("area", { parts: [sheet] }, "metric"), "surface")).toEqual(["2.9768 square-metre"]);
});

test("three sides that do not meet are refused", () => {
  const flat = { shape: "three-sides", side: "10 ft", secondSide: "5 ft", thirdSide: "5 ft" };
  expect(refused("area", { parts: [wall, flat] })).toEqual(["inputs.parts.1.thirdSide not-a-triangle"]);
  const open = { ...flat, thirdSide: "20 ft" };
  expect(refused("area", { parts: [open] })).toEqual(["inputs.parts.0.thirdSide not-a-triangle"]);
});

test("openings larger than all parts together are refused", () => {
  const door = { width: "20 ft", height: "10 ft" };
  expect(refused("area", { parts: [wall], openings: [door] })).toEqual(["inputs.openings larger-than-wall"]);
});

test("nothing, an unknown shape and a negative size are refused where they stand", () => {
  expect(refused("area", { parts: [] })).toEqual(["inputs.parts missing"]);
  expect(refused("area", { parts: [{ ...wall, shape: "circle" }] })).toEqual([
    "inputs.parts.0.shape unknown-choice",
  ]);
  expect(refused("area", { parts: [{ ...wall, height: "-8 ft" }] })).toEqual([
    "inputs.parts.0.height negative",
  ]);
});

test("the drawing has each part beside the next, and its openings", () => {
  const takeoff = reckoned("area", { parts: [wall, gable], openings: [window] });
  const parts = viewOf(takeoff, "parts");
  expect([drawn(parts, "rectangle"), drawn(parts, "triangle"), drawn(parts, "opening")]).toEqual([1, 1, 2]);
  expect(parts.spans.map(({ name, value }) => [name, value])).toEqual([
    ["width", 288],
    ["height", 96],
    ["width", 288],
    ["height", 108],
  ]);
});

test("a triangle by its sides is drawn with those sides, also when it leans out", () => {
  const sides = { shape: "three-sides", side: "4 ft", secondSide: "13 ft", thirdSide: "15 ft" };
  const parts = viewOf(reckoned("area", { parts: [sides] }), "parts");
  expect(parts.spans.map(({ value }) => Math.round(value * 1000) / 1000)).toEqual([48, 156, 180]);
  const obtuse = { shape: "three-sides", side: "4 ft", secondSide: "15 ft", thirdSide: "13 ft" };
  const leaning = viewOf(reckoned("area", { parts: [obtuse] }), "parts");
  expect(leaning.box.x).toBeCloseTo(0, 9);
});

test("each part is drawn on one ground line, a fifth of a width apart", () => {
  const sides = { shape: "three-sides", side: "4 ft", secondSide: "15 ft", thirdSide: "13 ft" };
  const small = { shape: "rectangle", width: "10", height: "5" };
  const tall = { shape: "triangle", width: "20", height: "30" };
  const parts = viewOf(reckoned("area", { parts: [small, tall, sides] }), "parts");
  expect(cornersOf(parts, "rectangle")).toEqual([
    [
      [0, -5],
      [10, -5],
      [10, 0],
      [0, 0],
    ],
  ]);
  expect(cornersOf(parts, "triangle")).toEqual([
    [
      [12, 0],
      [22, -30],
      [32, 0],
    ],
  ]);
  // 13, 15 and 4 make 24 square feet: 12 ft high, 5 ft out over the base.
  expect(cornersOf(parts, "three-sides")).toEqual([
    [
      [96, 0],
      [36, -144],
      [144, 0],
    ],
  ]);
  const opened = viewOf(
    reckoned("area", { parts: [small], openings: [{ width: "2", height: "3" }] }),
    "parts",
  );
  expect(cornersOf(opened, "opening")[0]?.map(String)).toEqual(["5,0.6", "7,0.6", "7,3.6", "5,3.6"]);
  expect(parts.spans.map(({ from }) => from[0])).toEqual([0, 10, 12, 22, 96, 144, 36]);
});
