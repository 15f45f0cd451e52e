import { describe, expect, test } from "vitest";
import { type Decimal, decimal, ONE, roundHalfUp, ZERO } from "../../../lib/decimal.ts";
import { allInPrice } from "../../../lib/prices/all-in-price.ts";
import { cheapestCover } from "../../../lib/prices/cheapest-cover.ts";
import { isForeign, lacksImportCharges } from "../../../lib/prices/foreign-store.ts";
import { offersOn } from "../../../lib/prices/offers.ts";
import type { ImportCharge, Store } from "../../../lib/prices/store.ts";
import {
  daysAgo,
  observation,
  rate,
  region,
  SHEET,
  store,
  TODAY,
  valuation,
} from "../../support/price-example.ts";

const cents = (value: Decimal) => roundHalfUp(value, 2).toFixed(2);
const across = (given: Partial<Store> = {}) =>
  store("across", { taxRegion: "US-ME", currency: "USD", ...given });
const rates = [rate(TODAY, "USD", "CAD", "1.40")];

function charge(percent: string, given: Partial<ImportCharge> = {}): ImportCharge {
  return {
    name: "duty",
    percent: decimal(percent),
    perOrder: null,
    recoverable: false,
    from: null,
    until: null,
    ...given,
  };
}

const seen = (amount: string) => observation(amount, { storeId: "across", currency: "USD" });

function price(importCharges: readonly ImportCharge[] | null, registered = false) {
  const there = valuation({
    stores: [across({ importCharges })],
    rates,
    registrations: registered ? [{ tax: "HST", from: null, until: null }] : [],
  });
  const found = allInPrice(seen("100.00"), SHEET, there, TODAY);
  if (!found.known) throw new Error(found.reason);
  return found;
}

describe("a store is foreign", () => {
  test("when its region lies in another country than the workspace's", () => {
    expect(isForeign(across(), valuation())).toBe(true);
    expect(isForeign(store("near", { taxRegion: "CA-NB" }), valuation())).toBe(false);
  });

  test("not because it sells in another currency", () => {
    expect(isForeign(store("near", { taxRegion: "CA-NB", currency: "USD" }), valuation())).toBe(false);
  });

  test("by the country said of a region of the workspace's own", () => {
    const border = region("BORDER", [], { country: "US" });
    expect(isForeign(store("near", { taxRegion: "BORDER" }), valuation({ regions: [border] }))).toBe(true);
  });

  test("by its currency where no country is known", () => {
    const own = valuation({ regions: [region("OWN", [])] });
    expect(isForeign(store("near", { taxRegion: "OWN" }), own)).toBe(false);
    expect(isForeign(store("near", { taxRegion: "OWN", currency: "USD" }), own)).toBe(true);
  });
});

describe("before import charges are confirmed", () => {
  test("a foreign store's offers are marked", () => {
    expect(lacksImportCharges(across(), valuation())).toBe(true);
    expect(lacksImportCharges(store("near"), valuation())).toBe(false);
  });

  test("they are never the best offer, however cheap", () => {
    const stores = [across(), store("near")];
    const all = [seen("1.00"), observation("40.00")];
    const { offers } = offersOn(TODAY, all, SHEET, valuation({ stores, rates }));
    expect(offers.map(({ beforeImportCharges }) => beforeImportCharges)).toEqual([true, false]);
    const cover = cheapestCover(offers, decimal(10), { step: ONE, used: ZERO, currency: "CAD" });
    expect(cover.takes.map(({ offer }) => offer.storeId)).toEqual(["near"]);
  });

  test("with nothing else to be had the quantity stays uncovered", () => {
    const { offers } = offersOn(TODAY, [seen("1.00")], SHEET, valuation({ stores: [across()], rates }));
    const cover = cheapestCover(offers, decimal(10), { step: ONE, used: ZERO, currency: "CAD" });
    expect([cover.takes.length, cover.uncovered.toString()]).toEqual([0, "10"]);
  });

  test("none confirmed as none lifts the mark", () => {
    expect(lacksImportCharges(across({ importCharges: [] }), valuation())).toBe(false);
    expect(cents(price([]).price.amount)).toBe("147.70");
  });
});

describe("an import charge", () => {
  test("is a percentage of the price before foreign tax", () => {
    expect(cents(price([charge("10")]).price.amount)).toBe("161.70");
  });

  test("counts on its days, both ends included", () => {
    const until = (ago: number) => cents(price([charge("10", { until: daysAgo(ago) })]).price.amount);
    expect([until(0), until(1)]).toEqual(["161.70", "147.70"]);
  });

  test("of several each is added", () => {
    expect(cents(price([charge("10"), charge("5")]).price.amount)).toBe("168.70");
  });

  test("that comes back to a registered buyer is cash, not cost", () => {
    const { price: cost, cash } = price([charge("10", { recoverable: true })], true);
    expect([cents(cost.amount), cents(cash.amount)]).toEqual(["147.70", "161.70"]);
  });

  test("that never comes back is cost to a registered buyer too", () => {
    expect(cents(price([charge("10")], true).price.amount)).toBe("161.70");
  });

  test("that could come back is cost to a buyer who is not registered", () => {
    expect(cents(price([charge("10", { recoverable: true })]).price.amount)).toBe("161.70");
  });

  test("per order stands beside the unit price, in home currency", () => {
    const [perOrder] = price([charge("0", { name: "broker", perOrder: decimal(20) })]).orderCharges;
    expect(perOrder && [perOrder.name, cents(perOrder.amount.amount), perOrder.freeFrom]).toEqual([
      "broker",
      "28.00",
      null,
    ]);
  });

  test("entered at a store at home adds nothing", () => {
    const here = valuation({ stores: [store("near", { importCharges: [charge("10")] })] });
    const found = allInPrice(observation("100.00"), SHEET, here, TODAY);
    expect(found.known && cents(found.price.amount)).toBe("100.00");
  });
});
