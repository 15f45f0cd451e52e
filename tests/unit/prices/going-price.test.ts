import { describe, expect, test } from "vitest";
import { type LocalDate, plusDays } from "../../../lib/calendar/local-date.ts";
import { type Decimal, decimal, roundHalfUp } from "../../../lib/decimal.ts";
import type { Material } from "../../../lib/materials/material.ts";
import { goingPriceOn } from "../../../lib/prices/going-price.ts";
import { type Observation, TERMS } from "../../../lib/prices/observation.ts";
import type { Valuation } from "../../../lib/prices/valuation.ts";
import {
  day,
  daysAgo,
  fee,
  observation,
  rate,
  SHEET,
  store,
  TODAY,
  valuation,
} from "../../support/price-example.ts";

const STORES = ["a", "b", "c", "d", "e", "f", "g"].map((id) => store(id));
const plain = valuation({ stores: STORES });

type Given = { on?: LocalDate; knownOn?: LocalDate; material?: Material; valuation?: Valuation };
const digits = (value: Decimal) => roundHalfUp(value, 4).toString();

/** "price kind stores", or "not known". */
function going(all: readonly Observation[], given: Given = {}): string {
  const { on = TODAY, knownOn = on, material = SHEET } = given;
  const found = goingPriceOn(on, all, material, given.valuation ?? plain, knownOn);
  return found.known ? `${digits(found.price.amount)} ${found.kind} ${found.stores}` : "not known";
}

function at(storeId: string, amount: string, ago = 0, given: Partial<Observation> = {}): Observation {
  return observation(amount, { storeId, seenOn: daysAgo(ago), ...given });
}

describe("the going price", () => {
  test("of one store is its price", () => {
    expect(going([at("a", "20")])).toBe("20 fresh 1");
  });

  test("is the median over stores, whatever the outlier", () => {
    const prices = ["21", "21", "22", "21", "9.99", "22", "21"];
    expect(going(prices.map((price, index) => at(STORES[index]?.id ?? "", price)))).toBe("21 fresh 7");
  });

  test("of an even number of stores is the mean of the middle two, unrounded", () => {
    expect(going([at("a", "10"), at("b", "20.01"), at("c", "20.02"), at("d", "90")])).toBe("20.015 fresh 4");
  });

  test("takes each store's newest price only: many sightings of one store weigh no more", () => {
    expect(going([at("a", "10", 3), at("a", "11", 2), at("a", "12", 1), at("b", "30")])).toBe("21 fresh 2");
  });

  test("takes a store's price for the smallest quantity", () => {
    const bulk = at("a", "15", 0, { minQuantity: decimal(20) });
    expect(going([at("a", "20", 5), bulk])).toBe("20 fresh 1");
  });

  test.each(TERMS.filter((terms) => terms !== "shelf"))("is never a %s price", (terms) => {
    expect(going([at("a", "20", 0, { terms, until: terms === "quote" ? TODAY : null })])).toBe("not known");
  });

  test("is all in: tax and unit fees, not charges per order", () => {
    const taxed = valuation({ stores: [store("a", { taxRegion: "CA-NS" })] });
    const fees = [
      fee("eco", { amount: decimal("0.50") }),
      fee("delivery", { amount: decimal(85), basis: "order" }),
    ];
    expect(going([at("a", "40", 0, { fees })], { valuation: taxed })).toBe("46.1 fresh 1");
  });

  test("is what an older price would cost on the day: the day's tax", () => {
    const taxed = valuation({ stores: [store("a", { taxRegion: "CA-NS" })] });
    const seen = observation("46.00", { storeId: "a", seenOn: day("2025-03-20"), taxIncluded: true });
    expect(going([seen], { valuation: taxed, on: day("2025-03-31") })).toBe("46 fresh 1");
    expect(going([seen], { valuation: taxed, on: day("2025-04-01") })).toBe("45.6 fresh 1");
  });

  test("leaves out a price that cannot be valued, and counts the others", () => {
    const abroad = observation("20", { storeId: "b", currency: "USD" });
    expect(going([at("a", "20"), abroad])).toBe("20 fresh 1");
    expect(going([abroad])).toBe("not known");
  });

  test("counts a foreign store once its import charges are confirmed", () => {
    const across = (importCharges: [] | null) =>
      valuation({
        stores: [store("a", { taxRegion: "US-ME", currency: "USD", importCharges })],
        rates: [rate(TODAY, "USD", "CAD", "2")],
      });
    const seen = observation("20", { storeId: "a", currency: "USD", exemptFrom: ["Sales tax"] });
    expect(going([seen], { valuation: across(null) })).toBe("not known");
    expect(going([seen], { valuation: across([]) })).toBe("40 fresh 1");
  });

  test("does not count a store from the day it was archived on", () => {
    const closed = valuation({ stores: [store("a", { archivedOn: TODAY })] });
    expect(going([at("a", "20", 1)], { valuation: closed })).toBe("not known");
    expect(going([at("a", "20", 1)], { valuation: closed, on: daysAgo(1) })).toBe("20 fresh 1");
  });

  test("does not count a price announced for a later day", () => {
    expect(going([at("a", "20", 9), at("a", "25", 2, { from: plusDays(TODAY, 3) })])).toBe("20 fresh 1");
  });
});

describe("age", () => {
  test("within the recheck interval is fresh", () => {
    expect(going([at("a", "20", 30)])).toBe("20 fresh 1");
  });

  test("of one fresh store leaves the older ones out", () => {
    expect(going([at("a", "20", 30), at("b", "90", 31)])).toBe("20 fresh 1");
  });

  test("up to three recheck intervals is used where none is fresh, marked", () => {
    expect(going([at("a", "20", 31), at("b", "30", 90), at("c", "90", 91)])).toBe("25 older 2");
  });

  test("past three recheck intervals is not known", () => {
    expect(going([at("a", "20", 91)])).toBe("not known");
  });

  test("goes by the material's own recheck interval", () => {
    expect(going([at("a", "20", 31)], { material: { ...SHEET, recheckDays: 10 } })).toBe("not known");
  });

  test("counts for nothing while a stated end has not come", () => {
    expect(going([at("a", "20", 80, { until: TODAY })])).toBe("20 fresh 1");
  });

  test("past a stated end the price is no longer fresh, however new", () => {
    expect(going([at("a", "20", 5, { until: daysAgo(1) })])).toBe("20 older 1");
  });

  test("past a year is no price, neither by a long interval nor by a stated end", () => {
    const patient = { ...SHEET, recheckDays: 400 };
    expect(going([at("a", "20", 365)], { material: patient })).toBe("20 fresh 1");
    expect(going([at("a", "20", 366)], { material: patient })).toBe("not known");
    expect(going([at("a", "20", 366, { until: TODAY })])).toBe("not known");
  });
});

describe("of a past day", () => {
  const past = { on: daysAgo(100), knownOn: TODAY };

  test("is the same as it was on that day while a price was fresh", () => {
    expect(going([at("a", "20", 110), at("a", "40", 90)], past)).toBe("20 fresh 1");
  });

  test("between two shelf prices of a store is linear by days, marked", () => {
    expect(going([at("a", "20", 140), at("a", "40", 90)], past)).toBe("36 interpolated 1");
  });

  test("lies between prices at most three recheck intervals apart", () => {
    expect(going([at("a", "20", 150), at("a", "40", 60)], past)).toBe("31.1111 interpolated 1");
    expect(going([at("a", "20", 151), at("a", "40", 60)], past)).toBe("20 older 1");
    expect(going([at("a", "20", 195), at("a", "40", 60)], past)).toBe("not known");
  });

  test("before the first price of a store is not known by what came after", () => {
    expect(going([at("a", "40", 90)], past)).toBe("not known");
  });

  test("is the median over the stores that have a price on either side", () => {
    const all = [
      at("a", "20", 140),
      at("a", "40", 90),
      at("b", "30", 140),
      at("b", "40", 60),
      at("c", "99", 60),
    ];
    expect(going(all, past)).toBe("35.5 interpolated 2");
  });

  test("lies between prices of one store, never of two", () => {
    expect(going([at("a", "20", 140), at("b", "40", 90)], past)).toBe("20 older 1");
  });

  test("lies between shelf prices, whatever specials stand between", () => {
    const special = at("a", "5", 95, { terms: "special" });
    expect(going([at("a", "20", 140), special, at("a", "40", 90)], past)).toBe("36 interpolated 1");
  });

  test("looked at from that day knows nothing of what was seen after", () => {
    const all = [at("a", "20", 140), at("a", "40", 90)];
    expect(going(all, { on: daysAgo(100), knownOn: daysAgo(100) })).toBe("20 older 1");
    expect(going(all, { on: daysAgo(100), knownOn: daysAgo(91) })).toBe("20 older 1");
    expect(going(all, { on: daysAgo(100), knownOn: daysAgo(90) })).toBe("36 interpolated 1");
  });
});
