import { describe, expect, test } from "vitest";
import { type Decimal, decimal, roundHalfUp } from "../../../lib/decimal.ts";
import { money } from "../../../lib/money/money.ts";
import type { Observation } from "../../../lib/prices/observation.ts";
import { priceSeries, type SeriesTerms } from "../../../lib/prices/series.ts";
import { day, observation, rate, SHEET, store, valuation } from "../../support/price-example.ts";

const cents = (value: Decimal) => roundHalfUp(value, 2).toFixed(2);
const there = valuation({
  stores: [
    store("near", { taxRegion: "CA-NS" }),
    store("across", { taxRegion: "US-ME", currency: "USD" }),
    store("tin", { currency: "EUR" }),
  ],
  rates: [
    rate("2025-03-01", "USD", "CAD", "1.35"),
    rate("2026-03-01", "USD", "CAD", "1.37"),
    rate("2025-03-01", "EUR", "CAD", "1.50"),
  ],
});

const first = observation("40.00", { seenOn: day("2025-03-01") });
const second = observation("40.00", { seenOn: day("2025-05-01"), terms: "special" });
const abroad = observation("20.00", {
  storeId: "across",
  currency: "USD",
  seenOn: day("2025-03-02"),
  exemptFrom: ["Sales tax"],
});
const gone = observation(null, { seenOn: day("2025-06-01") });
const all = [gone, second, abroad, first];

function series(some: readonly Observation[], terms: Partial<SeriesTerms> = {}): string[] {
  const asked: SeriesTerms = { from: null, until: null, unit: "sheet", currency: "home", ...terms };
  return priceSeries(some, SHEET, there, asked).map((point) =>
    point.known ? `${cents(point.price.amount)} ${point.price.currency}` : point.reason,
  );
}

describe("a series", () => {
  test("has every sighting, by day, each valued on its own day", () => {
    expect(series(all)).toEqual(["46.00 CAD", "27.00 CAD", "45.60 CAD", "no-amount"]);
  });

  test("never moves when a later rate is published", () => {
    const [, before] = series(all);
    const later = {
      ...there,
      rates: { ...there.rates, rates: [...there.rates.rates, rate("2025-04-01", "USD", "CAD", "2")] },
    };
    const point = priceSeries([abroad], SHEET, later, {
      from: null,
      until: null,
      unit: "sheet",
      currency: "home",
    })[0];
    expect(point?.known && `${cents(point.price.amount)} CAD`).toBe(before);
  });

  test("as seen is in the currency of each tag", () => {
    expect(series(all, { currency: "as-seen" })).toEqual([
      "46.00 CAD",
      "20.00 USD",
      "45.60 CAD",
      "no-amount",
    ]);
  });

  test("in another currency goes through the rate of each point's day", () => {
    expect(series([first, abroad], { currency: "EUR" })).toEqual(["30.67 EUR", "18.00 EUR"]);
  });

  test("without a rate on its day says so, the others stand", () => {
    expect(series([first, second], { currency: "USD" })).toEqual(["34.07 USD", "rate-unknown"]);
  });

  test("per measure is the price of one of it", () => {
    expect(series([second], { unit: "square-foot" })).toEqual(["1.43 CAD"]);
    expect(series([second], { unit: "msf" })).toEqual(["1425.00 CAD"]);
  });

  test("in a measure the material is not known in has no price", () => {
    expect(series([second], { unit: "kilogram" })).toEqual(["unit-not-convertible"]);
  });

  test("before tax leaves the tax out", () => {
    expect(series([first, second], { basis: "before-tax" })).toEqual(["40.00 CAD", "40.00 CAD"]);
  });

  test("between two days counts both", () => {
    expect(series(all, { from: day("2025-03-02"), until: day("2025-05-01") })).toEqual([
      "27.00 CAD",
      "45.60 CAD",
    ]);
  });

  test("of one material holds no other's sightings", () => {
    expect(series([{ ...first, materialId: "another" }])).toEqual([]);
  });

  test("marks what stands before import charges", () => {
    const asked = { from: null, until: null, unit: "sheet", currency: "home" } as const;
    const marks = priceSeries([first, abroad], SHEET, there, asked).map(
      ({ beforeImportCharges }) => beforeImportCharges,
    );
    expect(marks).toEqual([false, true]);
  });

  test("keeps terms and minimum of each point", () => {
    const asked = { from: null, until: null, unit: "sheet", currency: "home" } as const;
    const bulk = {
      ...second,
      amount: money(30, "CAD"),
      terms: "quantity-break",
      minQuantity: decimal(10),
    } as const;
    const [point] = priceSeries([bulk], SHEET, there, asked);
    expect([point?.terms, point?.minQuantity?.toString()]).toEqual(["quantity-break", "10"]);
  });
});
