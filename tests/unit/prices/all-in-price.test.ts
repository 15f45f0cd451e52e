import { describe, expect, test } from "vitest";
import { type LocalDate, plusDays } from "../../../lib/calendar/local-date.ts";
import { type Decimal, decimal, roundHalfUp } from "../../../lib/decimal.ts";
import type { Material } from "../../../lib/materials/material.ts";
import { allInPrice, valuedAsSeen } from "../../../lib/prices/all-in-price.ts";
import type { Observation } from "../../../lib/prices/observation.ts";
import type { Valuation } from "../../../lib/prices/valuation.ts";
import {
  day,
  daysAgo,
  observation,
  rate,
  region,
  SHEET,
  store,
  TODAY,
  valuation,
} from "../../support/price-example.ts";
import { lumber, someMaterial } from "../../support/some-material.ts";

const cents = (value: Decimal) => roundHalfUp(value, 2).toFixed(2);

/** The all-in price to the cent, or why there is none. */
function price(
  seen: Observation,
  given: { valuation?: Valuation; material?: Material; on?: LocalDate } = {},
): string {
  const found = allInPrice(seen, given.material ?? SHEET, given.valuation ?? valuation(), given.on ?? TODAY);
  return found.known ? cents(found.price.amount) : found.reason;
}

const halifax = store("near", { taxRegion: "CA-NS" });
const across = store("across", { taxRegion: "US-ME", currency: "USD", importCharges: [] });

describe("a price on a tag", () => {
  test("without tax anywhere is the amount", () => {
    expect(price(observation("41.98"))).toBe("41.98");
  });

  test("for three pieces is a third of it each, unrounded", () => {
    const seen = observation("20.00", { per: { quantity: decimal(3), unit: "sheet" } });
    const found = allInPrice(seen, SHEET, valuation(), TODAY);
    expect(found.known && cents(found.price.amount.times(38))).toBe("253.33");
  });

  test("per thousand board feet and per piece of the same board agree to the cent", () => {
    const board = { ...lumber("2x6", "10 ft"), id: "sheet" };
    const byPiece = observation("4.00", { per: { quantity: decimal(1), unit: "piece" } });
    const byThousand = observation("400.00", { per: { quantity: decimal(1), unit: "mbf" } });
    expect([price(byPiece, { material: board }), price(byThousand, { material: board })]).toEqual([
      "4.00",
      "4.00",
    ]);
  });

  test("per square foot is read per sheet by its face", () => {
    expect(price(observation("1.33", { per: { quantity: decimal(1), unit: "square-foot" } }))).toBe("42.56");
  });

  test("in a unit the material cannot be read in has no price", () => {
    const door = someMaterial("each", {}, { id: "sheet" });
    const seen = observation("1.33", { per: { quantity: decimal(1), unit: "square-foot" } });
    expect(price(seen, { material: door })).toBe("unit-not-convertible");
  });

  test("of none left is no price", () => {
    expect(price(observation(null))).toBe("no-amount");
  });

  test("at a store nobody knows is no price", () => {
    expect(price(observation("41.98", { storeId: "gone" }))).toBe("store-unknown");
  });
});

describe("tax", () => {
  const ns = valuation({ stores: [halifax, store("far")] });

  test("that does not come back is cost", () => {
    expect(price(observation("40.00"), { valuation: ns })).toBe("45.60");
  });

  test("that comes back to a registered buyer is not cost, but it is cash", () => {
    const registered = { ...ns, registrations: [{ tax: "HST", from: null, until: null }] };
    const found = allInPrice(observation("40.00"), SHEET, registered, TODAY);
    expect(found.known && [cents(found.price.amount), cents(found.cash.amount)]).toEqual(["40.00", "45.60"]);
  });

  test("comes back only on the days of the registration", () => {
    const registered = { ...ns, registrations: [{ tax: "HST", from: daysAgo(10), until: null }] };
    expect(price(observation("40.00"), { valuation: registered, on: daysAgo(11) })).toBe("45.60");
    expect(price(observation("40.00"), { valuation: registered, on: daysAgo(10) })).toBe("40.00");
  });

  test("already in the amount is not added again", () => {
    expect(price(observation("45.60", { taxIncluded: true }), { valuation: ns })).toBe("45.60");
  });

  test("in the amount is that of the day seen, what is paid is that of the day asked for", () => {
    const seen = observation("46.00", { taxIncluded: true, seenOn: day("2025-03-31") });
    expect(price(seen, { valuation: ns, on: day("2025-03-31") })).toBe("46.00");
    expect(price(seen, { valuation: ns, on: day("2025-04-01") })).toBe("45.60");
  });

  test("of what is delivered is that of the delivery address", () => {
    expect(price(observation("40.00", { storeId: "far", taxRegion: "CA-NS" }), { valuation: ns })).toBe(
      "45.60",
    );
  });

  test("that does not apply to the material is not added", () => {
    const exempt = { ...SHEET, exemptFrom: ["HST"] };
    expect(price(observation("40.00"), { valuation: ns, material: exempt })).toBe("40.00");
  });

  test("that did not apply on the tag is not added", () => {
    expect(price(observation("40.00", { exemptFrom: ["HST"] }), { valuation: ns })).toBe("40.00");
  });

  test("before the region's components are complete is not known, and neither is the price", () => {
    const late = region("CA-YY", [], { completeFrom: daysAgo(5) });
    const there = valuation({ stores: [store("near", { taxRegion: "CA-YY" })], regions: [late] });
    expect(price(observation("40.00"), { valuation: there, on: daysAgo(6) })).toBe("tax-unknown");
    expect(price(observation("40.00"), { valuation: there, on: daysAgo(5) })).toBe("40.00");
  });

  test("inside an amount seen before the tax was known cannot be taken out", () => {
    const late = region("CA-YY", [], { completeFrom: daysAgo(5) });
    const there = valuation({ stores: [store("near", { taxRegion: "CA-YY" })], regions: [late] });
    const seen = { seenOn: daysAgo(6), taxIncluded: true };
    expect(price(observation("40.00", seen), { valuation: there })).toBe("tax-unknown");
    expect(price(observation("40.00", { ...seen, taxIncluded: false }), { valuation: there })).toBe("40.00");
  });

  test("of a region nobody defined is not guessed", () => {
    const there = valuation({ stores: [store("near", { taxRegion: "CA-QQ" })] });
    expect(price(observation("40.00"), { valuation: there })).toBe("region-unknown");
  });

  test("before any of it is what an order's free delivery is measured by", () => {
    const found = allInPrice(observation("45.60", { taxIncluded: true }), SHEET, ns, TODAY);
    expect(found.known && cents(found.beforeTax.amount)).toBe("40.00");
  });
});

describe("another currency", () => {
  const at = (...rates: ReturnType<typeof rate>[]) => valuation({ stores: [across], rates });
  const seen = observation("12.10", {
    storeId: "across",
    currency: "USD",
    seenOn: daysAgo(40),
    exemptFrom: ["Sales tax"],
  });
  const both = at(rate(daysAgo(40), "USD", "CAD", "1.35"), rate(TODAY, "USD", "CAD", "1.37"));

  test("costs what the rate of the day asked for makes of it", () => {
    expect(price(seen, { valuation: both })).toBe("16.58");
  });

  test("was worth what the rate of its own day made of it, for ever", () => {
    const was = valuedAsSeen(seen, SHEET, both);
    expect(was.known && cents(was.price.amount)).toBe("16.34");
  });

  test("without a rate at most seven days old has no price on a past day", () => {
    const old = at(rate(daysAgo(50), "USD", "CAD", "1.35"));
    expect(price(seen, { valuation: old, on: daysAgo(43) })).toBe("16.34");
    expect(price(seen, { valuation: old, on: daysAgo(42) })).toBe("rate-unknown");
  });

  test("may take a rate up to 45 days old for today, marked", () => {
    const found = allInPrice(seen, SHEET, at(rate(daysAgo(45), "USD", "CAD", "1.35")), TODAY);
    expect(found.known && found.staleRate).toBe(true);
    expect(price(seen, { valuation: at(rate(daysAgo(46), "USD", "CAD", "1.35")) })).toBe("rate-unknown");
  });

  test("a fresh rate is not marked", () => {
    const found = allInPrice(seen, SHEET, both, TODAY);
    expect(found.known && found.staleRate).toBe(false);
  });

  test("pays the tax of its own place", () => {
    const taxed = { ...seen, exemptFrom: [] };
    expect(price(taxed, { valuation: both })).toBe("17.49");
  });
});

test("a day ahead of today counts as today: its tax and its rate", () => {
  const seen = observation("10.00", { seenOn: plusDays(TODAY, 1), storeId: "across", currency: "USD" });
  const there = valuation({ stores: [across], rates: [rate(TODAY, "USD", "CAD", "1.40")] });
  const was = valuedAsSeen({ ...seen, exemptFrom: ["Sales tax"] }, SHEET, there);
  expect(was.known && cents(was.price.amount)).toBe("14.00");
});
