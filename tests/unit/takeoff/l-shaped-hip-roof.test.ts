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

const house = {
  length: "40 ft",
  width: "24 ft",
  wingWidth: "16 ft",
  wingLength: "12 ft",
  slope: "6/12",
  overhang: "0",
};

test("an L of 40 x 24 ft with a 16 x 12 ft wing is its two rectangles along the slope", () => {
  const roof = reckoned("l-shaped-hip-roof", house);
  expect(measured(roof, "planArea")).toBe("1152 square-foot");
  expect(measured(roof, "roofArea")).toBe("1287.975155 square-foot");
  expect(measured(roof, "ridges")).toBe("28 linear-foot");
  expect(measured(roof, "hips")).toBe("84 linear-foot");
  expect(measured(roof, "valleys")).toBe("12 linear-foot");
  expect(measured(roof, "eaves")).toBe("152 linear-foot");
  expect(measured(roof, "rafterLength")).toBe("13.416408 linear-foot");
  expect(lined(roof, "valleyRafters")).toEqual(["1 piece at 12 linear-foot"]);
});

test("its hips are three of the main part, two of the wing and the rest of the fourth", () => {
  expect(lined(reckoned("l-shaped-hip-roof", house), "hipRafters")).toEqual([
    "3 piece at 18 linear-foot",
    "2 piece at 12 linear-foot",
    "1 piece at 6 linear-foot",
  ]);
});

test("a wing as wide as the main part takes the whole fourth hip", () => {
  const roof = reckoned("l-shaped-hip-roof", { ...house, wingWidth: "24 ft" });
  expect(lined(roof, "hipRafters")).toEqual(["3 piece at 18 linear-foot", "2 piece at 18 linear-foot"]);
  expect(measured(roof, "valleys")).toBe("18 linear-foot");
  expect(measured(roof, "ridges")).toBe("28 linear-foot");
});

test("a wing wider than the main part carries the ridge, and the main part runs into it", () => {
  const roof = reckoned("l-shaped-hip-roof", { ...house, wingWidth: "30 ft" });
  expect(measured(roof, "bodyLength")).toBe("30 linear-foot");
  expect(measured(roof, "bodyWidth")).toBe("36 linear-foot");
  expect(measured(roof, "armWidth")).toBe("24 linear-foot");
  expect(measured(roof, "armLength")).toBe("10 linear-foot");
  expect(measured(roof, "ridges")).toBe("16 linear-foot");
  expect(measured(roof, "valleys")).toBe("18 linear-foot");
});

test("overhangs widen both parts but not the wing's reach", () => {
  const roof = reckoned("l-shaped-hip-roof", { ...house, overhang: "1 ft" });
  expect(measured(roof, "planArea")).toBe("1308 square-foot");
  expect(measured(roof, "eaves")).toBe("160 linear-foot");
  expect(measured(roof, "armLength")).toBe("12 linear-foot");
});

test("the drawing has six slopes, one valley and the walls under them", () => {
  const plan = viewOf(reckoned("l-shaped-hip-roof", house), "plan");
  expect(["facet", "valley", "hip", "ridge", "walls"].map((name) => drawn(plan, name))).toEqual([
    6, 1, 6, 2, 1,
  ]);
  expect(plan.box).toEqual({ x: 0, y: 0, width: 480, height: 432 });
  expect(plan.spans.map(({ name, value }) => [name, value])).toEqual([
    ["length", 480],
    ["width", 288],
    ["wingWidth", 192],
    ["wingLength", 144],
    ["overhang", 0],
  ]);
});

test("a wing as wide as the side it stands on makes no L", () => {
  expect(refused("l-shaped-hip-roof", { ...house, wingWidth: "40 ft" })).toEqual([
    "inputs.wingWidth wing-too-wide",
  ]);
});

test.each([
  ["16 ft", ["12,12", "492,12", "492,444", "300,444", "300,300", "12,300"]],
  ["30 ft", ["12,12", "492,12", "492,444", "132,444", "132,300", "12,300"]],
])("with a wing of %s the walls are drawn inside the overhang", (wingWidth, corners) => {
  const plan = viewOf(reckoned("l-shaped-hip-roof", { ...house, wingWidth, overhang: "1 ft" }), "plan");
  expect(cornersOf(plan, "walls")[0]?.map(String)).toEqual(corners);
  expect(plan.box).toEqual({ x: 0, y: 0, width: 504, height: 456 });
});
