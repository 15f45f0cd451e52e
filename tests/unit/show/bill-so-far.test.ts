import { describe, expect, test } from "vitest";
import type { AisleFacts } from "../../../lib/show/aisle-facts.ts";
import { billSoFar, type TypedBill } from "../../../lib/show/bill-so-far.ts";
import { day } from "../../support/price-example.ts";

const component = (name: string, ratePercent: string) => ({
  name,
  ratePercent,
  from: day("2013-01-01"),
  until: null,
  base: "price" as const,
  recoverable: true,
});
const shop = { currency: "CAD", pricesIncludeTax: false, discounts: [], importCharges: null } as const;
const FACTS: AisleFacts = {
  today: day("2026-03-02"),
  homeCurrency: "CAD",
  taxRegion: "CA-QC",
  registrations: [],
  regions: [
    {
      code: "CA-QC",
      country: "CA",
      completeFrom: day("2013-01-01"),
      components: [component("GST", "5"), component("QST", "9.975")],
    },
  ],
  rates: [],
  stores: [
    { id: "quebec", name: "Kestrel Hill Supply", taxRegion: "CA-QC", ...shop },
    { id: "elsewhere", name: "Lantern Line Lumber", taxRegion: "CA-ZZ", ...shop },
  ],
  materials: [],
};
const line = (price: string, quantity = "1") => ({
  text: "Cutting",
  quantity,
  unit: "each",
  price: { amount: price },
});
const typed = (given: Partial<TypedBill>): TypedBill => ({
  storeId: "quebec",
  on: "2026-03-01",
  currency: "CAD",
  taxIncluded: false,
  paidInCash: false,
  lines: [],
  fees: [],
  deposits: [],
  rebates: [],
  ...given,
});
const read = (given: Partial<TypedBill>) => billSoFar(typed(given), FACTS, "en-CA");

describe("a bill while it is typed", () => {
  test("comes to nothing before a line can be read", () => {
    expect(read({})).toBeNull();
    expect(read({ lines: [{ text: "Cutting" }] })).toBeNull();
  });

  test("is reckoned from the lines that can be read, each shown at its own row", () => {
    const soFar = read({ lines: [line("60.00"), line("1.2.3"), line("4.00", "10")] });
    expect(soFar?.rows).toEqual(["60.00", null, "40.00"]);
    expect(soFar?.text).toMatchObject({ subtotal: "100.00", total: "114.98" });
    expect(soFar?.text.taxes.map(({ name, amount }) => [name, amount])).toEqual([
      ["GST 5 %", "5.00"],
      ["QST 9.975 %", "9.98"],
    ]);
  });

  test("leaves out a fee without a name or amount, and a printed total that cannot be read", () => {
    const fees = [
      { name: "", amount: "5", taxable: true },
      { name: "Delivery", amount: "20", taxable: false },
    ];
    const soFar = read({ lines: [line("100")], fees, printedTotal: "-1" });
    expect(soFar?.text).toMatchObject({ total: "134.98", reconciled: { state: "no-printed-total" } });
  });

  test("says how it stands against the printed total", () => {
    const off = read({ lines: [line("100")], printedTotal: "114.99" });
    expect(off?.text.reconciled).toMatchObject({ state: "differs", difference: "+0.01", why: "not-known" });
    expect(read({ lines: [line("100")], printedTotal: "114.98" })?.text.reconciled.state).toBe("reconciled");
  });

  test("without a known tax has no tax in it, and says so", () => {
    for (const given of [{ storeId: "" }, { storeId: "elsewhere" }, { on: "2012-12-31" }])
      expect(read({ lines: [line("100")], ...given })).toMatchObject({
        taxKnown: false,
        text: { total: "100.00", taxes: [] },
      });
  });

  test("delivered elsewhere is taxed there, not at the store", () => {
    const soFar = read({ storeId: "elsewhere", taxRegion: "CA-QC", lines: [line("100")] });
    expect(soFar).toMatchObject({ taxKnown: true, text: { total: "114.98" } });
  });

  test("says what the taxes come to the seller's way, and as it is set", () => {
    // GST 0.005 and QST 0.009975 a line: 0.02 each line by itself, 0.03 on the whole.
    const off = read({ lines: [line("0.10"), line("0.10")], printedTotal: "0.24" });
    expect(off?.text.reconciled).toMatchObject({
      why: "another-rounding",
      roundings: ["per-line"],
      taxes: { met: "0.04", reckoned: "0.03" },
    });
  });

  test("before its day is typed is taxed as of today", () => {
    expect(read({ lines: [line("100")], on: "" })).toMatchObject({
      taxKnown: true,
      text: { total: "114.98" },
    });
  });

  test("in cash says what is handed over", () => {
    expect(read({ lines: [line("100")], paidInCash: true })?.text.due).toBe("115.00");
  });
});
