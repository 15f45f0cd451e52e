import { expect, test } from "vitest";
import { money } from "../../../lib/money/money.ts";
import { bestForFewest, bestForOne, offerRow } from "../../../lib/show/offer-row.ts";
import { day, offerAt, valuation } from "../../support/price-example.ts";

const best = (...offers: Parameters<typeof bestForOne>[0]) =>
  bestForOne(offers)?.price.amount.toFixed() ?? null;

test("the best offer for one is the cheapest that needs no larger quantity", () => {
  expect(best(offerAt("28", { min: 50 }), offerAt("31"), offerAt("33"))).toBe("31");
});

test("a stale offer is the best only where nothing is fresh", () => {
  const stale = offerAt("20", {}, { stale: true });
  expect(best(stale, offerAt("31"))).toBe("31");
  expect(best(stale)).toBe("20");
});

test("where none is for one, the best is the cheapest of those for the fewest", () => {
  const fewest = (...offers: Parameters<typeof bestForFewest>[0]) =>
    bestForFewest(offers)?.price.amount.toFixed() ?? null;
  const packs = [
    offerAt("5", { min: 10 }),
    offerAt("7", { min: 3, pack: 3 }),
    offerAt("8", { min: 3, pack: 3 }),
  ];
  expect([best(...packs), fewest(...packs)]).toEqual([null, "7"]);
  expect(fewest(offerAt("1", { min: 3 }, { stale: true }), ...packs)).toBe("7");
  expect(fewest(offerAt("1", { min: 2 }, { terms: "used" }))).toBeNull();
});

test("used ones, and offers before import charges, are never the best", () => {
  expect(
    best(offerAt("5", {}, { terms: "used" }), offerAt("6", {}, { beforeImportCharges: true })),
  ).toBeNull();
});

test("an offer without limits says none", () => {
  expect(offerRow(offerAt("31"), valuation(), "en-CA")).toMatchObject({
    storeName: "near",
    price: "31.00",
    minimum: null,
    maximum: null,
    packSize: null,
    lapses: null,
    charges: [],
  });
});

test("limits, the last day and charges per order are said", () => {
  const offer = offerAt(
    "31",
    { min: 10, max: 1200, pack: 5 },
    {
      lapsesOn: day("2026-03-14"),
      orderCharges: [{ name: "Delivery", amount: money("65", "CAD"), freeFrom: money("1000", "CAD") }],
    },
  );
  expect(offerRow(offer, valuation(), "en-CA")).toMatchObject({
    minimum: { text: "10", exact: "10" },
    maximum: { text: "1,200", exact: "1200" },
    packSize: { text: "5", exact: "5" },
    lapses: "Mar 14, 2026",
    charges: [{ name: "Delivery", amount: "65.00", freeFrom: "1,000.00" }],
  });
});
