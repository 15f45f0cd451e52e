import { expect, test } from "vitest";
import { CATALOGUE } from "../../../lib/materials/catalogue/catalogue.ts";
import { CALCULATOR_NAMES } from "../../../lib/takeoff/calculators.ts";
import { isUsualFor } from "../../../lib/takeoff/line-categories.ts";
import { purchaseOf } from "../../../lib/takeoff/purchase.ts";
import type { TakeoffLine } from "../../../lib/takeoff/result.ts";
import { materialOf } from "../../support/catalogue-material.ts";
import { reckoned } from "../../support/takeoff-example.ts";
import { TYPED } from "../../support/takeoff-inputs.ts";

/** "other" may be anything, so it says nothing. */
const MATERIALS = CATALOGUE.map(materialOf).filter(({ category }) => category !== "other");

function canBeBought(line: TakeoffLine): boolean {
  return MATERIALS.some(
    (material) => isUsualFor(line.name, material.category) && purchaseOf(line, material).ok,
  );
}

test.each(CALCULATOR_NAMES)("everything %s comes to can be bought as something of the catalogue", (name) => {
  const { lines } = reckoned(name, TYPED[name]).result;
  expect(lines.length).toBeGreaterThan(0);
  expect(lines.filter((line) => !canBeBought(line)).map((line) => line.label ?? line.name)).toEqual([]);
});
