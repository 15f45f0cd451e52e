import { describe, expect, test } from "vitest";
import { decimal, ONE } from "../../../lib/decimal.ts";
import type { Observation } from "../../../lib/prices/observation.ts";
import type { Store } from "../../../lib/prices/store.ts";
import { copiedReceipt } from "../../../lib/stock/copied-receipt.ts";
import { day, fee, observation, SHEET, store, TODAY } from "../../support/price-example.ts";
import { lumber } from "../../support/some-material.ts";

const buying = (quantity: number) => ({ quantity: decimal(quantity), orderedOn: TODAY });
function amount(seen: Observation, quantity: number, at: Store = store("near"), material = SHEET) {
  return copiedReceipt(seen, material, at, buying(quantity))?.amount.toFixed(2) ?? null;
}

describe("the receipt copied from a price seen", () => {
  test("is the price times the quantity", () => {
    expect(amount(observation("20.00"), 7)).toBe("140.00");
  });

  test("does not round a price for several before it multiplies", () => {
    expect(amount(observation("20.00", { per: { quantity: decimal(3), unit: "sheet" } }), 38)).toBe("253.33");
  });

  test("reads another unit through the material", () => {
    const seen = observation("400.00", { per: { quantity: ONE, unit: "mbf" } });
    expect(amount(seen, 6, store("near"), { ...lumber("2x6", "10 ft"), id: "sheet" })).toBe("24.00");
  });

  test("takes the standing discount of the day off", () => {
    const discount = { category: null, percent: decimal(10), from: null, until: null };
    expect(amount(observation("20.00"), 7, store("near", { discounts: [discount] }))).toBe("126.00");
  });

  test("takes no discount off what was copied from another receipt", () => {
    const discount = { category: null, percent: decimal(10), from: null, until: null };
    expect(amount(observation("20.00", { terms: "paid" }), 7, store("near", { discounts: [discount] }))).toBe(
      "140.00",
    );
  });

  test("takes no discount that has ended", () => {
    const ended = { category: null, percent: decimal(10), from: null, until: day("2026-03-01") };
    expect(amount(observation("20.00"), 7, store("near", { discounts: [ended] }))).toBe("140.00");
  });

  test("copies tax, region and fees as they stand", () => {
    const seen = observation("20.00", {
      taxIncluded: true,
      taxRegion: "CA-NS",
      fees: [fee("delivery", { amount: decimal(85), basis: "order" })],
    });
    expect(copiedReceipt(seen, SHEET, store("near"), buying(1))).toMatchObject({
      taxIncluded: true,
      taxRegion: "CA-NS",
      fees: [{ name: "delivery", basis: "order" }],
    });
  });

  test("is none where nothing was priced", () => {
    expect(amount(observation(null), 1)).toBe(null);
  });

  test("is none where the unit cannot be read", () => {
    expect(amount(observation("5", { per: { quantity: ONE, unit: "kilogram" } }), 1)).toBe(null);
  });
});
