import { describe, expect, test } from "vitest";
import { daysBetween, type LocalDate } from "../../lib/calendar/local-date.ts";
import { type Decimal, decimal, roundHalfUp } from "../../lib/decimal.ts";
import type { Material } from "../../lib/materials/material.ts";
import { allInPrice, valuedAsSeen } from "../../lib/prices/all-in-price.ts";
import { boughtAlone } from "../../lib/prices/bought-alone.ts";
import { cheapestCover } from "../../lib/prices/cheapest-cover.ts";
import { goingPriceOn } from "../../lib/prices/going-price.ts";
import { lastChange } from "../../lib/prices/last-change.ts";
import type { Observation } from "../../lib/prices/observation.ts";
import { observationEntry } from "../../lib/prices/observation-entry.ts";
import { offersOn } from "../../lib/prices/offers.ts";
import type { Valuation } from "../../lib/prices/valuation.ts";
import { CANADA } from "../../lib/tax/regions-ca.ts";
import {
  component,
  day,
  daysAgo,
  fee,
  observation,
  rate,
  region,
  SHEET,
  store,
  TODAY,
  valuation,
} from "../support/price-example.ts";
import { dimensions, lumber } from "../support/some-material.ts";

// Mistakes a plain price list makes, with the figure that is right: common practice of the trade, arithmetic derived; exact
// to the cent unless a row says otherwise.
const cents = (value: Decimal) => roundHalfUp(value, 2).toFixed(2);
const ontario = valuation({
  taxRegion: "CA-ON",
  stores: [store("near", { taxRegion: "CA-ON" }), store("far", { taxRegion: "CA-ON" })],
  regions: CANADA,
});

function price(
  seen: Observation,
  given: Valuation = ontario,
  material: Material = SHEET,
  on: LocalDate = TODAY,
) {
  const found = allInPrice(seen, material, given, on);
  if (!found.known) throw new Error(found.reason);
  return found;
}
const cost = (...given: Parameters<typeof price>) => cents(price(...given).price.amount);
const terms = { step: decimal(1), used: decimal(0), currency: "CAD" } as const;

function covered(all: readonly Observation[], quantity: number) {
  const { offers } = offersOn(TODAY, all, SHEET, valuation());
  return cheapestCover(offers, decimal(quantity), terms);
}

describe("tax in, tax out", () => {
  // 24.00 x 1.13 = 27.12; 26.50 / 1.13 = 23.45.
  test("24.00 before Ontario's 13 % is dearer than 26.50 with it", () => {
    const out = observation("24.00");
    const into = observation("26.50", { storeId: "far", taxIncluded: true });
    expect([cost(out), cost(into), cents(price(into).beforeTax.amount)]).toEqual(["27.12", "26.50", "23.45"]);
    expect(offersOn(TODAY, [out, into], SHEET, ontario).offers[0]?.storeId).toBe("far");
  });

  // 46.00 / 1.15 x 1.14.
  test("46.00 with 15 % in it is 45.60 once the tax is 14 %", () => {
    const seen = observation("46.00", { taxIncluded: true, seenOn: day("2025-03-31") });
    const halifax = valuation({ stores: [store("near", { taxRegion: "CA-NS" })], regions: CANADA });
    expect(cost(seen, halifax, SHEET, day("2025-04-01"))).toBe("45.60");
  });

  // CRA, "How to calculate your ITCs": tax comes back to the extent of commercial use (read); amounts derived.
  test("5,000.00 in Ontario costs a registrant 5,000.00 and takes 5,650.00 in cash", () => {
    const registered = { ...ontario, registrations: [{ tax: "HST", from: null, until: null }] };
    const lot = price(observation("5000"), registered);
    expect([cents(lot.price.amount), cents(lot.cash.amount)]).toEqual(["5000.00", "5650.00"]);
  });

  // An accounting firm's note on B.C. PST for contractors, 2017: 5,000 + 350 = 5,350 (read); 5,600 derived.
  test("5,000.00 of roofing in British Columbia costs 5,350.00 registered for GST, 5,600.00 otherwise", () => {
    const bc = valuation({ stores: [store("near", { taxRegion: "CA-BC" })], regions: CANADA });
    const registered = { ...bc, registrations: [{ tax: "GST", from: null, until: null }] };
    expect([cost(observation("5000"), registered), cost(observation("5000"), bc)]).toEqual([
      "5350.00",
      "5600.00",
    ]);
  });

  // Ten percent off 250.00, then 13 %.
  test("250.00 less a standing ten percent, with 13 % tax, is 254.25", () => {
    const discounts = [{ category: null, percent: decimal(10), from: null, until: null }];
    const cheaper = {
      ...ontario,
      stores: new Map([["near", store("near", { taxRegion: "CA-ON", discounts })]]),
    };
    expect(cost(observation("250"), cheaper)).toBe("254.25");
  });

  // A percentage fee such as California's one percent assessment on lumber (from memory), taxable or not.
  test("a one percent assessment on 100.00 is 1.00, and taxed 1.13", () => {
    const assessed = (taxable: boolean) =>
      observation("100", { fees: [fee("assessment", { percent: decimal(1), taxable })] });
    expect([cost(assessed(false)), cost(assessed(true))]).toEqual(["114.00", "114.13"]);
  });

  // Streamlined Sales and Use Tax Agreement s. 324 (read); derived: 10.37 + 0.751825, rounded only in the end.
  test("10.37 at 7.25 percent is 11.12", () => {
    const kansas = region("US-KS", [component("Sales tax", "7.25", { recoverable: false })]);
    const there = valuation({
      taxRegion: "US-KS",
      stores: [store("near", { taxRegion: "US-KS" })],
      regions: [kansas],
    });
    expect(cost(observation("10.37"), there)).toBe("11.12");
  });
});

describe("one basis", () => {
  // 42.56 / 32 = 1.33; 52.00 / 40 = 1.30.
  test("4x10 at 52.00 is cheaper by the square foot than 4x8 at 42.56", () => {
    const long: Material = { ...SHEET, dimensions: dimensions({ faceWidth: "4 ft", faceLength: "10 ft" }) };
    const perFoot = (amount: string, material: Material, area: number) =>
      price(observation(amount), valuation(), material).price.amount.dividedBy(area).toString();
    expect([perFoot("42.56", SHEET, 32), perFoot("52.00", long, 40)]).toEqual(["1.33", "1.3"]);
  });

  // Concrete formwork and lumber reference page: a 2x6 of 10 ft at 400 per MBF is 4.00 (read).
  test("400.00 a thousand board feet is 4.00 for a 2x6 of 10 ft", () => {
    const plank = { ...lumber("2x6", "10 ft"), id: "sheet" };
    const seen = observation("400", { per: { quantity: decimal(1), unit: "mbf" } });
    expect(cost(seen, valuation(), plank)).toBe("4.00");
  });

  // A 2x4 of 8 ft at 4.48: 0.56 a foot, 0.84 a board foot, 840 a thousand.
  test("0.56 a foot, 0.84 a board foot and 840.00 a thousand are all 4.48 for a 2x4 of 8 ft", () => {
    const stud = { ...lumber("2x4", "8 ft"), id: "sheet" };
    const tags = [
      ["0.56", "linear-foot"],
      ["0.84", "board-foot"],
      ["840", "mbf"],
    ] as const;
    const all = tags.map(([amount, unit]) =>
      cost(observation(amount, { per: { quantity: decimal(1), unit } }), valuation(), stud),
    );
    expect(all).toEqual(["4.48", "4.48", "4.48"]);
  });

  // 20 / 3 x 38, rounded once.
  test("three for 20.00 makes thirty-eight cost 253.33", () => {
    const three = observation("20", { per: { quantity: decimal(3), unit: "sheet" } });
    expect(cents(covered([three], 38).cost.amount)).toBe("253.33");
  });
});

describe("another currency", () => {
  // 12.10 x 1.35 = 16.335; 12.10 x 1.37 = 16.577.
  test("12.10 USD seen at 1.35 was 16.34 and stays so; at 1.37 it costs 16.58 today", () => {
    const there = valuation({
      stores: [store("near", { currency: "USD" })],
      rates: [rate("2026-01-05", "USD", "CAD", "1.35"), rate(TODAY, "USD", "CAD", "1.37")],
    });
    const seen = observation("12.10", { currency: "USD", seenOn: day("2026-01-05") });
    const was = valuedAsSeen(seen, SHEET, there);
    expect([was.known && cents(was.price.amount), cost(seen, there)]).toEqual(["16.34", "16.58"]);
  });
});

describe("the going price", () => {
  // Mean 19.71, median 21.00.
  test("of seven stores with one at 9.99 is 21.00", () => {
    const stores = Array.from({ length: 7 }, (_, index) => store(`store ${index}`));
    const seen = ["21", "21", "22", "21", "9.99", "22", "21"].map((amount, index) =>
      observation(amount, { storeId: `store ${index}` }),
    );
    const going = goingPriceOn(TODAY, seen, SHEET, valuation({ stores }));
    expect(going.known && [cents(going.price.amount), going.stores]).toEqual(["21.00", 7]);
  });

  // Per observation 21.00, per store 23.00: ours is per store, each with its newest.
  test("of a store seen five times around 20.00 and one seen once at 26.00 is 23.00", () => {
    const often = ["18", "19", "21", "22", "20"].map((amount, index) =>
      observation(amount, { seenOn: daysAgo(5 - index) }),
    );
    const going = goingPriceOn(TODAY, [...often, observation("26", { storeId: "far" })], SHEET, valuation());
    expect(going.known && cents(going.price.amount)).toBe("23.00");
  });
});

describe("quantity", () => {
  const break_ = observation("12", { terms: "quantity-break", minQuantity: decimal(10) });

  // 8 x 13.50 = 108.00; 10 x 12.00 = 120.00; never 8 x 12.00 = 96.00.
  test("ten and more at 12.00 with eight needed is 108.00 at 13.50 each", () => {
    expect(cents(covered([break_, observation("13.50")], 8).cost.amount)).toBe("108.00");
  });

  // The same with singles at 16.00: 8 x 16.00 = 128.00 is more than ten at 12.00.
  test("with single ones at 16.00 ten are bought for 120.00 and two are left over", () => {
    const more = covered([break_, observation("16")], 8);
    expect([cents(more.cost.amount), more.over.toString()]).toEqual(["120.00", "2"]);
  });

  // Sold by the pallet of 42 only: 42 x price, fifteen left to value.
  test("twenty-seven bundles by the pallet of 42 at 36.00 are 1,512.00", () => {
    const pallet = observation("36", { packSize: decimal(42) });
    const taken = covered([pallet], 27);
    expect([cents(taken.cost.amount), taken.over.toString()]).toEqual(["1512.00", "15"]);
  });

  // "Buy two, get one free" at 10.00: 20.00 for three, and for two as well; the third is stock, no saving.
  test("three for the price of two cost 20.00 when two are needed, one over", () => {
    const three = observation("20", { per: { quantity: decimal(3), unit: "sheet" }, packSize: decimal(3) });
    const two = covered([three, observation("10", { storeId: "far" })], 2);
    expect([cents(two.cost.amount), two.over.toString()]).toEqual(["20.00", "0"]);
    expect(cents(covered([three], 2).cost.amount)).toBe("20.00");
  });
});

describe("delivery", () => {
  // 28 x 19.20 + 85.00 = 622.60; 28 x 21.48 = 601.44.
  test("28 at 19.20 with 85.00 of delivery lose against 28 at 21.48 free", () => {
    const delivery = fee("delivery", { amount: decimal(85), basis: "order" });
    const seen = [observation("19.20", { fees: [delivery] }), observation("21.48", { storeId: "far" })];
    const { offers } = offersOn(TODAY, seen, SHEET, valuation());
    const best = boughtAlone(offers, decimal(28), terms);
    const withDelivery = boughtAlone(
      offers.filter(({ storeId }) => storeId === "near"),
      decimal(28),
      terms,
    );
    expect([cents(best.total.amount), cents(withDelivery.total.amount)]).toEqual(["601.44", "622.60"]);
  });
});

describe("what is no current price", () => {
  // Last seen 95 days ago: 29 February to 3 June 2024.
  test("95 days after it was seen a price is an offer only by its age", () => {
    const seen = observation("20", { seenOn: day("2024-02-29") });
    const on = day("2024-06-03");
    expect(daysBetween(seen.seenOn, on)).toBe(95);
    const [offer] = offersOn(on, [seen], SHEET, valuation()).offers;
    expect([offer?.stale, offer?.ageDays]).toEqual([true, 95]);
    expect(goingPriceOn(on, [seen], SHEET, valuation()).known).toBe(false);
  });

  // Zero is not a price: refused where it is entered.
  test("a price of 0.00 is refused", () => {
    const entry = {
      materialId: "0190f2b4-7f3a-7c11-8a55-5b3a9f1f0001",
      storeId: "0190f2b4-7f3a-7c11-8a55-5b3a9f1f0002",
      seenOn: "2026-03-02",
      terms: "shelf",
      amount: "0.00",
      currency: "CAD",
      per: { quantity: "1", unit: "sheet" },
      taxIncluded: false,
    };
    expect(observationEntry.safeParse(entry).success).toBe(false);
    expect(observationEntry.safeParse({ ...entry, amount: "0.01" }).success).toBe(true);
  });

  // Two branches are two stores, each with its own price.
  test("two branches keep two offers", () => {
    const { offers } = offersOn(
      TODAY,
      [observation("20"), observation("21", { storeId: "far" })],
      SHEET,
      valuation(),
    );
    expect(offers.map(({ storeId }) => storeId)).toEqual(["near", "far"]);
  });
});

// 120 to 126 is 5.0 percent, not 6.
test("a change from 120.00 to 126.00 is 5 percent", () => {
  const seen = [observation("120", { seenOn: daysAgo(20) }), observation("126")];
  expect(lastChange(TODAY, seen, SHEET, valuation())?.percent?.toString()).toBe("5");
});
