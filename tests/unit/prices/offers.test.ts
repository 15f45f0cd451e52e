import { describe, expect, test } from "vitest";
import { plusDays } from "../../../lib/calendar/local-date.ts";
import { decimal } from "../../../lib/decimal.ts";
import type { Material } from "../../../lib/materials/material.ts";
import type { Observation } from "../../../lib/prices/observation.ts";
import { offersOn } from "../../../lib/prices/offers.ts";
import { daysAgo, observation, SHEET, store, TODAY, valuation } from "../../support/price-example.ts";

function offers(all: readonly Observation[], material: Material = SHEET, given = valuation()) {
  return offersOn(TODAY, all, material, given).offers;
}
const seen = (amount: string, ago: number, given: Partial<Observation> = {}) =>
  observation(amount, { seenOn: daysAgo(ago), ...given });

describe("stale", () => {
  const stale = (one: Observation, material = SHEET) => offers([one], material)[0]?.stale;

  test("is older than the recheck interval, the last day of it is not", () => {
    expect([stale(seen("20", 30)), stale(seen("20", 31))]).toEqual([false, true]);
  });

  test("goes by the material's own interval where it has one", () => {
    expect(stale(seen("20", 11), { ...SHEET, recheckDays: 10 })).toBe(true);
    expect(stale(seen("20", 60), { ...SHEET, recheckDays: 90 })).toBe(false);
  });

  test("is nothing with a stated end while it holds", () => {
    expect(stale(seen("20", 200, { until: TODAY }))).toBe(false);
  });
});

describe("sizes", () => {
  const size = (given: Partial<Observation>, material = SHEET) => {
    const [offer] = offers([observation("20", given)], material);
    return (
      offer &&
      [offer.minQuantity, offer.packSize, offer.maxQuantity].map((value) => value?.toString() ?? null)
    );
  };

  test("not stated are single pieces without limit", () => {
    expect(size({})).toEqual(["1", "1", null]);
  });

  test("of a thousand board feet are single board feet", () => {
    const lumber: Material = { ...SHEET, purchaseUnit: "mbf" };
    expect(size({ per: { quantity: decimal(1), unit: "mbf" } }, lumber)).toEqual(["0.001", "0.001", null]);
  });

  test("are in whole packs: the smallest up, the largest down", () => {
    expect(size({ packSize: decimal(6), minQuantity: decimal(10), maxQuantity: decimal(20) })).toEqual([
      "12",
      "6",
      "18",
    ]);
  });

  test("that leave no whole pack are no offer", () => {
    const one = observation("20", { packSize: decimal(6), maxQuantity: decimal(5) });
    expect(offersOn(TODAY, [one], SHEET, valuation()).leftOut[0]?.reason).toBe("nothing-left-of-it");
  });
});

test("an offer says how far its store is, and when it lapses", () => {
  const there = valuation({ stores: [store("near", { distanceKm: decimal("12.5") })] });
  const [offer] = offers([observation("20", { terms: "special" })], SHEET, there);
  expect([offer?.distanceKm?.toString(), offer?.lapsesOn]).toEqual(["12.5", plusDays(TODAY, 7)]);
});

test("an open shelf price lapses on no day that is known", () => {
  expect(offers([observation("20")])[0]?.lapsesOn).toBeNull();
});

test("several offers of one store may be in force, the cheapest first", () => {
  const all = [
    observation("20"),
    observation("15", { terms: "special" }),
    observation("18", { terms: "quantity-break", minQuantity: decimal(10) }),
  ];
  expect(offers(all).map(({ terms }) => terms)).toEqual(["special", "quantity-break", "shelf"]);
});

test("a sighting of another material does not count", () => {
  expect(offers([observation("20", { materialId: "another" })])).toEqual([]);
});

test("an archived store has no offers from the day it was archived on", () => {
  const there = valuation({ stores: [store("near", { archivedOn: daysAgo(5) })] });
  const on = (ago: number) => offersOn(daysAgo(ago), [seen("20", 10)], SHEET, there);
  expect(on(6).offers.length).toBe(1);
  expect(on(5).leftOut[0]?.reason).toBe("archived-store");
});

test("a price that cannot be valued is left out with the reason, not counted as nothing", () => {
  const abroad = observation("20", { currency: "USD" });
  expect(offersOn(TODAY, [abroad], SHEET, valuation())).toEqual({
    offers: [],
    leftOut: [{ observationId: abroad.id, storeId: "near", reason: "rate-unknown" }],
  });
});

test("seen a day ahead counts as today", () => {
  expect(offers([observation("20", { seenOn: plusDays(TODAY, 1) })])[0]?.ageDays).toBe(0);
  expect(offers([observation("20", { seenOn: plusDays(TODAY, 2) })])).toEqual([]);
});

test("the order in which sightings stand changes nothing", () => {
  const all = [
    seen("20", 40),
    seen("22", 10),
    seen("15", 3, { terms: "special" }),
    seen("19", 20, { storeId: "far" }),
  ];
  expect(offersOn(TODAY, [...all].reverse(), SHEET, valuation())).toEqual(
    offersOn(TODAY, all, SHEET, valuation()),
  );
});
