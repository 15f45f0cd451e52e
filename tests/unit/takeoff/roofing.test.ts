import { expect, test } from "vitest";
import { lined, reckoned, refused, viewOf } from "../../support/takeoff-example.ts";

const roof = { slopedArea: "1,5 squares", eaves: "40 ft", ridges: "20 ft", hips: "12 ft", valleys: "8 ft" };

test("a measured roof is covered by its area and its edges", () => {
  const takeoff = reckoned("roofing", roof);
  expect(lined(takeoff, "shingles")).toEqual(["150 square-foot"]);
  expect(lined(takeoff, "underlayment")).toEqual(["150 square-foot"]);
  expect(lined(takeoff, "starter")).toEqual(["40 linear-foot"]);
  expect(lined(takeoff, "ridgeCap")).toEqual(["32 linear-foot"]);
  expect(lined(takeoff, "valleyLining")).toEqual(["8 linear-foot"]);
  expect(lined(takeoff, "iceBarrier")).toEqual(["48 linear-foot"]);
  expect(lined(takeoff, "edgeTrim")).toEqual(["40 linear-foot"]);
});

test("the drawing shows the area as a square and each edge there is", () => {
  const parts = viewOf(reckoned("roofing", { ...roof, slopedArea: "100" }), "parts");
  expect(parts.polygons[0]?.points[2]).toEqual([120, 120]);
  expect(parts.spans.map(({ name, value }) => [name, value])).toEqual([
    ["eaves", 480],
    ["ridges", 240],
    ["hips", 144],
    ["valleys", 96],
  ]);
});

test("no area and a negative edge are refused", () => {
  expect(refused("roofing", { ...roof, slopedArea: "0", rakes: "-1" })).toEqual([
    "inputs.slopedArea not-positive",
    "inputs.rakes negative",
  ]);
});

test("the edges lie one under another below the square", () => {
  const parts = viewOf(reckoned("roofing", { ...roof, slopedArea: "100" }), "parts");
  expect(parts.spans.map(({ from }) => Math.round(from[1]))).toEqual([132, 144, 156, 168]);
});
