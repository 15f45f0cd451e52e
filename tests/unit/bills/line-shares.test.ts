import { describe, expect, test } from "vitest";
import type { Bill } from "../../../lib/bills/bill.ts";
import { linePaid } from "../../../lib/bills/line-paid.ts";
import { priceSeen } from "../../../lib/bills/line-seen.ts";
import { lineShares } from "../../../lib/bills/line-shares.ts";
import { decimal } from "../../../lib/decimal.ts";
import type { TaxComponent } from "../../../lib/tax/region.ts";
import {
  billedFee,
  billOf,
  billTerms,
  cents,
  deposit,
  figuresOf,
  GST,
  HST,
  handedBack,
  lineAt,
  PST,
} from "../../support/bill-example.ts";
import { day } from "../../support/price-example.ts";
import { someMaterial } from "../../support/some-material.ts";

const heavy = someMaterial("bag", { weight: "80 lb", pieces: "1 each" }, { id: "heavy" });
const light = someMaterial("each", { weight: "20 lb" }, { id: "light" });
const unknown = someMaterial("each", {}, { id: "unknown" });
const MATERIALS = [heavy, light, unknown];
const delivery = (given = {}) => [billedFee("delivery", { amount: decimal("85.00"), ...given })];

function shares(bill: Bill, components: readonly TaxComponent[] = []) {
  const terms = billTerms(components, MATERIALS);
  return lineShares(bill, terms, figuresOf(bill, terms));
}
function paid(bill: Bill, at: number, components: readonly TaxComponent[] = []) {
  const terms = billTerms(components, MATERIALS);
  const figures = figuresOf(bill, terms);
  const [line, share] = [figures.lines[at], lineShares(bill, terms, figures)?.[at]];
  if (line === undefined || share === undefined) throw new Error(`this bill has no line ${at}`);
  return linePaid(bill, line, share);
}
const taxesOf = ({ taxes }: ReturnType<typeof linePaid>) =>
  (taxes ?? []).map(({ name, amount }) => `${name} ${amount.toFixed(2)}`);
const totals = (bill: Bill, components: readonly TaxComponent[] = []) =>
  cents((shares(bill, components) ?? []).map(({ total }) => total));

describe("delivery", () => {
  const lines = [
    lineAt("10", 10, { materialId: "heavy", unit: "bag" }),
    lineAt("100", 3, { materialId: "light" }),
  ];

  test("is shared by value", () => {
    expect(totals(billOf(lines, { fees: delivery() }))).toEqual(["121.25", "363.75"]);
  });

  test("is shared by weight", () => {
    expect(totals(billOf(lines, { fees: delivery(), shareBy: "weight" }))).toEqual(["179.07", "305.93"]);
  });

  test("is shared by count", () => {
    expect(totals(billOf(lines, { fees: delivery(), shareBy: "count" }))).toEqual(["165.38", "319.62"]);
  });

  test("cannot be shared by a weight nobody knows", () => {
    const bill = billOf([lineAt("10", 1, { materialId: "unknown" })], {
      fees: delivery(),
      shareBy: "weight",
    });
    expect(shares(bill)).toBeNull();
  });

  test("loses no cent, nor does the tax on it", () => {
    const three = [lineAt("9.99"), lineAt("9.99"), lineAt("9.99")];
    const bill = billOf(three, { fees: [billedFee("delivery", { amount: decimal("10") })] });
    expect(totals(bill, [HST])).toEqual(["15.07", "15.05", "15.05"]);
    expect(figuresOf(bill, billTerms([HST])).total.amount.toFixed(2)).toBe("45.17");
  });

  test("takes its tax along in the same shares", () => {
    const fees = [billedFee("delivery", { amount: decimal("40") })];
    const bill = billOf([lineAt("100"), lineAt("300")], { fees });
    const borne = (shares(bill, [GST, PST]) ?? []).map((line) =>
      line.fees.flatMap(({ taxes }) => cents(taxes.map(({ amount }) => amount))),
    );
    expect(borne).toEqual([
      ["0.50", "0.70"],
      ["1.50", "2.10"],
    ]);
  });

  test("is borne by what was bought, not by what was handed back", () => {
    const back = lineAt("40", 1, { returned: handedBack() });
    const bill = billOf([back, lineAt("50")], { fees: delivery() });
    expect(totals(bill)).toEqual(["-40.00", "135.00"]);
  });
});

test("a deposit that was forfeited and a rebate are shared, a deposit that comes back is not", () => {
  const lines = [lineAt("30"), lineAt("70")];
  const rebates = [{ name: "mail-in", amount: decimal("10") }];
  expect(totals(billOf(lines, { deposits: [deposit("50")], rebates }))).toEqual(["27.00", "63.00"]);
  expect(totals(billOf(lines, { deposits: [deposit("50", { forfeited: true })] }))).toEqual([
    "45.00",
    "105.00",
  ]);
});

describe("what a lot of a line was paid", () => {
  test("is the line with its tax and its part of the delivery, in the bill's own cents", () => {
    const bill = billOf([lineAt("9.99"), lineAt("9.99"), lineAt("9.99")], { fees: delivery() });
    expect(paid(bill, 0, [HST])).toMatchObject({ taxIncluded: false, fees: [] });
    // 85.00 in three is 28.34, 28.33, 28.33; HST 14.95 on 114.97 laid on the six as 1.30, 1.30, 1.30 and 11.05.
    expect(paid(bill, 0, [HST]).amount.toFixed(2)).toBe("38.33");
    expect(taxesOf(paid(bill, 0, [HST]))).toEqual(["HST 4.99"]);
    expect(totals(bill, [HST])[0]).toBe("43.32");
  });

  test("keeps a delivery that bears no tax as a fee of its own, and a rebate as less", () => {
    const rebates = [{ name: "mail-in", amount: decimal("10") }];
    const bill = billOf([lineAt("100")], { fees: delivery({ taxable: false }), rebates });
    const lot = paid(bill, 0, [HST]);
    expect([lot.amount.toFixed(2), ...taxesOf(lot)]).toEqual(["100.00", "HST 13.00"]);
    expect(lot.fees.map(({ name, amount, taxable }) => [name, amount?.toFixed(2), taxable])).toEqual([
      ["delivery", "85.00", false],
      ["mail-in", "-10.00", false],
    ]);
  });

  test("keeps the tax of a delivery on an exempt line", () => {
    const bill = billOf([lineAt("100", 1, { exemptFrom: ["PST"] })], { fees: delivery() });
    const lot = paid(bill, 0, [GST, PST]);
    expect([lot.amount.toFixed(2), ...taxesOf(lot)]).toEqual(["185.00", "GST 9.25", "PST 5.95"]);
  });

  test("shows each tax as the seller rounds it", () => {
    const bill = billOf([lineAt("9.99"), lineAt("9.99")], { fees: delivery(), taxRounding: "per-line" });
    const lot = paid(bill, 0, [HST]);
    // 1.2987 -> 1.30 and 11.05 in two, the odd cent to the first.
    expect([lot.amount.toFixed(2), ...taxesOf(lot)]).toEqual(["52.49", "HST 6.83"]);
  });

  test("is the printed amount where the prices hold the tax", () => {
    const lot = paid(billOf([lineAt("113")], { taxIncluded: true }), 0, [HST]);
    expect([lot.amount.toFixed(2), lot.taxIncluded, ...taxesOf(lot)]).toEqual(["113.00", true, "HST 13.00"]);
  });
});

describe("the price a line shows", () => {
  const line = lineAt("10", 4, {
    materialId: "light",
    discount: { percent: decimal(10), amount: null },
  });
  const seen = (given: Partial<Bill>) => {
    const bill = billOf([line], { fees: delivery(), ...given });
    const [amounts] = figuresOf(bill, billTerms([], MATERIALS)).lines;
    return amounts === undefined ? null : priceSeen(bill, line, amounts, line.quantity);
  };

  test("on a receipt is what was paid for the line, the delivery left out", () => {
    const price = seen({});
    expect(price).toMatchObject({ terms: "paid", until: null, minQuantity: null, fees: [] });
    expect([price?.amount?.amount.toFixed(2), price?.per.quantity.toFixed()]).toEqual(["36.00", "4"]);
  });

  test("on a quote is an offer until its last day, from the quantity quoted up, delivery per order", () => {
    const price = seen({ kind: "quote", until: day("2024-06-17") });
    expect(price).toMatchObject({ terms: "quote", until: "2024-06-17" });
    expect(price?.minQuantity?.toFixed()).toBe("4");
    expect(price?.fees.map(({ name, basis }) => [name, basis])).toEqual([["delivery", "order"]]);
  });

  test("on a quote for any quantity has no smallest one", () => {
    expect(seen({ kind: "quote", until: day("2024-06-17"), anyQuantity: true })?.minQuantity).toBeNull();
  });

  test("is none for goods handed back or given away", () => {
    const given = lineAt("10", 1, { materialId: "light", discount: { percent: decimal(100), amount: null } });
    const back = lineAt("10", 1, {
      materialId: "light",
      returned: handedBack(),
    });
    const bill = billOf([given, back]);
    const { lines } = figuresOf(bill, billTerms([], MATERIALS));
    const prices = bill.lines.map((one, at) => {
      const amounts = lines[at];
      return amounts === undefined ? undefined : priceSeen(bill, one, amounts, one.quantity);
    });
    expect(prices).toEqual([null, null]);
  });
});
