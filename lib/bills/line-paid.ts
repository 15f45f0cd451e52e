import { type Decimal, ZERO } from "../decimal.ts";
import type { Fee } from "../prices/observation.ts";
import type { BilledTax, Paid } from "../stock/lot.ts";
import type { TaxAmount } from "../tax/tax.ts";
import type { Bill } from "./bill.ts";
import type { LineFigures } from "./bill-figures.ts";
import type { LineShare } from "./line-shares.ts";

function untaxed(name: string, amount: Decimal): Fee {
  return { name, amount, percent: null, basis: "order", freeFrom: null, taxable: false };
}

/** Taxes added up by their names, in the order they first come; what is nothing is left out. */
function byName(taxes: readonly TaxAmount[]): BilledTax[] {
  const sums = new Map<string, Decimal>();
  for (const { component, amount } of taxes)
    sums.set(component.name, (sums.get(component.name) ?? ZERO).plus(amount.amount));
  return [...sums].flatMap(([name, amount]) => (amount.isZero() ? [] : [{ name, amount }]));
}

/** The taxes one line bears: on itself, and its parts of those on what is beside the lines. */
export function taxesOfLine(line: LineFigures, share: LineShare): BilledTax[] {
  return byName([...line.taxes, ...share.fees.flatMap(({ taxes }) => taxes)]);
}

/**
 * What a lot of one line was paid: the same cents as the line bears of the bill, each tax as the seller rounded it.
 *     amount = net + taxable fees + shares of the taxed fees;  fees = what bears no tax, the rebate as less
 *     taxes = the line's and its parts of those on the fees, each component by its name
 * So that the lots of a bill sum to what it cost, whatever way it rounds and whichever of the taxes come back. Units: the
 * bill's currency. Rounds: never; all parts are minor units already. Source: rules.md R3, R9.
 */
export function linePaid(bill: Bill, line: LineFigures, share: LineShare): Paid {
  const taxed = share.fees.filter(({ taxable }) => taxable);
  const fees = [
    ...line.fees.filter(({ taxable }) => !taxable).map(({ name, amount: fee }) => untaxed(name, fee.amount)),
    ...share.fees.filter(({ taxable }) => !taxable).map((one) => untaxed(one.name, one.amount.amount)),
    untaxed(bill.rebates.map(({ name }) => name).join(", "), share.rebate.amount.negated()),
  ].filter(({ amount: fee }) => fee?.isZero() === false);
  return {
    amount: taxed.reduce((sum, one) => sum.plus(one.amount.amount), line.taxable.amount),
    currency: bill.currency,
    taxIncluded: bill.taxIncluded,
    taxRegion: bill.taxRegion,
    exemptFrom: line.exempt,
    fees,
    taxes: taxesOfLine(line, share),
  };
}
