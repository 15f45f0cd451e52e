import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { storeLevels } from "../../../lib/exposure/store-levels.ts";
import { daysAgo, observation, SHEET, store, TODAY, valuation } from "../../support/price-example.ts";
import { someMaterial } from "../../support/some-material.ts";
import { factsOf, needOf, projectOf, revisionOf } from "../../support/stock-example.ts";

const STUD = someMaterial("piece", {}, { id: "stud", category: "dimensional-lumber" });
const seen = (materialId: "sheet" | "stud", storeId: string, amount: string, given = {}) =>
  observation(amount, {
    materialId,
    storeId,
    per: { quantity: decimal(1), unit: materialId === "stud" ? "piece" : "sheet" },
    ...given,
  });
const BOTH = [
  seen("sheet", "near", "30.00"),
  seen("sheet", "far", "20.00"),
  seen("stud", "near", "4.00"),
  seen("stud", "far", "5.00"),
];

function levels(observations = BOTH, given: Partial<Parameters<typeof factsOf>[0]> = {}, storeId = "near") {
  const facts = factsOf({
    materials: [SHEET, STUD],
    requirements: [needOf("a", revisionOf(10))],
    observations,
    ...given,
  });
  return storeLevels(storeId, TODAY, facts).map(({ fisher, jevons, ...rest }) => ({
    ...rest,
    fisher: fisher?.level.toFixed(2) ?? null,
    jevons: jevons?.level.toFixed(2) ?? null,
  }));
}

test("a store against another: Fisher over what is required, Jevons over all seen at both", () => {
  // Fisher: only sheets are required, 30 over 20; Jevons: square root of 1.5 x 0.8
  expect(levels()).toEqual([
    { againstStoreId: "far", materials: 2, required: 1, fisher: "150.00", jevons: "109.54" },
  ]);
});

test("the other way round it is the inverse", () => {
  expect(levels(BOTH, {}, "far")).toMatchObject([
    { againstStoreId: "near", fisher: "66.67", jevons: "91.29" },
  ]);
});

test("a material weighs by what all live and planned projects require, closed needs left out", () => {
  const requirements = [
    needOf("a", revisionOf(10)),
    needOf("b", revisionOf(100, { unit: "piece" }), { materialId: "stud", projectId: "planned" }),
    needOf("c", revisionOf(900), { projectId: "over" }),
    needOf("d", revisionOf(900), { closedOn: daysAgo(2) }),
  ];
  const projects = [
    projectOf("job"),
    projectOf("planned", { statuses: [{ status: "planned", from: daysAgo(5) }] }),
    projectOf("over", { statuses: [{ status: "finished", from: daysAgo(5) }] }),
  ];
  // 10 x 30 + 100 x 4 = 700 over 10 x 20 + 100 x 5 = 700
  expect(levels(BOTH, { requirements, projects })).toMatchObject([{ required: 2, fisher: "100.00" }]);
});

test("with nothing required Fisher is not known, Jevons is", () => {
  expect(levels(BOTH, { requirements: [] })).toMatchObject([{ required: 0, fisher: null, jevons: "109.54" }]);
});

test.each([
  ["a stale price", seen("sheet", "far", "20.00", { seenOn: daysAgo(40) })],
  ["a special", seen("sheet", "far", "20.00", { terms: "special" })],
  ["a quantity break", seen("sheet", "far", "20.00", { terms: "quantity-break", minQuantity: decimal(10) })],
])("%s is no fresh shelf price", (_, other) => {
  expect(levels([seen("sheet", "near", "30.00"), other])).toEqual([]);
});

test("of several shelf prices the one for the smallest quantity counts", () => {
  const cheaper = seen("sheet", "far", "10.00", { minQuantity: decimal(20) });
  expect(levels([...BOTH, cheaper])).toEqual(levels());
});

test("a store across the border without confirmed import charges is left out", () => {
  const across = store("across", { taxRegion: "US-ME" });
  const withIt = valuation({ stores: [store("near"), store("far"), across] });
  const observations = [...BOTH, seen("sheet", "across", "15.00")];
  expect(levels(observations, { valuation: withIt }).map((one) => one.againstStoreId)).toEqual(["far"]);
});

test("the store with most in common comes first", () => {
  const third = valuation({ stores: [store("near"), store("far"), store("a-third")] });
  const observations = [...BOTH, seen("sheet", "a-third", "25.00")];
  expect(levels(observations, { valuation: third }).map((one) => one.againstStoreId)).toEqual([
    "far",
    "a-third",
  ]);
});
