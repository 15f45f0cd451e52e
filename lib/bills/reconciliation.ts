import { cashTotal } from "../money/cash-rounding.ts";
import { add, type Money, money, subtract, sum } from "../money/money.ts";
import { type Bill, TAX_ROUNDINGS, type TaxRounding } from "./bill.ts";
import { type BillFigures, type BillTerms, billFigures } from "./bill-figures.ts";

/**
 * Why a printed total is not the one reckoned: another way to round the taxes (met: what they come to that way; reckoned:
 * as the bill says), cash, tax in the prices, or not known.
 */
export type Difference =
  | Readonly<{ why: "another-rounding"; roundings: readonly TaxRounding[]; met: Money; reckoned: Money }>
  | Readonly<{ why: "cash-rounding" }>
  | Readonly<{ why: "tax-included" | "tax-not-included" }>
  | Readonly<{ why: "not-known" }>;

/** null printed: nothing to compare with. difference: printed - reckoned. */
export type Reconciliation =
  | Readonly<{ state: "no-printed-total" }>
  | Readonly<{ state: "reconciled"; total: Money }>
  | Readonly<{ state: "differs"; difference: Money; because: Difference }>;

/** Roundings first: they are the likeliest, and the only ones a seller may choose among. */
function reason(bill: Bill, terms: BillTerms, figures: BillFigures, printed: Money): Difference {
  const meets = (total: Money | undefined) => total?.amount.equals(printed.amount) === true;
  const roundings = TAX_ROUNDINGS.filter((taxRounding) =>
    meets(billFigures(bill, terms, { taxRounding })?.total),
  );
  if (roundings.length > 0) {
    // With the tax added to the prices, all that rounding changes of a total is its taxes.
    const reckoned = sum(
      figures.taxes.map(({ amount }) => amount),
      bill.currency,
    );
    return {
      why: "another-rounding",
      roundings,
      met: add(reckoned, subtract(printed, figures.total)),
      reckoned,
    };
  }
  if (meets(cashTotal(figures.total))) return { why: "cash-rounding" };
  const taxIncluded = !bill.taxIncluded;
  const turned = TAX_ROUNDINGS.some((taxRounding) =>
    meets(billFigures(bill, terms, { taxIncluded, taxRounding })?.total),
  );
  return turned ? { why: taxIncluded ? "tax-included" : "tax-not-included" } : { why: "not-known" };
}

/**
 * Whether a bill comes to its printed total, to the cent, and if not by how much and why.
 *     difference = printed - total;  paid in cash, the total in coins is met too
 * Units: the bill's currency. Rounds: never. Source: rules.md R1.
 */
export function reconciliation(bill: Bill, terms: BillTerms, figures: BillFigures): Reconciliation {
  if (bill.printedTotal === null) return { state: "no-printed-total" };
  const printed = money(bill.printedTotal, bill.currency);
  if ([figures.total, figures.due].some(({ amount }) => amount.equals(printed.amount)))
    return { state: "reconciled", total: printed };
  return {
    state: "differs",
    difference: subtract(printed, figures.total),
    because: reason(bill, terms, figures, printed),
  };
}
