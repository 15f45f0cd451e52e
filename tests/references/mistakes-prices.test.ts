import { describe, expect, test } from "vitest";
import type { LocalDate } from "../../lib/calendar/local-date.ts";
import { type Decimal, decimal, roundHalfUp } from "../../lib/decimal.ts";
import type { Material } from "../../lib/materials/material.ts";
import { substitutionRefusals } from "../../lib/materials/substitution.ts";
import { allInPrice, valuedAsSeen } from "../../lib/prices/all-in-price.ts";
import { goingPriceOn } from "../../lib/prices/going-price.ts";
import { percentBetween, pointsBetween } from "../../lib/prices/index-levels.ts";
import { lastChange } from "../../lib/prices/last-change.ts";
import type { Observation } from "../../lib/prices/observation.ts";
import { observationEntry } from "../../lib/prices/observation-entry.ts";
import { offersOn } from "../../lib/prices/offers.ts";
import { priceSeries } from "../../lib/prices/series.ts";
import type { Valuation } from "../../lib/prices/valuation.ts";
import { whatItMeans } from "../../lib/prices/what-it-means.ts";
import { parseAmount } from "../../lib/show/parse-amount.ts";
import { CANADA } from "../../lib/tax/regions-ca.ts";
import { fromCatalogue } from "../support/catalogue-material.ts";
import { figuresIn } from "../support/figures-in.ts";
import { day, daysAgo, observation, rate, SHEET, store, TODAY, valuation } from "../support/price-example.ts";
import { dimensions } from "../support/some-material.ts";

// Mistakes a plain price list makes, N1 to N25 of the trade facts, here those about prices. Each row: common practice of
// the trade for what is right, its arithmetic derived, exact to the printed digits unless the row says otherwise. Each test
// asks the product's own functions, and that the careless figure is nowhere in the answer.
const cents = (value: Decimal | undefined) => (value === undefined ? null : roundHalfUp(value, 2).toFixed(2));
const ontario = valuation({
  taxRegion: "CA-ON",
  stores: [store("near", { taxRegion: "CA-ON" }), store("far", { taxRegion: "CA-ON" })],
  regions: CANADA,
});
const terms = { from: null, until: null, unit: "sheet", currency: "home" } as const;
const noNeed = { open: decimal(0), openUsed: decimal(0), lastPaid: null };

function going(seen: readonly Observation[], given: Valuation = valuation(), on: LocalDate = TODAY) {
  const answer = goingPriceOn(on, seen, SHEET, given);
  return answer.known ? { ...answer, figure: cents(answer.price.amount) } : null;
}

describe("one basis", () => {
  // N1; tax rates: Canada Revenue Agency (read). 24.00 x 1.13 = 27.12; 26.50 / 1.13 = 23.45.
  test("N1 a price before tax is not held against one with tax in it", () => {
    const before = observation("24.00");
    const withTax = observation("26.50", { storeId: "far", taxIncluded: true });
    const { offers } = offersOn(TODAY, [before, withTax], SHEET, ontario);
    expect(offers.map(({ storeId, price }) => [storeId, cents(price.amount)])).toEqual([
      ["far", "26.50"],
      ["near", "27.12"],
    ]);
    expect(cents(offers[0]?.beforeTax.amount)).toBe("23.45");
    const means = whatItMeans(TODAY, before, [withTax], SHEET, ontario, noNeed);
    expect(cents(means.againstBestElsewhere?.difference.amount)).toBe("0.62");
    expect(figuresIn(means.againstBestElsewhere)).not.toContain("-2.50");
  });

  // N2. 42.56 / 32 = 1.33; 52.00 / 40 = 1.30.
  test("N2 sheets of two sizes are compared by the square foot, not by the sheet", () => {
    const long: Material = { ...SHEET, dimensions: dimensions({ faceWidth: "4 ft", faceLength: "10 ft" }) };
    const perFoot = (amount: string, material: Material) =>
      priceSeries([observation(amount)], material, valuation(), { ...terms, unit: "square-foot" });
    const [short, longer] = [perFoot("42.56", SHEET), perFoot("52.00", long)];
    expect([figuresIn(short), figuresIn(longer)]).toEqual([["1.33"], ["1.30"]]);
    expect([...figuresIn(short), ...figuresIn(longer)]).not.toContain("42.56");
  });

  // N3; thickness categories 7/16 and 15/32 overlap when measured: US PS 1 and IRC R503 (read). Prices made up.
  test("N3 7/16 and 15/32, both called half inch, are two materials and two series", () => {
    const thin = { ...fromCatalogue("osb-7-16"), id: "thin", name: "OSB 1/2" };
    const thick = { ...fromCatalogue("osb-15-32"), id: "thick", name: "OSB 1/2" };
    const seen = [
      observation("20.00", { materialId: "thin", seenOn: daysAgo(9) }),
      observation("24.00", { materialId: "thick", storeId: "far" }),
    ];
    const series = [thin, thick].map((one) => figuresIn(priceSeries(seen, one, valuation(), terms)));
    expect(series).toEqual([["20.00"], ["24.00"]]);
    const prices = [thin, thick].map((one) => figuresIn(goingPriceOn(TODAY, seen, one, valuation())));
    expect(prices).toEqual([["20.00"], ["24.00"]]);
    expect(prices.flat()).not.toContain("22.00");
    expect(lastChange(TODAY, seen, thick, valuation())?.percent).toBeNull();
    expect(substitutionRefusals(thick, thin).map(({ code }) => code)).toEqual(["alternative-thinner"]);
  });

  // N9. 12.10 x 1.35 = 16.335; 12.10 x 1.37 = 16.577.
  test("N9 history keeps the rate of its day, and an open figure takes today's", () => {
    const there = valuation({
      stores: [store("near", { currency: "USD" })],
      rates: [rate("2026-01-05", "USD", "CAD", "1.35"), rate(TODAY, "USD", "CAD", "1.37")],
    });
    const seen = observation("12.10", { currency: "USD", seenOn: day("2026-01-05") });
    const history = figuresIn([
      valuedAsSeen(seen, SHEET, there),
      priceSeries([seen], SHEET, there, terms),
      lastChange(TODAY, [seen], SHEET, there),
    ]);
    expect(history).toEqual(["16.34"]);
    expect(history).not.toContain("16.58");
    expect(cents(offersOn(TODAY, [seen], SHEET, there).offers[0]?.price.amount)).toBe("16.58");
  });
});

describe("the going price", () => {
  const seven = Array.from({ length: 7 }, (_, at) => store(`store ${at}`));
  const market = valuation({ stores: seven });

  // N4. Mean of the seven 19.71; median 21.00.
  test("N4 a clearance price is not the going price", () => {
    const at = (amount: string, index: number, given: Partial<Observation> = {}) =>
      observation(amount, { storeId: `store ${index}`, ...given });
    const shelf = ["21.00", "21.00", "22.00", "21.00", "22.00", "21.00"].map((amount, index) =>
      at(amount, index),
    );
    const six = { terms: "clearance", maxQuantity: decimal(6) } as const;
    const all = [...shelf, at("9.99", 6, six)];
    expect(going(all, market)).toMatchObject({ figure: "21.00", stores: 6 });
    const [first] = offersOn(TODAY, all, SHEET, market).offers;
    expect([first?.terms, first?.maxQuantity?.toString()]).toEqual(["clearance", "6"]);
    // Even mistaken for a shelf price it does not drag the middle along.
    const mistaken = going([...shelf, at("9.99", 6)], market);
    expect(mistaken).toMatchObject({ figure: "21.00", stores: 7 });
    expect(figuresIn([going(all, market), mistaken])).toEqual(["21.00"]);
  });

  // N5. Last seen on 29 February 2024, 95 days before 3 June.
  test("N5 a price of 95 days ago is shown with its age, and is no going price", () => {
    const seen = observation("20.00", { seenOn: day("2024-02-29") });
    const on = day("2024-06-03");
    const [offer] = offersOn(on, [seen], SHEET, valuation()).offers;
    expect([offer?.ageDays, offer?.stale]).toEqual([95, true]);
    expect(going([seen], valuation(), on)).toBeNull();
    const fresh = observation("23.00", { storeId: "far", seenOn: day("2024-06-01") });
    expect(going([seen, fresh], valuation(), on)).toMatchObject({ figure: "23.00", stores: 1 });
    expect(figuresIn(going([seen, fresh], valuation(), on))).not.toContain("21.50");
  });

  // N17. Five prices at one store (mean 20), one at another (26): per store 23.00, per observation 21.00.
  test("N17 an average over stores says that it is one: 23.00 over two stores", () => {
    const often = ["18", "19", "21", "22", "20"].map((amount, index) =>
      observation(amount, { seenOn: daysAgo(5 - index) }),
    );
    const answer = going([...often, observation("26", { storeId: "far" })]);
    expect(answer).toMatchObject({ figure: "23.00", stores: 2, kind: "fresh" });
    expect(figuresIn(answer)).not.toContain("21.00");
  });

  // N22. The rule only; prices made up.
  test("N22 two branches stay two stores: what one has left, and its price, says nothing of the other", () => {
    const seen = [
      observation("20.00", { seenOn: daysAgo(9) }),
      observation("21.00", { storeId: "far", seenOn: daysAgo(8) }),
      observation(null, { seenOn: daysAgo(1) }),
    ];
    const { offers, leftOut } = offersOn(TODAY, seen, SHEET, valuation());
    expect(offers.map(({ storeId, price }) => [storeId, cents(price.amount)])).toEqual([["far", "21.00"]]);
    expect(leftOut.map(({ storeId }) => storeId)).toEqual(["near", "near"]);
    const change = lastChange(TODAY, seen, SHEET, valuation());
    expect([change?.storeId, change?.percent]).toEqual(["far", null]);
    expect(priceSeries(seen, SHEET, valuation(), terms).map(({ storeId }) => storeId)).toEqual([
      "near",
      "far",
      "near",
    ]);
  });
});

describe("percent and nothing", () => {
  // N16; how statistical offices tell points from percent (read, Bureau of Labor Statistics). 6 / 120.
  test("N16 from 120 to 126 is 5.0 percent, six points", () => {
    const [then, now] = [{ level: decimal(120) }, { level: decimal(126) }];
    expect(percentBetween(then, now).percent.toFixed(1)).toBe("5.0");
    expect(pointsBetween(then, now).points.toFixed(1)).toBe("6.0");
    const seen = [observation("120", { seenOn: daysAgo(20) }), observation("126")];
    const change = lastChange(TODAY, seen, SHEET, valuation());
    expect(cents(change?.percent ?? undefined)).toBe("5.00");
    expect(figuresIn(change)).not.toContain("6.00");
  });

  // N23. The rule only.
  test("N23 a blank or a zero is no price of 0.00", () => {
    expect(["", " ", "-", "n/a"].map((typed) => parseAmount(typed, "en-CA"))).toEqual([
      null,
      null,
      null,
      null,
    ]);
    const entry = {
      materialId: "0190f2b4-7f3a-7c11-8a55-5b3a9f1f0001",
      storeId: "0190f2b4-7f3a-7c11-8a55-5b3a9f1f0002",
      seenOn: "2026-03-02",
      terms: "shelf",
      currency: "CAD",
      per: { quantity: "1", unit: "sheet" },
      taxIncluded: false,
    };
    const accepted = (amount: string | null) => observationEntry.safeParse({ ...entry, amount }).success;
    expect([null, "", "0", "0.00", "0.01"].map(accepted)).toEqual([false, false, false, false, true]);
    const none = observation(null);
    expect(allInPrice(none, SHEET, valuation(), TODAY)).toEqual({ known: false, reason: "no-amount" });
    const seen = [observation("21.00"), observation(null, { storeId: "far" })];
    const { offers } = offersOn(TODAY, seen, SHEET, valuation());
    expect(figuresIn(offers.map(({ price }) => price))).toEqual(["21.00"]);
    expect(figuresIn(going(seen))).not.toContain("0.00");
  });
});
