import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import type { IndexValue } from "../../../lib/indices/index-value.ts";
import { seriesToTake } from "../../../lib/indices/series-to-take.ts";
import { priceBesideIndex } from "../../../lib/show/price-beside-index.ts";
import { day, daysAgo, observation, SHEET, TODAY, valuation } from "../../support/price-example.ts";

function published(month: string, value: string, on: string): IndexValue {
  return { month: day(month), publishedOn: day(on), value: decimal(value), preliminary: null };
}
const THEN = observation("40.00", { seenOn: daysAgo(365) });
const NOW = observation("46.00", { seenOn: TODAY });
const facts = (observations = [THEN, NOW]) => ({ observations, material: SHEET, valuation: valuation() });
const MARCH = published("2025-03-01", "120", "2025-04-10");
const JANUARY = published("2026-01-01", "126", "2026-02-12");

describe("a price beside its index", () => {
  // Derived: 40.00 x 126 / 120 = 42.00; 126 is 5 % and 6 points over 120; 46 is 15 % over 40, and 1.15 / 1.05 is 1.0952.
  test("is the price of a year ago times the index of the newest month over that of its own", () => {
    expect(priceBesideIndex([MARCH, JANUARY], TODAY, facts(), "en-CA")).toMatchObject({
      before: "40.00",
      real: "42.00",
      now: "46.00",
      thenMonth: "Mar 2025",
      nowMonth: "Jan 2026",
      indexChange: "+5.00%",
      indexPoints: "+6.00",
      change: "+15.00%",
      changeReal: "+9.52%",
    });
  });

  test("never uses what was published after the day", () => {
    const later = published("2026-01-01", "252", "2026-03-03");
    const february = published("2026-02-01", "300", "2026-03-12");
    const values = [MARCH, JANUARY, later, february];
    expect(priceBesideIndex(values, TODAY, facts(), "en-CA")?.real).toBe("42.00");
  });

  test("is not known without the price's own month, without any month, or without one of the prices", () => {
    const april = published("2025-04-01", "120", "2025-05-10");
    expect(priceBesideIndex([april, JANUARY], TODAY, facts(), "en-CA")).toBeNull();
    expect(priceBesideIndex([], TODAY, facts(), "en-CA")).toBeNull();
    expect(priceBesideIndex([MARCH, JANUARY], TODAY, facts([NOW]), "en-CA")).toBeNull();
    expect(priceBesideIndex([MARCH, JANUARY], TODAY, facts([THEN]), "en-CA")).toBeNull();
  });
});

describe("the series to take from a file", () => {
  test.each([
    [["WPU081"], null, "WPU081"],
    [["WPU081", "WPU083"], null, null],
    [["WPU081", "WPU083"], "WPU083", "WPU083"],
    [["value"], "WPU083", "value"],
    [["WPU081"], "WPU083", null],
    [[], "WPU083", null],
  ])("of %j, wanted %j, is %j", (series, wanted, taken) => {
    expect(seriesToTake(series, wanted)).toBe(taken);
  });
});
