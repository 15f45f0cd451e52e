import { expect, test } from "vitest";
import { cornersOf, drawn, lined, measured, reckoned, viewOf } from "../../support/takeoff-example.ts";

const house = { length: "38 ft", width: "22 ft", slope: "6/12", overhang: "1 ft" };

test("a hip roof over 24 x 40 ft at 6 in 12 has hips half as long again as its run", () => {
  const roof = reckoned("hip-roof", house);
  expect(measured(roof, "planArea")).toBe("960 square-foot");
  expect(measured(roof, "roofArea")).toBe("1073.312629 square-foot");
  expect(measured(roof, "hipLength")).toBe("18 linear-foot");
  expect(measured(roof, "hips")).toBe("72 linear-foot");
  expect(measured(roof, "ridges")).toBe("16 linear-foot");
  expect(measured(roof, "eaves")).toBe("128 linear-foot");
  expect(measured(roof, "rafterLength")).toBe("13.416408 linear-foot");
});

test("caps run along ridge and hips", () => {
  expect(lined(reckoned("hip-roof", house), "ridgeCap")).toEqual(["88 linear-foot"]);
  expect(lined(reckoned("hip-roof", house), "hipRafters")).toEqual(["4 piece at 18 linear-foot"]);
});

test("over a square it is a pyramid without a ridge", () => {
  const roof = reckoned("hip-roof", { ...house, length: "22 ft" });
  expect(measured(roof, "ridges")).toBe("0 linear-foot");
  expect(lined(roof, "ridgeBoard")).toEqual([]);
  expect(drawn(viewOf(roof, "plan"), "ridge")).toBe(0);
});

test("which side is called the length does not matter", () => {
  const turned = reckoned("hip-roof", { ...house, length: "22 ft", width: "38 ft" });
  expect(turned.result).toEqual(reckoned("hip-roof", house).result);
});

test.each([
  ["38 ft", "22 ft"],
  ["22 ft", "38 ft"],
])("the drawing of %s x %s has its hips at 45 degrees and its ridge between them", (length, width) => {
  const plan = viewOf(reckoned("hip-roof", { ...house, length, width }), "plan");
  expect(drawn(plan, "facet")).toBe(4);
  for (const { name, from, to } of plan.strokes) {
    const [across, down] = [Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1])];
    if (name === "hip") expect([across, down]).toEqual([144, 144]);
    else expect([across + down, Math.min(across, down)]).toEqual([192, 0]);
  }
});

test("the walls are drawn inside the overhang, each slope from its eave to the ridge", () => {
  const plan = viewOf(reckoned("hip-roof", house), "plan");
  expect(cornersOf(plan, "walls")[0]?.map(String)).toEqual(["12,12", "468,12", "468,276", "12,276"]);
  expect(cornersOf(plan, "facet").map((points) => points.map(String))).toEqual([
    ["0,0", "480,0", "336,144", "144,144"],
    ["480,0", "480,288", "336,144", "336,144"],
    ["480,288", "0,288", "144,144", "336,144"],
    ["0,288", "0,0", "144,144", "144,144"],
  ]);
});
