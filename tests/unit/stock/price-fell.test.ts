import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import type { Observation } from "../../../lib/prices/observation.ts";
import { type Lot, NOTHING_AGREED } from "../../../lib/stock/lot.ts";
import { priceFell } from "../../../lib/stock/price-fell.ts";
import { day, fee, observation, SHEET, store, valuation } from "../../support/price-example.ts";
import { cad, eventOf, lotOf, paid } from "../../support/stock-example.ts";

const NOW = "2026-01-20";
/** Ten sheets at 20.00, bought on 5 January, to be taken back until the 25th, a lower price paid back until the 22nd. */
const agreed = { ...NOTHING_AGREED, returnableUntil: day("2026-01-25"), adjustableUntil: day("2026-01-22") };
const ten = lotOf(10, 200, { agreed });
const seen = (amount: string, given: Partial<Observation> = {}) =>
  observation(amount, { seenOn: day("2026-01-18"), ...given });

function fell(
  observations: readonly Observation[],
  {
    lot = ten,
    events = [],
    on = NOW,
  }: { lot?: Lot; events?: ReturnType<typeof eventOf>[]; on?: string } = {},
) {
  const stores = [store("near"), store("far"), store("taxed", { taxRegion: "CA-NS" })];
  const facts = {
    valuation: valuation({ stores, today: day(on) }),
    materials: new Map([[SHEET.id, SHEET]]),
    observations,
    lots: [lot],
    events,
  };
  return priceFell(day(on), facts).map((one) => [
    one.money.amount.toFixed(2),
    one.quantity.toFixed(),
    one.lastDay,
    one.adjustUntil,
    one.returnUntil,
  ]);
}

const worth = (...given: Parameters<typeof fell>) => fell(...given).map((one) => one.slice(0, 2));

describe("the price fell since you bought", () => {
  test("says the money and the last day to ask", () => {
    expect(fell([seen("17.50")])).toEqual([["25.00", "10", "2026-01-25", "2026-01-22", "2026-01-25"]]);
  });

  test("only for what is still on hand", () => {
    expect(worth([seen("17.50")], { events: [eventOf("drawn", 6, "2026-01-10")] })).toEqual([["10.00", "4"]]);
    expect(fell([seen("17.50")], { events: [eventOf("drawn", 10, "2026-01-10")] })).toEqual([]);
    expect(fell([seen("17.50")], { lot: { ...ten, receipts: [] } })).toEqual([]);
  });

  test("not when it is the same or higher", () => {
    expect(fell([seen("20.00")])).toEqual([]);
    expect(fell([seen("21.00")])).toEqual([]);
  });

  test("never from another store", () => {
    expect(fell([seen("10.00", { storeId: "far" })])).toEqual([]);
  });

  test("on the last day and never after it", () => {
    expect(fell([seen("17.50")], { on: "2026-01-25" })).toEqual([
      ["25.00", "10", "2026-01-25", null, "2026-01-25"],
    ]);
    expect(fell([seen("17.50")], { on: "2026-01-26" })).toEqual([]);
    expect(fell([seen("17.50")], { lot: { ...ten, agreed: NOTHING_AGREED } })).toEqual([]);
  });

  test("not by a price seen later, one no longer in force, a used one, or one for more than is on hand", () => {
    expect(fell([seen("17.50", { seenOn: day("2026-01-22") })])).toEqual([]);
    expect(fell([seen("17.50", { terms: "special", until: day("2026-01-19") })])).toEqual([]);
    expect(fell([seen("17.50", { terms: "used" })])).toEqual([]);
    const forTwelve = { terms: "quantity-break", minQuantity: decimal(12) } as const;
    expect(fell([seen("17.50", forTwelve)])).toEqual([]);
  });

  test("by a limited offer as far as it goes, and by the one worth most", () => {
    const six = { terms: "clearance", maxQuantity: decimal(6), until: day("2026-01-30") } as const;
    expect(worth([seen("17.50", six)])).toEqual([["15.00", "6"]]);
    expect(worth([seen("17.50", six), seen("18.00")])).toEqual([["20.00", "10"]]);
  });

  test("both all in, and without charges per order", () => {
    const delivery = fee("delivery", { amount: decimal(50), basis: "order" });
    const eco = fee("eco", { amount: decimal(1) });
    const lot = { ...ten, paid: paid(200, { fees: [delivery, eco] }) };
    // 20.00 + 1.00 each against 17.50; the delivery is no price.
    expect(worth([seen("17.50")], { lot })).toEqual([["35.00", "10"]]);
    const taxed: Lot = { ...ten, storeId: "taxed" };
    // (20.00 - 17.50) x 1.14 x 10.
    expect(worth([seen("17.50", { storeId: "taxed" })], { lot: taxed })).toEqual([["28.50", "10"]]);
    const card: Lot = { ...lot, paidHome: cad(260) };
    expect(worth([seen("17.50")], { lot: card })).toEqual([["35.00", "10"]]);
  });
});
