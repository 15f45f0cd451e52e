import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import type { Lot, Payment } from "../../../lib/stock/lot.ts";
import { lotCost } from "../../../lib/stock/lot-cost.ts";
import { day, rate, SHEET, store, TODAY, valuation } from "../../support/price-example.ts";
import { lotOf, paid } from "../../support/stock-example.ts";

const halifax = store("near", { taxRegion: "CA-NS" });
const registered = (from: string | null = null) => ({
  registrations: [{ tax: "HST", from: from === null ? null : day(from), until: null }],
});
const payment = (amount: string, on: string, home: string | null = null): Payment => ({
  amount: decimal(amount),
  on: day(on),
  home: home === null ? null : decimal(home),
});
const rates = [rate("2026-01-05", "USD", "CAD", "1.30"), rate("2026-02-27", "USD", "CAD", "1.40")];
const usd = (amount: string, given: Partial<Lot> = {}) =>
  lotOf(10, 0, { paid: paid(amount, { currency: "USD", taxRegion: "CA-XX" }), ...given });

function cost(
  lot: Lot,
  given: Parameters<typeof valuation>[0] = { stores: [halifax], rates },
  on = TODAY,
): string {
  const found = lotCost(lot, SHEET, valuation({ stores: [halifax], rates, ...given }), on);
  return found.known ? found.cost.amount.toFixed() : found.reason;
}

describe("a lot's cost", () => {
  test("is what was paid with the tax of the day, when the receipt is before tax", () => {
    expect(cost(lotOf(10, 200))).toBe("228");
  });

  test("is what was paid, when tax is in it", () => {
    expect(cost(lotOf(10, 0, { paid: paid("228", { taxIncluded: true }) }))).toBe("228");
  });

  test("stays what it was when the tax changes later", () => {
    const before = lotOf(10, 200, { orderedOn: day("2025-03-31") });
    expect([cost(before, {}, day("2025-03-31")), cost(before, {}, TODAY)]).toEqual(["230", "230"]);
  });

  test("takes the tax of the day of the first payment", () => {
    const ordered = { orderedOn: day("2025-03-20"), payments: [payment("228", "2025-04-02")] };
    expect(cost(lotOf(10, 200, ordered))).toBe("228");
  });

  test("takes the region the receipt names before the store's", () => {
    expect(cost(lotOf(10, 0, { paid: paid("200", { taxRegion: "CA-XX" }) }))).toBe("200");
  });

  test("leaves out a tax the receipt is exempt from", () => {
    expect(cost(lotOf(10, 0, { paid: paid("200", { exemptFrom: ["HST"] }) }))).toBe("200");
  });

  test("is without tax for salvage from nobody's region", () => {
    const gift = { origin: "salvaged", storeId: null } as const;
    expect(cost(lotOf(10, 60, gift))).toBe("60");
  });

  test("of a purchase from nobody's region is not known", () => {
    expect(cost(lotOf(10, 60, { storeId: null }))).toBe("region-unknown");
  });

  test("of something given is zero", () => {
    expect(cost(lotOf(10, 0, { origin: "left-over", storeId: null }))).toBe("0");
  });
});

describe("recovered tax", () => {
  const answer = lotCost(lotOf(10, 200), SHEET, valuation({ stores: [halifax], ...registered() }), TODAY);

  test("is not cost", () => {
    expect(answer.known && answer.cost.amount.toFixed()).toBe("200");
  });

  test("is cash", () => {
    expect(answer.known && answer.cash.amount.toFixed()).toBe("228");
  });

  test("is in what was paid, which money was tied up in", () => {
    expect(answer.known && answer.payments.map(({ amount }) => amount.amount.toFixed())).toEqual(["228"]);
  });

  test("goes by the registration on the lot's own day", () => {
    expect(cost(lotOf(10, 200), registered("2026-01-06"))).toBe("228");
    expect(cost(lotOf(10, 200), registered("2026-01-05"))).toBe("200");
  });
});

describe("a lot paid in another currency", () => {
  test("costs the rate of the day paid, for ever", () => {
    expect([cost(usd("100"), {}, day("2026-01-05")), cost(usd("100"))]).toEqual(["130", "130"]);
  });

  test("costs what the card was charged, where that is known", () => {
    expect(cost(usd("100", { paidHome: { amount: decimal("136.20"), currency: "CAD" } }))).toBe("136.2");
  });

  test("costs each payment at the rate of its own day", () => {
    const payments = [payment("50", "2026-01-05"), payment("50", "2026-02-27")];
    expect(cost(usd("100", { payments }))).toBe("135");
  });

  test("takes what the card was charged for a payment before the rate", () => {
    const payments = [payment("50", "2026-01-05", "66"), payment("50", "2026-02-27")];
    expect(cost(usd("100", { payments }))).toBe("136");
  });

  test("stays exposed to the rate with what is not paid yet", () => {
    const lot = usd("100", { payments: [payment("50", "2026-01-05")] });
    expect([cost(lot, {}, day("2026-01-05")), cost(lot)]).toEqual(["130", "135"]);
  });

  test("says how much is still owed, in the currency paid", () => {
    const lot = usd("100", { payments: [payment("50", "2026-01-05")] });
    const answer = lotCost(lot, SHEET, valuation({ stores: [halifax], rates }), TODAY);
    expect(answer.known && [answer.unpaid.amount.toFixed(), answer.unpaid.currency]).toEqual(["50", "USD"]);
  });

  test("has no cost where there is no rate, rather than a wrong one", () => {
    expect(cost(usd("100", { orderedOn: day("2025-11-03") }))).toBe("rate-unknown");
  });
});

describe("payments", () => {
  const lot = lotOf(1, "29.96", {
    payments: [payment("17.08", "2026-01-05"), payment("17.07", "2026-01-09")],
  });

  test("that settle a bill to the cent are the bill, to its last digit", () => {
    expect(cost(lot)).toBe("34.1544");
  });

  test("made after the day are not made yet", () => {
    const answer = lotCost(lot, SHEET, valuation({ stores: [halifax] }), day("2026-01-08"));
    expect(answer.known && answer.payments).toHaveLength(1);
  });

  test("of a plain purchase are one, on the day ordered", () => {
    const answer = lotCost(lotOf(10, 200), SHEET, valuation({ stores: [halifax] }), TODAY);
    expect(answer.known && answer.payments.map(({ on }) => on)).toEqual(["2026-01-05"]);
  });

  test("of a down payment make the whole cost: the rest is owed", () => {
    expect(cost(lotOf(10, 200, { payments: [payment("50", "2026-01-05")] }))).toBe("228");
  });
});

describe("a lot from across the border", () => {
  const maine = (charges: Parameters<typeof store>[1]) =>
    store("near", { taxRegion: "US-ME", currency: "USD", ...charges });
  const border = { name: "HST", percent: decimal(14), perOrder: null, from: null, until: null };
  const bought = lotOf(10, 0, { paid: paid("100", { currency: "USD" }) });

  test("costs the tax there and the border's charge on the price before it", () => {
    const stores = [maine({ importCharges: [{ ...border, recoverable: false }] })];
    expect(cost(bought, { stores })).toBe("155.35");
  });

  test("gets the border's charge back when registered for it, and pays it all the same", () => {
    const stores = [maine({ importCharges: [{ ...border, recoverable: true }] })];
    const answer = lotCost(bought, SHEET, valuation({ stores, rates, ...registered() }), TODAY);
    expect(answer.known && [answer.cost.amount.toFixed(), answer.cash.amount.toFixed()]).toEqual([
      "137.15",
      "155.35",
    ]);
  });

  test("is marked while nobody has confirmed what the border takes", () => {
    const answer = lotCost(bought, SHEET, valuation({ stores: [maine({})], rates }), TODAY);
    expect(answer.known && answer.beforeImportCharges).toBe(true);
  });
});
