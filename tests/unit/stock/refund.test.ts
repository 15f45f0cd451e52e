import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { NOTHING_AGREED } from "../../../lib/stock/lot.ts";
import { type RefundTerms, suggestedRefund } from "../../../lib/stock/refund.ts";
import { fee, SHEET, store, valuation } from "../../support/price-example.ts";
import { lotOf, paid } from "../../support/stock-example.ts";

const market = valuation({ stores: [store("near", { taxRegion: "CA-NS" })] });

/** Ten sheets, bought at 14 % (the table of the examples). */
const lotFor = (amount: string, given: Parameters<typeof paid>[1] = {}) =>
  lotOf(10, 0, { paid: paid(amount, given) });
function refund(lot: ReturnType<typeof lotFor>, quantity: number, terms?: RefundTerms) {
  const found = suggestedRefund(lot, SHEET, market, decimal(quantity), terms);
  return found.known
    ? [found.net, found.tax, found.refund].map(({ amount }) => amount.toFixed(2))
    : found.reason;
}

test("the price paid for so many, its tax with it; fees are not in it", () => {
  expect(refund(lotFor("300.00"), 3)).toEqual(["90.00", "12.60", "102.60"]);
  const delivered = lotFor("300.00", { fees: [fee("delivery", { amount: decimal(40), basis: "order" })] });
  expect(refund(delivered, 3)).toEqual(["90.00", "12.60", "102.60"]);
});

test("a price with tax in it gives the same", () => {
  expect(refund(lotFor("342.00", { taxIncluded: true }), 3)).toEqual(["90.00", "12.60", "102.60"]);
});

test("the restocking fee is what was agreed on the lot, unless said otherwise", () => {
  const agreed = { ...NOTHING_AGREED, restockingPercent: decimal(15) };
  const lot = { ...lotFor("300.00"), agreed };
  expect(refund(lot, 3)).toEqual(["76.50", "10.71", "87.21"]);
  expect(refund(lot, 3, { percent: decimal(0) })).toEqual(["90.00", "12.60", "102.60"]);
  expect(refund(lot, 3, { taxOn: "price" })).toEqual(["76.50", "12.60", "89.10"]);
});

test("net and tax are rounded once each", () => {
  // 10.00 / 3 sheets each: 3.333.. -> 3.33; 14 % of it 0.4662 -> 0.47.
  const three = lotOf(3, 0, { paid: paid("10.00") });
  expect(refund(three, 1)).toEqual(["3.33", "0.47", "3.80"]);
});

test("without a region a private sale has no tax, and what was bought cannot be said", () => {
  expect(refund({ ...lotFor("300.00"), storeId: null, origin: "salvaged" }, 1)).toEqual([
    "30.00",
    "0.00",
    "30.00",
  ]);
  expect(refund({ ...lotFor("300.00"), storeId: null }, 1)).toBe("region-unknown");
});
