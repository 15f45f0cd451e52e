import { expect, test } from "vitest";
import { drawn, lined, measured, reckoned, refused, viewOf } from "../../support/takeoff-example.ts";

const patio = {
  length: "12 ft",
  width: "10 ft",
  paverLength: "8 in",
  paverWidth: "4 in",
  joint: "0",
  baseDepth: "6 in",
  baseBeyond: "6 in",
  sandDepth: "1 in",
};

test("a patio is its pavers, the sand under them and a gravel base that runs past them", () => {
  const takeoff = reckoned("pavers", patio);
  expect(lined(takeoff, "pavers")).toEqual(["540 piece"]);
  expect(measured(takeoff, "baseArea")).toBe("143 square-foot");
  expect(lined(takeoff, "gravel")).toEqual(["71.5 cubic-foot"]);
  expect(lined(takeoff, "beddingSand")).toEqual(["10 cubic-foot"]);
  expect(lined(takeoff, "edging")).toEqual(["44 linear-foot"]);
});

test("a joint makes fewer pavers", () => {
  expect(lined(reckoned("pavers", { ...patio, joint: "1/8" }), "pavers", 2)).toEqual(["515.58 piece"]);
});

test("joints are drawn a paver and a joint apart", () => {
  const plan = viewOf(reckoned("pavers", { ...patio, joint: "1/8" }), "plan");
  const second = plan.strokes.filter(({ from }) => from.includes(8.125) || from.includes(4.125));
  expect(second.map(({ from, to }) => [String(from), String(to)])).toEqual([
    ["8.125,0", "8.125,120"],
    ["0,4.125", "144,4.125"],
  ]);
});

test("without a bed there is no line for sand", () => {
  expect(lined(reckoned("pavers", { ...patio, sandDepth: "0" }), "beddingSand")).toEqual([]);
});

test("a paver of no width is refused", () => {
  expect(refused("pavers", { ...patio, paverWidth: "0" })).toEqual(["inputs.paverWidth not-positive"]);
});

test("the plan shows base and joints, the section both layers", () => {
  const takeoff = reckoned("pavers", patio);
  expect(drawn(viewOf(takeoff, "plan"), "joint")).toBe(19 + 31);
  expect(viewOf(takeoff, "plan").box).toEqual({ x: -6, y: -6, width: 156, height: 132 });
  expect(viewOf(takeoff, "section").box.height).toBe(7);
});
