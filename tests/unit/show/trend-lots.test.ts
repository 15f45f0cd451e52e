import { expect, test } from "vitest";
import { markLetter, trendLots } from "../../../lib/show/trend-lots.ts";
import type { TrendAsked } from "../../../lib/show/trend-points.ts";
import { daysAgo, rate, SHEET, store, TODAY, valuation } from "../../support/price-example.ts";
import { eventOf, factsOf, lotOf, needOf, projectOf, revisionOf } from "../../support/stock-example.ts";

const asked: TrendAsked = { day: TODAY, days: 365, unit: "sheet", currency: "home" };

test("a lot is drawn at its cost for one, on the day it was ordered, named by the project it was set aside for", () => {
  const facts = factsOf({
    lots: [lotOf(27, "800.28")],
    events: [eventOf("allocated", 20, "2026-01-06", { requirementId: "need" })],
    projects: [projectOf("workshop", { name: "Heron Lane workshop" })],
    requirements: [needOf("need", revisionOf(20), { projectId: "workshop" })],
  });
  expect(trendLots(facts, SHEET, asked, "en-CA")).toMatchObject([
    // 800.28 / 27
    {
      letter: "A",
      price: "29.64",
      quantity: "27",
      orderedOn: "2026-01-05",
      projects: ["Heron Lane workshop"],
    },
  ]);
});

test("a project named twice over by set aside and drawn is named once", () => {
  const facts = factsOf({
    lots: [lotOf(10, "300")],
    events: [
      eventOf("allocated", 4, "2026-01-06", { requirementId: "need" }),
      eventOf("drawn", 4, "2026-01-08", { requirementId: "need" }),
    ],
    projects: [projectOf("workshop", { name: "Heron Lane workshop" })],
    requirements: [needOf("need", revisionOf(20), { projectId: "workshop" })],
  });
  expect(trendLots(facts, SHEET, asked, "en-CA")[0]?.projects).toEqual(["Heron Lane workshop"]);
});

test("per square foot it is its cost by the 32 of a sheet", () => {
  const facts = factsOf({ lots: [lotOf(10, "320")] });
  expect(trendLots(facts, SHEET, { ...asked, unit: "square-foot" }, "en-CA")[0]?.price).toBe("1.00");
});

test("in another currency it takes the rate of the day it was ordered", () => {
  const facts = factsOf({
    lots: [lotOf(10, "270")],
    valuation: valuation({
      stores: [store("near")],
      rates: [rate("2026-01-05", "USD", "CAD", "1.35"), rate("2026-03-02", "USD", "CAD", "2")],
    }),
  });
  expect(trendLots(facts, SHEET, { ...asked, currency: "USD" }, "en-CA")[0]?.price).toBe("20.00");
});

test("without a rate of that day it is left out", () => {
  const facts = factsOf({ lots: [lotOf(10, "270")] });
  expect(trendLots(facts, SHEET, { ...asked, currency: "USD" }, "en-CA")).toEqual([]);
});

test("a lot of another material, or from before the period, is not drawn", () => {
  const facts = factsOf({
    lots: [lotOf(1, "30", { materialId: "board" }), lotOf(1, "30", { id: "old", orderedOn: daysAgo(400) })],
  });
  expect(trendLots(facts, SHEET, asked, "en-CA")).toEqual([]);
});

test("marks run from A to Z and then begin again with 2", () => {
  expect([0, 25, 26, 27].map(markLetter)).toEqual(["A", "Z", "A2", "B2"]);
});
