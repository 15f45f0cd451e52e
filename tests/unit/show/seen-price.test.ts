import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { seenPrice, standings } from "../../../lib/show/seen-price.ts";
import { day, observation, offerAt, TODAY } from "../../support/price-example.ts";

test("3 for 20.00 is said as it stands on the tag, not as 6.67 each", () => {
  const seen = observation("20", { per: { quantity: decimal(3), unit: "piece" } });
  expect(seenPrice(seen, TODAY, "en-CA")).toMatchObject({
    amount: "20.00",
    currency: "CAD",
    quantity: { text: "3", exact: "3" },
    unit: "piece",
  });
});

test("every place of an amount is kept", () => {
  expect(seenPrice(observation("0.034567"), TODAY, "en-CA").amount).toBe("0.034567");
});

test("none left has no amount", () => {
  expect(seenPrice(observation(null), TODAY, "en-CA")).toMatchObject({ amount: null, currency: null });
});

test("days and quantities are said where they are known", () => {
  const seen = observation("20", { until: day("2026-03-14"), minQuantity: decimal(10) });
  expect(seenPrice(seen, TODAY, "en-CA")).toMatchObject({
    from: null,
    until: "Mar 14, 2026",
    minimum: "10",
    maximum: null,
  });
});

test("each price stands in force, or with the reason it is left out", () => {
  const offer = offerAt("31");
  const found = standings({
    offers: [offer],
    leftOut: [{ observationId: "old", storeId: "near", reason: "replaced" }],
  });
  expect([...found]).toEqual([
    [offer.observationId, "in-force"],
    ["old", "replaced"],
  ]);
});
