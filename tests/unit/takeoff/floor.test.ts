import { expect, test } from "vitest";
import { cornersOf, drawn, lined, reckoned, refused, viewOf } from "../../support/takeoff-example.ts";

const room = { length: "20 ft", span: "12 ft", joistSpacing: "16 in", extraJoists: "2" };

test("joists stand at the spacing with both ends and as many more as stated, rims at both ends", () => {
  const takeoff = reckoned("floor", room);
  expect(lined(takeoff, "joists")).toEqual(["18 piece at 12 linear-foot"]);
  expect(lined(takeoff, "rims")).toEqual(["40 linear-foot"]);
  expect(lined(takeoff, "subfloor")).toEqual(["240 square-foot"]);
});

test("a stair well comes off the subfloor", () => {
  const openings = [{ width: "3 ft", height: "10 ft" }];
  expect(lined(reckoned("floor", { ...room, openings }), "subfloor")).toEqual(["210 square-foot"]);
  expect(drawn(viewOf(reckoned("floor", { ...room, openings }), "plan"), "opening")).toBe(1);
});

test("an opening longer than the span and a spacing of 0 are refused", () => {
  const openings = [{ width: "3 ft", height: "13 ft" }];
  expect(refused("floor", { ...room, openings })).toEqual(["inputs.openings.0.height larger-than-wall"]);
  expect(refused("floor", { ...room, joistSpacing: "0" })).toEqual(["inputs.joistSpacing not-positive"]);
});

test("every joist at the spacing is drawn, along the span", () => {
  const plan = viewOf(reckoned("floor", room), "plan");
  expect(drawn(plan, "joist")).toBe(16);
  expect(plan.spans.map(({ name, value }) => [name, value])).toEqual([
    ["length", 240],
    ["span", 144],
  ]);
});

test("openings are spread along the floor", () => {
  const openings = [{ width: "4 ft", height: "5 ft" }];
  const plan = viewOf(reckoned("floor", { ...room, openings }), "plan");
  expect(cornersOf(plan, "opening")[0]?.map(String)).toEqual(["96,0", "144,0", "144,60", "96,60"]);
});

test("openings wider together than the floor is long are drawn narrower, side by side", () => {
  const openings = [{ width: "15 ft", height: "1 ft", count: "2" }];
  const plan = viewOf(reckoned("floor", { ...room, openings }), "plan");
  expect(cornersOf(plan, "opening").map((points) => [String(points[0]), String(points[1])])).toEqual([
    ["0,0", "120,0"],
    ["120,0", "240,0"],
  ]);
});

test("more openings than can be seen are not drawn", () => {
  const openings = [{ width: "1", height: "1", count: "61" }];
  expect(drawn(viewOf(reckoned("floor", { ...room, openings }), "plan"), "opening")).toBe(0);
});
