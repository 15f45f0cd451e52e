import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { standInFactor } from "../../../lib/projects/stands-in.ts";
import { needOf, revisionOf } from "../../support/stock-example.ts";

const need = needOf("a", revisionOf(1), {
  alternatives: [{ materialId: "half-sheet", factor: decimal(2) }],
});

test("a material stands in for itself one for one", () => {
  expect(standInFactor(need, "sheet")?.toNumber()).toBe(1);
});

test("an accepted alternative stands in by its factor", () => {
  expect(standInFactor(need, "half-sheet")?.toNumber()).toBe(2);
});

test("nothing else stands in", () => {
  expect(standInFactor(need, "board")).toBe(null);
});
