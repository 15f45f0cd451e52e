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

const porch = {
  length: "16 ft",
  width: "10 ft",
  slope: "5/12",
  lowOverhang: "1 ft",
  highOverhang: "1 ft",
  rakeOverhang: "1 ft",
  rafterSpacing: "16 in",
};

test("a shed roof is its run with both overhangs, along the slope", () => {
  const roof = reckoned("shed-roof", porch);
  expect(measured(roof, "planArea")).toBe("216 square-foot");
  expect(measured(roof, "roofArea")).toBe("234 square-foot");
  expect(measured(roof, "rafterLength")).toBe("13 linear-foot");
  expect(measured(roof, "eaves")).toBe("18 linear-foot");
  expect(measured(roof, "highEdges")).toBe("18 linear-foot");
  expect(measured(roof, "rakes")).toBe("26 linear-foot");
  expect(lined(roof, "rafters")).toEqual(["13 piece at 13 linear-foot"]);
});

test("it has no ridge to cap, and trim on all four edges", () => {
  const roof = reckoned("shed-roof", porch);
  expect(lined(roof, "ridgeCap")).toEqual([]);
  expect(lined(roof, "edgeTrim")).toEqual(["62 linear-foot"]);
  expect(lined(roof, "iceBarrier")).toEqual(["18 linear-foot"]);
});

test("the drawing is one slope over the walls and the line of its rise", () => {
  const roof = reckoned("shed-roof", porch);
  expect(drawn(viewOf(roof, "plan"), "facet")).toBe(1);
  expect(viewOf(roof, "plan").box).toEqual({ x: 0, y: 0, width: 216, height: 144 });
  expect(viewOf(roof, "elevation").spans.find(({ name }) => name === "rise")?.value).toBe(60);
});

test("a flat roof is asked for as an area instead", () => {
  expect(refused("shed-roof", { ...porch, slope: "0 in 12" })).toEqual(["inputs.slope slope-flat"]);
});

test("the walls are drawn inside the overhangs, the low side below", () => {
  const takeoff = reckoned("shed-roof", { ...porch, highOverhang: "6 in" });
  const plan = viewOf(takeoff, "plan");
  expect(cornersOf(plan, "walls")[0]?.map(String)).toEqual(["12,6", "204,6", "204,126", "12,126"]);
  expect(plan.box.height).toBe(138);
  const end = viewOf(takeoff, "elevation");
  expect(end.strokes.map(({ from, to }) => [String(from), String(to)])).toEqual([["0,57.5", "138,0"]]);
  expect(end.spans.map(({ name, value }) => [name, value])).toEqual([
    ["rafterLength", 149.5],
    ["rise", 57.5],
    ["width", 120],
  ]);
});
