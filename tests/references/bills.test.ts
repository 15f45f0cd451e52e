import { describe, expect, test } from "vitest";
import type { Bill } from "../../lib/bills/bill.ts";
import { billEntry } from "../../lib/bills/bill-entry.ts";
import { depositsOn } from "../../lib/bills/deposit-events.ts";
import { linePaid } from "../../lib/bills/line-paid.ts";
import { lineShares } from "../../lib/bills/line-shares.ts";
import { localDate } from "../../lib/calendar/local-date.ts";
import { decimal } from "../../lib/decimal.ts";
import { lotCost } from "../../lib/stock/lot-cost.ts";
import type { Registration, TaxComponent } from "../../lib/tax/region.ts";
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
  priceFor,
  QST,
} from "../support/bill-example.ts";
import { component, region, SHEET, store, valuation } from "../support/price-example.ts";
import { lotOf } from "../support/stock-example.ts";

// Amounts are printed to the cent in every source, and compared to the cent.
const total = (bill: Bill, ...components: TaxComponent[]) =>
  figuresOf(bill, billTerms(components)).total.amount.toFixed(2);
const shown = (bill: Bill, ...components: TaxComponent[]) =>
  cents(figuresOf(bill, billTerms(components)).taxes.map(({ amount }) => amount));
const of = (...prices: string[]) => billOf(prices.map((price) => lineAt(price)));
const sales = (rate: string) => component("sales tax", rate, { recoverable: false });

describe("tax on a Canadian bill", () => {
  // CRA GST/HST interpretation 125136 (28 November 2011), Excise Tax Act s. 165.2(2): combined or each part apart, either
  // is accepted when consistent (question read; amounts derived).
  test("31.95 in Ontario is 4.15 of tax at 13 %, 4.16 with its parts rounded apart", () => {
    expect(shown(of("31.95"), HST)).toEqual(["4.15"]);
    const parts = [component("federal part", "5"), component("provincial part", "8")];
    expect(total(of("31.95"), ...parts)).toBe("36.11");
    expect(total({ ...of("31.95"), taxRounding: "per-bill-together" }, ...parts)).toBe("36.10");
  });

  // Budget 2012 (Canada), "Rounding", worked example (read).
  test("1.83 and 2.86 with 5 % are 4.92 by card and 4.90 in cash", () => {
    expect(shown(of("1.83", "2.86"), GST)).toEqual(["0.23"]);
    expect(total(of("1.83", "2.86"), GST)).toBe("4.92");
    const cash = figuresOf({ ...of("1.83", "2.86"), paidInCash: true }, billTerms([GST]));
    expect(cents([cash.total, cash.due])).toEqual(["4.92", "4.90"]);
  });

  // Revenu Quebec, "Calculating the Taxes" (read); in one stage at 14.975 % derived.
  test("100 in Quebec is 5.00 and 9.98, 114.98 in all, and 14.98 in one stage", () => {
    expect(shown(of("100"), GST, QST)).toEqual(["5.00", "9.98"]);
    expect(total(of("100"), GST, QST)).toBe("114.98");
    expect(shown(of("100"), component("both", "14.975"))).toEqual(["14.98"]);
  });

  // Derived: the QST before 2013, 9.5 % on the price and the GST.
  test("9.5 % on price and GST is 9.98 on 100, as 9.975 % on the price is", () => {
    const before2013 = component("QST", "9.5", { base: "price-plus-other-tax" });
    expect(shown(of("100"), GST, before2013)).toEqual(["5.00", "9.98"]);
  });

  // Derived.
  test("99.99 in British Columbia is 5.00 and 7.00, 111.99 in all", () => {
    expect(shown(of("99.99"), GST, PST)).toEqual(["5.00", "7.00"]);
    expect(total(of("99.99"), GST, PST)).toBe("111.99");
  });

  // Revenu Quebec's half-cent rule (read); amounts derived. Rounding to even would give 0.02 and 0.00.
  test.each([
    ["0.50", "0.03"],
    ["0.10", "0.01"],
  ])("%s bears %s at 5 %%", (price, tax) => {
    expect(shown(of(price), GST)).toEqual([tax]);
  });

  // Derived.
  test("10 % off 250.00, then 13 %, is 254.25", () => {
    const off = lineAt("250", 1, { discount: { percent: decimal(10), amount: null } });
    expect(total(billOf([off]), HST)).toBe("254.25");
  });

  // Derived: the tax inside an amount is rate / (1 + rate) of it; 14.69 in 113.00 would be wrong.
  test.each([
    ["113.00", "13", "13.00"],
    ["115.00", "15", "15.00"],
    ["105.00", "5", "5.00"],
    ["1000.00", "13", "115.04"],
  ])("%s with %s %% in it holds %s", (price, rate, held) => {
    const bill: Bill = { ...of(price), taxIncluded: true };
    expect(shown(bill, component("HST", rate))).toEqual([held]);
    expect(total(bill, component("HST", rate))).toBe(decimal(price).toFixed(2));
  });
});

describe("what a bill costs", () => {
  const registered: readonly Registration[] = [{ tax: "GST", from: null, until: null }];
  function lotsOf(
    price: string,
    components: readonly TaxComponent[],
    registrations: readonly Registration[],
  ) {
    const bill = billOf([lineAt(price)]);
    const terms = billTerms(components);
    const figures = figuresOf(bill, terms);
    const [line, share] = [figures.lines[0], lineShares(bill, terms, figures)?.[0]];
    if (line === undefined || share === undefined) throw new Error("the bill has one line");
    const paid = linePaid(bill, line, share);
    const lot = lotOf(1, 0, { paid, orderedOn: bill.on, storeId: "there" });
    const place = region("CA-ZZ", [...components]);
    const stores = [store("there", { taxRegion: "CA-ZZ" })];
    const cost = lotCost(lot, SHEET, valuation({ regions: [place], stores, registrations }));
    return cost.known ? cents([roundedTo(cost.cost), roundedTo(cost.cash)]) : [cost.reason];
  }
  const roundedTo = ({ amount }: { amount: ReturnType<typeof decimal> }) => ({
    amount: amount.toDecimalPlaces(9),
  });

  // An accounting firm's note on B.C. PST for contractors, 2017: 5,000 + 350 = 5,350 (read); "How to calculate your
  // ITCs", CRA, and Gov. of B.C., PST FAQs: the GST comes back, the PST does not (read); 5,600 derived.
  test("5,000 in British Columbia costs a registrant 5,350 and anyone else 5,600; cash out is 5,600 for both", () => {
    expect(lotsOf("5000", [GST, PST], registered)).toEqual(["5350.00", "5600.00"]);
    expect(lotsOf("5000", [GST, PST], [])).toEqual(["5600.00", "5600.00"]);
  });

  // Derived. The naive cost of a registrant is 5,650.
  test("5,000 in Ontario costs a registrant 5,000 and anyone else 5,650", () => {
    expect(lotsOf("5000", [HST], registered)).toEqual(["5000.00", "5650.00"]);
    expect(lotsOf("5000", [HST], [])).toEqual(["5650.00", "5650.00"]);
  });

  // Derived; how a restocking fee is taxed varies (from memory), so it is said on the line.
  test("two handed back at 20.00 less 15 % refund 34.00 and 4.42 of tax", () => {
    const back = lineAt("20", 2, { returned: handedBack({ percent: decimal(15) }) });
    expect(shown(billOf([back]), HST)).toEqual(["-4.42"]);
    expect(total(billOf([back]), HST)).toBe("-38.42");
  });

  // Derived: 200 - 2 x 20 x 0.85 = 166.00 for 8. The naive cost is 200 for 10.
  test("ten at 20.00 of which two were handed back at 15 % cost 166.00 for eight, 20.75 each", () => {
    const back = lineAt("20", 2, { returned: handedBack({ percent: decimal(15) }) });
    const { cost } = figuresOf(billOf([lineAt("20", 10), back]));
    expect(cost.amount.toFixed(2)).toBe("166.00");
    expect(cost.amount.dividedBy(8).toFixed(2)).toBe("20.75");
  });

  // Derived; that a forfeited deposit becomes cost is from memory.
  test("two pallets at 25.00 take 50.00 more cash and cost nothing until forfeited", () => {
    const with2 = (forfeited: boolean) =>
      figuresOf(billOf([lineAt("100")], { deposits: [deposit(50, { forfeited })] }));
    expect(cents([with2(false).total, with2(false).cost])).toEqual(["150.00", "100.00"]);
    expect(with2(true).cost.amount.toFixed(2)).toBe("150.00");
  });

  // Derived; that its tax follows a forfeited deposit where the receipt charged one is from memory. Naively 50.00 at once.
  test("forfeited a month later, pallets at 50.00 and their tax are cost from that day and not before", () => {
    const bill = billOf([lineAt("100")], { deposits: [deposit(50, { taxable: true })] });
    const lost = { id: "lost", billId: "bill", deposit: 0, kind: "forfeited", amount: decimal(50) } as const;
    const events = [{ ...lost, on: localDate("2024-07-03"), note: null, sequence: 1 }];
    const costOn = (day: string) =>
      depositsOn(bill, figuresOf(bill, billTerms([HST])), events, localDate(day)).cost.amount.toFixed(2);
    expect([costOn("2024-07-02"), costOn("2024-07-03")]).toEqual(["113.00", "169.50"]);
  });

  // Derived: a fee of 6.00 whose tax the store keeps back, and one it does not.
  test("a restocking fee given as an amount, taxed or not, refunds 38.42 or 39.20 of 45.20", () => {
    const back = (taxable: boolean) =>
      lineAt("20", 2, { returned: handedBack({ amount: decimal(6), taxable }) });
    expect(total(billOf([back(true)]), HST)).toBe("-38.42");
    expect(total(billOf([back(false)]), HST)).toBe("-39.20");
  });

  // Derived: 537.60 looks cheaper than 601.44 until the delivery is counted.
  test("28 at 19.20 with 85.00 delivery cost more than 28 at 21.48 without", () => {
    const fees = [billedFee("delivery", { amount: decimal(85) })];
    expect(total(billOf([lineAt("19.20", 28)], { fees }))).toBe("622.60");
    expect(total(billOf([lineAt("21.48", 28)]))).toBe("601.44");
  });

  // Derived: the third is stock, not a saving.
  test("three for the price of two at 10.00 cost 20.00, and 3 for 20.00 are 6.67 each only as three", () => {
    const free = { amount: null, percent: decimal(100) };
    expect(total(billOf([lineAt("10", 2), lineAt("10", 1, { discount: free })]))).toBe("20.00");
    expect(total(billOf([lineAt(0, 3, { price: priceFor("20.00", 3) })]))).toBe("20.00");
    expect(total(billOf([lineAt(0, 1, { price: priceFor("20.00", 3) })]))).toBe("6.67");
  });

  // Common practice: a blank is no price of nothing.
  test("a missing or zero price is refused", () => {
    const id = "00000000-0000-4000-8000-000000000001";
    const bill = (price: object) =>
      billEntry.safeParse({
        storeId: id,
        on: "2024-06-03",
        currency: "CAD",
        lines: [{ materialId: id, quantity: "1", unit: "each", price }],
      }).success;
    expect([bill({}), bill({ amount: "" }), bill({ amount: "0.00" }), bill({ amount: "0.01" })]).toEqual([
      false,
      false,
      false,
      true,
    ]);
  });
});

describe("cash", () => {
  // Royal Canadian Mint, rounding; Budget 2012 (Canada), "Rounding" (read): on the total, never on items or taxes.
  test.each([
    ["4.92", "4.90"],
    ["4.93", "4.95"],
    ["4.97", "4.95"],
    ["4.98", "5.00"],
    ["19.98", "20.00"],
    ["0.02", "0.00"],
    ["248.62", "248.60"],
  ])("a bill of %s is %s in cash", (asked, paid) => {
    const figures = figuresOf({ ...of(asked), paidInCash: true });
    expect(cents([figures.total, figures.due])).toEqual([asked, paid]);
  });
});

describe("tax on a bill in the United States", () => {
  // Streamlined Sales and Use Tax Agreement s. 324 (read): the third decimal up when greater than four (amount derived).
  test("10.37 at 7.25 % bears 0.75", () => {
    expect(shown({ ...of("10.37"), currency: "USD" }, sales("7.25"))).toEqual(["0.75"]);
  });

  // The same section (read): by item or by invoice, state and local together or not.
  test("by item or by invoice are both a seller's choice", () => {
    const bill: Bill = { ...of("5.50", "5.50", "5.46"), currency: "USD" };
    expect(shown({ ...bill, taxRounding: "per-line" }, sales("13"))).toEqual(["2.15"]);
    expect(shown({ ...bill, taxRounding: "per-bill" }, sales("13"))).toEqual(["2.14"]);
  });
});

// Measured with Node 20.20.2 against whole numbers: what binary floating point makes of these is a cent less.
describe("half cents that floating point loses", () => {
  test.each([
    ["0.70", "5", "0.04"],
    ["2.90", "5", "0.15"],
    ["20.70", "5", "1.04"],
    ["1.50", "15", "0.23"],
    ["4.50", "13", "0.59"],
    ["260.00", "14.975", "38.94"],
    ["2.00", "7.25", "0.15"],
  ])("%s at %s %% bears %s", (price, rate, tax) => {
    expect(shown(of(price), sales(rate))).toEqual([tax]);
  });
});
