import { expect, test } from "vitest";
import { drawn, lined, measured, reckoned, refused, viewOf } from "../../support/takeoff-example.ts";

const slope = { eave: "40 ft", slopeLength: "12 ft 6 in" };
const panels = { slopes: [{ ...slope, count: "2" }], coverWidth: "36 in", overallWidth: "38 in" };

test("panels are counted for each slope by what they cover, each as long as the slope", () => {
  const takeoff = reckoned("metal-panels", panels);
  expect(lined(takeoff, "metalPanels")).toEqual(["28 piece at 12.5 linear-foot"]);
  expect(measured(takeoff, "coveredArea")).toBe("1000 square-foot");
  expect(measured(takeoff, "sideLap", 4)).toBe("0.1667 linear-foot");
});

test("slopes of one length are one line, another length is another", () => {
  const slopes = [slope, { eave: "10 ft", slopeLength: "150 in" }, { eave: "9 ft", slopeLength: "8 ft" }];
  expect(lined(reckoned("metal-panels", { ...panels, slopes }), "metalPanels")).toEqual([
    "18 piece at 12.5 linear-foot",
    "3 piece at 8 linear-foot",
  ]);
});

test("a panel cannot cover more than its own width; its overall width may be left out", () => {
  expect(refused("metal-panels", { ...panels, overallWidth: "35 in" })).toEqual([
    "inputs.coverWidth cover-too-wide",
  ]);
  expect(refused("metal-panels", { ...panels, overallWidth: null })).toEqual([]);
  expect(refused("metal-panels", { ...panels, slopes: [], coverWidth: "0" })).toEqual([
    "inputs.coverWidth not-positive",
    "inputs.slopes missing",
  ]);
});

test("the last panel is drawn as wide as it is bought", () => {
  const view = viewOf(reckoned("metal-panels", panels), "elevation");
  expect(drawn(view, "panel")).toBe(15);
  expect(view.box.width).toBe(504);
});

test("an eave of whole panels is drawn with no panel too many", () => {
  const whole = { ...panels, slopes: [{ eave: "36 ft", slopeLength: "10 ft" }] };
  expect(drawn(viewOf(reckoned("metal-panels", whole), "elevation"), "panel")).toBe(13);
});
