import { describe, expect, test } from "vitest";
import { type LocalDate, localDate } from "../../lib/calendar/local-date.ts";
import { decimal } from "../../lib/decimal.ts";
import { add, type Money, money, roundToMinorUnit, subtract, times } from "../../lib/money/money.ts";
import type { TaxComponent } from "../../lib/tax/region.ts";
import { CANADA } from "../../lib/tax/regions-ca.ts";
import { baseOfInclusive, billTaxes, isRecovered, taxes, taxOn } from "../../lib/tax/tax.ts";
import { tablesOf } from "../support/shared-data.ts";

function inForce(province: string, day: LocalDate): readonly TaxComponent[] {
  const region = CANADA.find(({ code }) => code === `CA-${province}`);
  const tax = region && taxOn(region, day);
  if (!tax?.known) throw new Error(`the tax of ${province} on ${day} is not known`);
  return tax.components;
}
/** A tax of its own, for worked examples whose place or split is not that of the table. */
function tax(name: string, ratePercent: string): TaxComponent {
  const from = localDate("1991-01-01");
  const evidence = "the worked example";
  return {
    name,
    ratePercent: decimal(ratePercent),
    from,
    until: null,
    base: "price",
    recoverable: true,
    evidence,
    fromMemory: false,
  };
}
const cad = (amount: string): Money => money(amount, "CAD");
const total = (amounts: readonly Money[]) => amounts.reduce(add, cad("0")).amount;
const shown = (
  bases: readonly string[],
  components: readonly TaxComponent[],
  rounding: "per-bill" | "per-line",
) =>
  billTaxes(
    bases.map((base) => ({ base: cad(base), exempt: [] })),
    components,
    rounding,
  ).map(({ amount }) => amount);

const today = localDate("2024-06-01");
const GST = tax("GST", "5");

describe("Canada", () => {
  // CRA GST/HST interpretation 125136 (28 November 2011), Excise Tax Act s. 165.2(2): the combined rate, or each part
  // rounded apart: either is accepted when used consistently (question read, amounts derived).
  test("31.95 in Ontario bears 4.15 at 13 %, or 1.60 and 2.56 apart", () => {
    expect(shown(["31.95"], inForce("ON", today), "per-bill").map(({ amount }) => amount.toString())).toEqual(
      ["4.15"],
    );
    const apart = shown(["31.95"], [GST, tax("provincial part", "8")], "per-bill");
    expect(apart.map(({ amount }) => amount.toString())).toEqual(["1.6", "2.56"]);
    expect(total(apart).toString()).toBe("4.16");
  });

  // Budget 2012 (Canada), "Rounding", worked example: tax 0.23 on 1.83 and 2.86 together, 4.92 in all (read).
  test("1.83 and 2.86 bear 0.23 of GST together, 4.92 in all", () => {
    expect(total(shown(["1.83", "2.86"], [GST], "per-bill")).toString()).toBe("0.23");
    expect(total([cad("1.83"), cad("2.86"), ...shown(["1.83", "2.86"], [GST], "per-bill")]).toString()).toBe(
      "4.92",
    );
  });

  // Revenu Quebec, "Calculating the Taxes": 100 + 5.00 + 9.98 = 114.98; both taxes on the price (read).
  test("100.00 in Quebec bears 5.00 and 9.98, 114.98 in all", () => {
    const quebec = shown(["100"], inForce("QC", today), "per-bill");
    expect(quebec.map(({ amount }) => amount.toFixed(2))).toEqual(["5.00", "9.98"]);
    expect(total([cad("100"), ...quebec]).toString()).toBe("114.98");
    expect(total(shown(["100"], [tax("both at once", "14.975")], "per-bill")).toString()).toBe("14.98");
  });

  // Derived: 9.5 % of 105 is 9.975 % of 100, which is why the rate changed with the base in 2013.
  test("the QST of 2012 on price and GST is that of 2013 on the price", () => {
    const qst = (day: string) =>
      taxes(cad("100"), inForce("QC", localDate(day)), []).find(({ component }) => component.name === "QST");
    expect(qst("2012-12-31")?.amount.amount.toString()).toBe("9.975");
    expect(qst("2013-01-01")?.amount.amount.toString()).toBe("9.975");
  });

  // Derived from 5 % and 7 % on the price.
  test("99.99 in British Columbia bears 5.00 and 7.00, 111.99 in all", () => {
    const bill = shown(["99.99"], inForce("BC", today), "per-bill");
    expect(total([cad("99.99"), ...bill]).toString()).toBe("111.99");
  });

  // Revenu Quebec's half-cent rule (read); amounts derived. Rounding to even would give 0.02 and 0.00.
  test("half a cent rounds up", () => {
    expect(total(shown(["0.50"], [GST], "per-bill")).toString()).toBe("0.03");
    expect(total(shown(["0.10"], [GST], "per-bill")).toString()).toBe("0.01");
  });

  // Derived: the tax inside an amount is not the rate of the amount (113.00 at 13 % holds 13.00, not 14.69).
  test.each([
    ["113.00", "13", "13"],
    ["115.00", "15", "15"],
    ["105.00", "5", "5"],
    ["1000.00", "13", "115.04"],
  ])("%s with %s percent tax in it holds %s", (amount, rate, held) => {
    const base = roundToMinorUnit(baseOfInclusive(cad(amount), [tax("HST", rate)], []));
    expect(subtract(cad(amount), base).amount.toString()).toBe(held);
  });

  // A general renovation supplier's check, derived: tax in against tax out.
  test("24.00 before 13 % tax is dearer than 26.50 with it", () => {
    const with13 = add(cad("24.00"), taxes(cad("24.00"), [tax("HST", "13")], [])[0]?.amount ?? cad("0"));
    expect(with13.amount.toString()).toBe("27.12");
    expect(roundToMinorUnit(baseOfInclusive(cad("26.50"), [tax("HST", "13")], [])).amount.toString()).toBe(
      "23.45",
    );
  });
});

describe("what is cost", () => {
  const registered = [{ tax: "GST", from: null, until: null }];
  const cost = (amount: string, province: string, registrations: typeof registered) =>
    taxes(cad(amount), inForce(province, today), [])
      .filter(({ component }) => !isRecovered(component, registrations, today))
      .reduce((sum, { amount: part }) => add(sum, part), cad(amount)).amount;

  // An accounting firm's note on B.C. PST for contractors, 2017: 5,000 + 350 PST = 5,350 (read). Gov. of B.C., PST FAQs
  // (2024): no PST credit; CRA, "How to calculate your ITCs": GST comes back to a registrant (read); 5,600 derived.
  test("5,000 of roofing in British Columbia costs a registrant 5,350 and anyone else 5,600", () => {
    expect(cost("5000", "BC", registered).toString()).toBe("5350");
    expect(cost("5000", "BC", []).toString()).toBe("5600");
  });

  // Derived: the cash out is the same for both, 5,600, until the credit comes.
  test("5,000 of roofing in British Columbia takes 5,600 in cash, registered or not", () => {
    const bill = shown(["5000"], inForce("BC", today), "per-bill");
    expect(total([cad("5000"), ...bill]).toString()).toBe("5600");
  });

  // Derived.
  test("5,000 in Ontario costs a registrant 5,000 and anyone else 5,650", () => {
    expect(cost("5000", "ON", registered).toString()).toBe("5000");
    expect(cost("5000", "ON", []).toString()).toBe("5650");
  });

  // Derived; how a restocking fee is taxed varies (from memory), here the tax is refunded on the net.
  test("two returned at 20.00 less 15 % restocking refund 34.00 and 4.42 of tax", () => {
    const refund = times(cad("40"), "0.85");
    const refunded = [
      refund,
      ...billTaxes([{ base: refund, exempt: [] }], [tax("HST", "13")], "per-bill").map(
        ({ amount }) => amount,
      ),
    ];
    expect(total(refunded).toString()).toBe("38.42");
  });
});

describe("United States", () => {
  // Streamlined Sales and Use Tax Agreement s. 324 (as enacted in R.I., N.D. and Kansas): to the third decimal, up when
  // it is greater than four (read): the same as half up on the whole figure.
  test("10.37 at 7.25 % bears 0.75", () => {
    const [sales] = billTaxes(
      [{ base: money("10.37", "USD"), exempt: [] }],
      [tax("sales tax", "7.25")],
      "per-bill",
    );
    expect(sales?.amount.amount.toString()).toBe("0.75");
  });
});

// The compiled table, with its evidence per row, frozen in tests/references/frozen/ca-sales-tax.csv.
describe("the Canadian table", () => {
  const ours = CANADA.flatMap(({ code, components }) =>
    components.map(({ name, ratePercent, from, until, base, evidence }) =>
      [
        code.slice(3),
        name,
        ratePercent.toString(),
        from,
        until ?? "",
        base === "price" ? "price" : "price plus GST",
        evidence,
      ].join(" | "),
    ),
  );

  test("is row for row the compiled one, each with its evidence", () => {
    for (const rows of tablesOf("ca-sales-tax.csv", "tax/ca_sales_tax_rates.csv")) {
      const compiled = rows.map((row) =>
        [
          row.jurisdiction,
          row.component,
          row.rate_percent,
          row.valid_from,
          row.valid_to,
          row.base,
          row.evidence,
        ].join(" | "),
      );
      expect(compiled.length).toBe(60);
      expect([...ours].sort()).toEqual(compiled.sort());
    }
  });
});
