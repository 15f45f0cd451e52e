import { expect, test } from "vitest";
import { localDate } from "../../../lib/calendar/local-date.ts";
import { decimal } from "../../../lib/decimal.ts";
import { cutText } from "../../../lib/show/cut-text.ts";
import { linesBought } from "../../../lib/show/lines-bought.ts";
import { keyedLines } from "../../../lib/takeoff/line-keys.ts";
import { someMaterial } from "../../support/some-material.ts";
import { reckoned } from "../../support/takeoff-example.ts";
import { TYPED } from "../../support/takeoff-inputs.ts";

const NO_STOCK = { lots: [], events: [], day: localDate("2026-06-01"), yields: new Map() };

test("a line is offered only as materials whose sizes fit it", () => {
  const sheet = someMaterial("sheet", { faceWidth: "48 in", faceLength: "96 in" });
  const { result } = reckoned("slab", TYPED.slab);
  expect(linesBought(result.lines, [sheet], NO_STOCK, "en-CA").map((one) => one.as)).toEqual([[]]);
  const floor = reckoned("floor", { length: "8 ft", span: "8 ft", joistSpacing: "16" });
  const subfloor = linesBought(floor.result.lines, [sheet], NO_STOCK, "en-CA").at(-1);
  expect(subfloor?.line.key).toBe("subfloor");
  expect(subfloor?.as).toEqual([
    {
      materialId: sheet.id,
      name: "a material",
      quantity: "2",
      exact: "2",
      unit: "sheet",
      asksYield: false,
      free: null,
    },
  ]);
});

test("a bag that does not say what it makes is offered where such a line is usually bought by the bag", () => {
  const bag = { ...someMaterial("bag", {}), category: "masonry" } as const;
  const { lines } = reckoned("slab", TYPED.slab).result;
  const [concrete] = linesBought(lines, [bag], NO_STOCK, "en-CA");
  expect(concrete?.as).toMatchObject([{ quantity: null, asksYield: true }]);
  const screws = { ...bag, category: "fasteners" } as const;
  expect(linesBought(lines, [screws], NO_STOCK, "en-CA")[0]?.as).toEqual([]);
});

test("what was typed that one gives says how many", () => {
  const bag = { ...someMaterial("bag", {}), category: "masonry" } as const;
  const { lines } = reckoned("slab", { length: "10 ft", width: "9 ft", thickness: "4 in" }).result;
  const yields = new Map([["concrete", { value: decimal("0.6"), unit: "cubic-foot" as const }]]);
  // 10 x 9 / 3 = 30 cubic feet, 30 / 0.6 = 50
  expect(linesBought(lines, [bag], { ...NO_STOCK, yields }, "en-CA")[0]?.as).toMatchObject([
    { quantity: "50", exact: "50", asksYield: true },
  ]);
});

test("what a line is usually bought as comes first", () => {
  const thick = { faceWidth: "48 in", faceLength: "96 in", thickness: "1 in" };
  const panel = { ...someMaterial("sheet", thick), id: "panel", category: "sheet-goods" } as const;
  const bag = { ...someMaterial("bag", {}), id: "bag", category: "masonry" } as const;
  const ready = { ...someMaterial("bag", { yield: "0.6 cu ft" }), id: "ready", category: "masonry" } as const;
  const [concrete] = linesBought(
    reckoned("slab", TYPED.slab).result.lines,
    [panel, bag, ready],
    NO_STOCK,
    "en",
  );
  expect(concrete?.as.map(({ materialId }) => materialId)).toEqual(["ready", "bag", "panel"]);
});

test("a cut is said up to a sixty-fourth of an inch, never below what is needed", () => {
  expect(cutText({ value: decimal("13.0001"), unit: "linear-foot" }, "imperial")).toBe("13 ft 1/64 in");
  expect(cutText({ value: decimal("2.4401"), unit: "linear-metre" }, "metric")).toBe("2441 mm");
});

test("each line has a key of its own; counted things are known by what they were called", () => {
  const roof = keyedLines(reckoned("l-shaped-hip-roof", TYPED["l-shaped-hip-roof"]).result.lines);
  expect(new Set(roof.map(({ key }) => key)).size).toBe(roof.length);
  expect(roof.map(({ key }) => key)).toContain("hipRafters-2");
  const counted = keyedLines(reckoned("counts", TYPED.counts).result.lines);
  expect(counted.map(({ key }) => key)).toEqual(["counted door 2868 left", "counted hinge"]);
});
