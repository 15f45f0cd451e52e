import { expect, test } from "vitest";
import type { Bill } from "../../../lib/bills/bill.ts";
import { reconciliation } from "../../../lib/bills/reconciliation.ts";
import { decimal } from "../../../lib/decimal.ts";
import { billOf, billTerms, figuresOf, GST, HST, lineAt, PST, QST } from "../../support/bill-example.ts";

const three = [lineAt("5.50"), lineAt("5.50"), lineAt("5.46")];
function against(printed: string | null, given: Partial<Bill> = {}, components = [HST], lines = three) {
  const bill = billOf(lines, { printedTotal: printed === null ? null : decimal(printed), ...given });
  const terms = billTerms(components);
  const found = reconciliation(bill, terms, figuresOf(bill, terms));
  return found.state === "differs"
    ? {
        ...found,
        difference: found.difference.amount.toFixed(2),
        because:
          found.because.why === "another-rounding"
            ? {
                ...found.because,
                met: found.because.met.amount.toFixed(2),
                reckoned: found.because.reckoned.amount.toFixed(2),
              }
            : found.because,
      }
    : { state: found.state };
}

test("a bill without a printed total has nothing to meet", () => {
  expect(against(null).state).toBe("no-printed-total");
});

test("a bill that comes to its printed total to the cent is reconciled", () => {
  expect(against("18.60").state).toBe("reconciled");
});

test("a cent too much is there because the seller rounds per line", () => {
  expect(against("18.61")).toEqual({
    state: "differs",
    difference: "0.01",
    because: {
      why: "another-rounding",
      roundings: ["per-line", "per-line-together"],
      met: "2.15",
      reckoned: "2.14",
    },
  });
});

test("a cent too little is there because the seller rounds on the bill", () => {
  expect(against("18.60", { taxRounding: "per-line" })).toEqual({
    state: "differs",
    difference: "-0.01",
    because: {
      why: "another-rounding",
      roundings: ["per-bill", "per-bill-together"],
      met: "2.14",
      reckoned: "2.15",
    },
  });
});

test("two components rounded together are told from two rounded apart", () => {
  const lines = [lineAt("0.10")];
  expect(against("0.12", {}, [GST, QST], lines).state).toBe("reconciled");
  expect(against("0.11", {}, [GST, QST], lines)).toMatchObject({
    because: { why: "another-rounding", roundings: ["per-bill-together", "per-line-together"] },
  });
});

test("paid in cash, both the total and its coins are met", () => {
  expect(against("18.60", { paidInCash: true }).state).toBe("reconciled");
  expect(against("18.60", { paidInCash: true, taxRounding: "per-line" }).state).toBe("reconciled");
});

test("a total rounded to five cents is known for cash", () => {
  expect(against("4.90", {}, [GST], [lineAt("1.83"), lineAt("2.86")])).toEqual({
    state: "differs",
    difference: "-0.02",
    because: { why: "cash-rounding" },
  });
});

test("prices that hold the tax are told from prices that do not", () => {
  expect(against("16.46")).toMatchObject({ because: { why: "tax-included" } });
  expect(against("18.60", { taxIncluded: true })).toMatchObject({ because: { why: "tax-not-included" } });
});

test("anything else is said to be not known, with its amount", () => {
  expect(against("20.00", {}, [GST, PST])).toEqual({
    state: "differs",
    difference: "1.57",
    because: { why: "not-known" },
  });
});
