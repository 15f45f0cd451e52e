import { expect, test } from "vitest";
import { exposure } from "../../../lib/exposure/exposure.ts";
import { money } from "../../../lib/money/money.ts";
import { allInPrice } from "../../../lib/prices/all-in-price.ts";
import { againstOthers } from "../../../lib/show/aisle-comparison.ts";
import { aisleFacts } from "../../../lib/show/aisle-facts-of.ts";
import { aislePrice, isBeforeImportCharges, type TypedTag } from "../../../lib/show/aisle-price.ts";
import { daysAgo, observation, rate, SHEET, store, TODAY, valuation } from "../../support/price-example.ts";
import { factsOf, lotOf, needOf, revisionOf } from "../../support/stock-example.ts";

const stores = [
  store("near", { taxRegion: "CA-NS" }),
  store("far", { taxRegion: "CA-NS", pricesIncludeTax: true }),
  store("across", { taxRegion: "US-ME", currency: "USD" }),
  store("old", { archivedOn: daysAgo(9) }),
];
const facts = factsOf({
  valuation: valuation({ stores, rates: [rate("2026-03-02", "USD", "CAD", "1.40")] }),
  requirements: [needOf("a", revisionOf(10))],
  lots: [lotOf(4, 100)],
  observations: [
    observation("25.00", { storeId: "near", seenOn: daysAgo(6) }),
    observation("28.00", { storeId: "far", seenOn: daysAgo(2) }),
  ],
});
const aisle = aisleFacts(facts, exposure(TODAY, facts));
const [sheet] = aisle.materials;

const tag = (given: Partial<TypedTag>): TypedTag => ({
  amount: "27.00",
  storeId: "near",
  materialId: "sheet",
  perQuantity: "1",
  unit: "sheet",
  taxIncluded: false,
  ...given,
});

function allIn(given: Partial<TypedTag>): string {
  const price = aislePrice(aisle, tag(given));
  return price?.known ? price.price.amount.toFixed(4) : `${price?.reason}`;
}

test("what crosses to the browser is text and numbers", () => {
  expect(JSON.parse(JSON.stringify(aisle))).toEqual(aisle);
});

test("a tag is read all in by the same rule as a stored price", () => {
  const seen = observation("27.00", { storeId: "near" });
  const stored = allInPrice(seen, SHEET, facts.valuation, TODAY);
  // 27.00 + 14 %
  expect(allIn({})).toBe("30.7800");
  expect(stored.known && stored.price.amount.toFixed(4)).toBe("30.7800");
});

test("three for 20.00, tax included, and a tag across the border are read too", () => {
  // 20.00 / 3; 20.00 USD x 1.055 x 1.40
  expect(allIn({ amount: "20.00", perQuantity: "3", taxIncluded: true })).toBe("6.6667");
  expect(allIn({ amount: "20.00", storeId: "across" })).toBe("29.5400");
});

test("a price across the border stands before import charges until they are confirmed", () => {
  expect([isBeforeImportCharges(aisle, "across"), isBeforeImportCharges(aisle, "near")]).toEqual([
    true,
    false,
  ]);
});

test("nothing is said of a tag without a quantity, or at a store that is not known", () => {
  expect([aislePrice(aisle, tag({ perQuantity: "0" })), aislePrice(aisle, tag({ storeId: "old" }))]).toEqual([
    null,
    null,
  ]);
});

test("what is known of a material stands with it: its need, best offers, going price and what was last paid", () => {
  expect(sheet).toMatchObject({
    open: "10",
    lastSeen: daysAgo(2),
    // 25.00 and 28.00, both + 14 %
    best: [
      { storeId: "near", each: "28.5" },
      { storeId: "far", each: "31.92" },
    ],
    // middle of 28.50 and 31.92
    going: { each: "30.21", stores: 2 },
    // 100.00 + 14 %, / 4
    paid: { each: "28.5", project: null },
  });
});

test("an archived store is not offered", () => {
  expect(aisle.stores.map(({ id }) => id)).toEqual(["near", "far", "across"]);
});

test("a price is compared with the cheapest of the other stores, not with its own", () => {
  if (sheet === undefined) throw new Error("the sheet is missing");
  const at = (amount: string, storeId: string) =>
    againstOthers(money(amount, "CAD"), sheet, storeId).elsewhere;
  expect(at("30.78", "near")).toEqual({ storeId: "far", side: "under", by: "1.14" });
  expect(at("28.50", "far")).toEqual({ storeId: "near", side: "same", by: "0" });
  expect(at("29.00", "across")).toEqual({ storeId: "near", side: "over", by: "0.5" });
});
