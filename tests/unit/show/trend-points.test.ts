import { expect, test } from "vitest";
import { type TrendAsked, trendPoints, usualPeriod } from "../../../lib/show/trend-points.ts";
import { daysAgo, observation, rate, SHEET, store, TODAY, valuation } from "../../support/price-example.ts";

const asked: TrendAsked = { day: TODAY, days: 365, unit: "sheet", currency: "home" };
const across = store("across", { currency: "USD", taxRegion: "US-ME", importCharges: [] });
const withRate = valuation({
  stores: [store("near"), across],
  rates: [rate("2026-02-20", "USD", "CAD", "1.35")],
});

function points(seen: Parameters<typeof trendPoints>[0]["observations"], given: Partial<TrendAsked> = {}) {
  return trendPoints({ observations: seen, valuation: withRate }, SHEET, { ...asked, ...given }, "en-CA");
}

test("only prices of the period are drawn, the oldest first", () => {
  const seen = [
    observation("30", { seenOn: daysAgo(10) }),
    observation("28", { seenOn: daysAgo(365) }),
    observation("20", { seenOn: daysAgo(366) }),
  ];
  expect(points(seen).points.map(({ price }) => price)).toEqual(["28.00", "30.00"]);
  expect(points(seen, { days: null }).points.map(({ price }) => price)).toEqual(["20.00", "28.00", "30.00"]);
});

test("a price across the border is worked into the home currency at the rate of the day it was seen", () => {
  const seen = [observation("20", { storeId: "across", currency: "USD", seenOn: daysAgo(8) })];
  // 20.00 x 1.055 sales tax x 1.35
  expect(points(seen).points[0]).toMatchObject({ price: "28.49", currency: "CAD" });
});

test("as on the tag it keeps its own currency", () => {
  const seen = [observation("20", { storeId: "across", currency: "USD", seenOn: daysAgo(8) })];
  expect(points(seen, { currency: "as-seen" }).points[0]).toMatchObject({ price: "21.10", currency: "USD" });
});

test("a sheet of 32 square feet at 32.00 is 1.00 a square foot", () => {
  expect(points([observation("32")], { unit: "square-foot" }).points[0]?.price).toBe("1.00");
});

test("a price without a rate of its day is counted as not drawn, with the reason", () => {
  const seen = [observation("20", { storeId: "across", currency: "USD", seenOn: daysAgo(100) })];
  expect(points(seen)).toEqual({ points: [], notDrawn: [{ reason: "rate-unknown", count: 1 }] });
});

test("none left has no price and is not missing from the chart", () => {
  expect(points([observation(null)])).toEqual({ points: [], notDrawn: [] });
});

test("shelf prices make the line, receipts a cross, everything else a square", () => {
  const seen = [
    observation("30"),
    observation("25", { terms: "special" }),
    observation("24", { terms: "quantity-break" }),
    observation("26", { terms: "paid" }),
  ];
  expect(points(seen).points.map(({ kind }) => kind)).toEqual(["shelf", "special", "special", "paid"]);
});

test("a year is shown when it has prices enough, else everything", () => {
  const many = Array.from({ length: 6 }, (_, index) => ({ seenOn: daysAgo(index * 20) }));
  expect(usualPeriod(many, TODAY)).toBe(365);
  expect(usualPeriod(many.slice(1), TODAY)).toBeNull();
});
