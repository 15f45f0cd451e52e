import { expect, test } from "vitest";
import { localDate } from "../../../lib/calendar/local-date.ts";
import { decimal } from "../../../lib/decimal.ts";
import { cutText } from "../../../lib/show/cut-text.ts";
import { linesBought } from "../../../lib/show/lines-bought.ts";
import { keyedLines } from "../../../lib/takeoff/line-keys.ts";
import { someMaterial } from "../../support/some-material.ts";
import { reckoned } from "../../support/takeoff-example.ts";
import { TYPED } from "../../support/takeoff-inputs.ts";

const NO_STOCK = { lots: [], events: [], day: localDate("2026-06-01") };

test("a line is offered only as materials whose sizes fit it", () => {
  const sheet = someMaterial("sheet", { faceWidth: "48 in", faceLength: "96 in" });
  const { result } = reckoned("slab", TYPED.slab);
  expect(linesBought(result.lines, [sheet], NO_STOCK, "en-CA").map((one) => one.as)).toEqual([[]]);
  const floor = reckoned("floor", { length: "8 ft", span: "8 ft", joistSpacing: "16" });
  const subfloor = linesBought(floor.result.lines, [sheet], NO_STOCK, "en-CA").at(-1);
  expect(subfloor?.line.key).toBe("subfloor");
  expect(subfloor?.as).toEqual([
    { materialId: sheet.id, name: "a material", quantity: "2", exact: "2", unit: "sheet", free: null },
  ]);
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
