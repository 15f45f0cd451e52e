import { type Decimal, ZERO } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import { cashTotal } from "../money/cash-rounding.ts";
import { type Money, money, sum } from "../money/money.ts";
import type { TaxComponent } from "../tax/region.ts";
import type { TaxAmount } from "../tax/tax.ts";
import type { Bill, TaxRounding } from "./bill.ts";
import { type TaxedItem, taxesOfBill } from "./bill-taxes.ts";
import { type LineAmounts, lineAmounts, orderFeeAmount } from "./line-amounts.ts";

/** The tax something on a bill bears: all of it, and each component's part of it. */
export type TaxBorne = Readonly<{ tax: Money; taxes: readonly TaxAmount[] }>;
/** An amount of the bill beside its lines, with the tax it bears. */
export type BesideLines = Readonly<{ name: string; amount: Money }> & TaxBorne;
export type LineFigures = LineAmounts & TaxBorne;

/**
 * A bill reckoned. total: what the seller asks, deposits in it. due: the total, or its coins where it is paid in cash.
 * cost: the total without deposits that come back and without the rebates claimed afterwards.
 */
export type BillFigures = Readonly<{
  lines: readonly LineFigures[];
  fees: readonly BesideLines[];
  deposits: readonly BesideLines[];
  subtotal: Money;
  taxes: readonly TaxAmount[];
  total: Money;
  due: Money;
  refundable: Money;
  rebates: Money;
  cost: Money;
}>;

/** What a bill is reckoned with: the components in force where and when it was bought, and the materials of its lines. */
export type BillTerms = Readonly<{
  components: readonly TaxComponent[];
  materials: ReadonlyMap<string, Material>;
}>;

/** Some other rounding than the bill's own, and whether the prices hold the tax: to try what would meet a printed total. */
export type Otherwise = Readonly<{ taxRounding?: TaxRounding; taxIncluded?: boolean }>;

/**
 * A bill's lines, fees, deposits, taxes and totals.
 *     subtotal = sum of net;  total = subtotal + fees + deposits + taxes (already in the prices where tax is included)
 *     cost = total - refundable deposits and their tax - rebates;  due = total, in cash to the smallest coin
 * Per line each line, fee and deposit is an item of its own to round on. Units: the bill's currency. Rounds: nets and
 * fees once each, taxes as the seller does; cash only in `due`. null: a line whose price cannot be read in its unit.
 * Source: rules.md R1, R4; deposits as cash and rebates off the cost as in IAS 2.11 (from memory).
 */
export function billFigures(bill: Bill, terms: BillTerms, otherwise: Otherwise = {}): BillFigures | null {
  const { currency } = bill;
  const lines: LineAmounts[] = [];
  for (const line of bill.lines) {
    const amounts = lineAmounts(line, bill, terms.materials.get(line.materialId ?? ""));
    if (amounts === null) return null;
    lines.push(amounts);
  }
  const included = otherwise.taxIncluded ?? bill.taxIncluded;
  const subtotal = sum(
    lines.map(({ net }) => net),
    currency,
  );
  const fees = bill.fees.map((fee) => ({ ...fee, money: orderFeeAmount(fee, subtotal) }));
  const deposits = bill.deposits.map((deposit) => ({ ...deposit, money: money(deposit.amount, currency) }));

  const beside = [...fees, ...deposits];
  const items: TaxedItem[] = [
    ...lines.map(({ taxable, exempt }) => ({ amount: taxable, exempt })),
    ...beside.filter(({ taxable }) => taxable).map((one) => ({ amount: one.money, exempt: [] })),
  ];
  const { shown, ofItems } = taxesOfBill(items, {
    components: terms.components,
    included,
    rounding: otherwise.taxRounding ?? bill.taxRounding,
  });
  let item = lines.length;
  const borne = (taxes: readonly TaxAmount[] = []): TaxBorne => {
    const amounts = taxes.map(({ amount }) => amount);
    return { tax: sum(amounts, currency), taxes };
  };
  const taxed = (one: (typeof beside)[number]): BesideLines => {
    const taxes = one.taxable ? ofItems[item++] : undefined;
    return { name: one.name, amount: one.money, ...borne(taxes) };
  };
  const billedFees = fees.map(taxed);
  const billedDeposits = deposits.map(taxed);

  const all = (values: readonly Decimal[]) => values.reduce((total, value) => total.plus(value), ZERO);
  const withTax = ({ amount, tax }: BesideLines) =>
    included ? amount.amount : amount.amount.plus(tax.amount);
  const lineFees = lines.flatMap(({ fees: own }) => own.map(({ amount }) => amount.amount));
  const added = included ? [] : shown.map(({ amount }) => amount.amount);
  const total = all([subtotal.amount, ...lineFees, ...beside.map((one) => one.money.amount), ...added]);
  const refundable = all(
    billedDeposits.filter((_, at) => bill.deposits[at]?.forfeited === false).map(withTax),
  );
  const rebates = all(bill.rebates.map(({ amount }) => amount));
  const asked = money(total, currency);
  return {
    lines: lines.map((line, at) => ({ ...line, ...borne(ofItems[at]) })),
    fees: billedFees,
    deposits: billedDeposits,
    subtotal,
    taxes: shown,
    total: asked,
    due: bill.paidInCash ? cashTotal(asked) : asked,
    refundable: money(refundable, currency),
    rebates: money(rebates, currency),
    cost: money(total.minus(refundable).minus(rebates), currency),
  };
}
