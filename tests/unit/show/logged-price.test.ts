import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { exposure } from "../../../lib/exposure/exposure.ts";
import type { Observation } from "../../../lib/prices/observation.ts";
import { loggedPrice } from "../../../lib/show/logged-price.ts";
import { loggedPriceText } from "../../../lib/show/logged-price-text.ts";
import { daysAgo, observation, SHEET, TODAY } from "../../support/price-example.ts";
import { eventOf, factsOf, lotOf, needOf, revisionOf } from "../../support/stock-example.ts";

function meaning(
  logged: Observation,
  others: readonly Observation[],
  given: Parameters<typeof factsOf>[0] = {},
) {
  const observations = [...others, logged];
  const facts = factsOf({ requirements: [needOf("a", revisionOf(10))], observations, ...given });
  const found = loggedPrice(logged, observations, exposure(TODAY, facts), facts, SHEET);
  return { found, text: loggedPriceText(found, "en-CA") };
}

const SIX = decimal(6);
const far = observation("26.00", { storeId: "far", seenOn: daysAgo(3) });

test("a price is held against the best offer at the other stores, and that store is named", () => {
  const { text } = meaning(observation("24.50"), [far]);
  expect(text.best).toEqual({ side: "under", by: "1.50", other: "26.00", storeId: "far" });
  expect(text.going).toMatchObject({ side: "under", by: "1.50", stores: 1 });
});

test("buying the whole need here is told as a sum, to the cent", () => {
  const { text } = meaning(observation("24.50"), [far]);
  // 10 x (26.00 - 24.50)
  expect(text.covers).toMatchObject({ quantity: "10", open: "10", all: true });
  expect(text.total).toMatchObject({ side: "under", by: "15.00" });
});

test("six on clearance cover six of the need", () => {
  const { text } = meaning(observation("20.00", { terms: "clearance", maxQuantity: SIX }), [far]);
  expect(text.covers).toMatchObject({ quantity: "6", open: "10", all: false });
});

test("what was last paid stands beside it, with its day and projects", () => {
  const { text } = meaning(observation("24.50"), [far], {
    lots: [lotOf(10, 250)],
    events: [eventOf("allocated", 1, "2026-01-06", { requirementId: "a" })],
  });
  expect(text.paid).toEqual({
    side: "under",
    by: "0.50",
    other: "25.00",
    on: "2026-01-05",
    projectIds: ["job"],
  });
});

test("the same price says the same, not 0.00 under", () => {
  expect(meaning(observation("26.00"), [far]).text.best?.side).toBe("same");
});

test("the first price of a material has nothing to be held against", () => {
  const { text } = meaning(observation("26.00"), []);
  expect([text.lowest, text.best, text.going, text.paid]).toEqual([{ kind: "first" }, null, null, null]);
});

test("a receipt is no offer, and says why", () => {
  const { found, text } = meaning(observation("26.00", { terms: "paid" }), [far]);
  expect([found.offer, text.leftOut]).toEqual([null, "receipt"]);
});

test("the open needs are listed by their day, covered ones are not", () => {
  const { found } = meaning(observation("24.50"), [far], {
    requirements: [
      needOf("late", revisionOf(10, { neededBy: daysAgo(-90) })),
      needOf("soon", revisionOf(4, { neededBy: daysAgo(-9) })),
      needOf("covered", revisionOf(2)),
    ],
    lots: [lotOf(2, 50)],
    events: [eventOf("allocated", 2, "2026-01-06", { requirementId: "covered" })],
  });
  expect(found.needs.map(({ requirementId }) => requirementId)).toEqual(["soon", "late"]);
  expect(found.open.toFixed()).toBe("14");
});

test("beside another store's price of the same day it is not called the first one", () => {
  const { text } = meaning(observation("24.50"), [observation("26.00", { storeId: "far" })]);
  expect([text.lowest, text.best?.by]).toEqual([null, "1.50"]);
});
