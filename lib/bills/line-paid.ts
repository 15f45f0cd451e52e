import { type Decimal, ZERO } from "../decimal.ts";
import type { Fee } from "../prices/observation.ts";
import type { Paid } from "../stock/lot.ts";
import type { TaxComponent } from "../tax/region.ts";
import { taxes } from "../tax/tax.ts";
import type { Bill } from "./bill.ts";
import type { BillTerms, LineFigures } from "./bill-figures.ts";
import type { FeeShare, LineShare } from "./line-shares.ts";

/** Whether the buyer gets a component back (lib/tax, isRecovered, on the bill's day). */
export type Recovered = (component: TaxComponent) => boolean;

function untaxed(name: string, amount: Decimal): Fee {
  return { name, amount, percent: null, basis: "order", freeFrom: null, taxable: false };
}

/** Of the tax on a fee, what is not given back: by the components' rates on it. */
function keptTax(share: FeeShare, components: readonly TaxComponent[], recovered: Recovered): Decimal {
  const borne = taxes(share.amount, components);
  const all = borne.reduce((sum, { amount }) => sum.plus(amount.amount), ZERO);
  if (all.isZero()) return ZERO;
  const kept = borne
    .filter(({ component }) => !recovered(component))
    .reduce((sum, { amount }) => sum.plus(amount.amount), ZERO);
  return share.tax.amount.times(kept).dividedBy(all);
}

/**
 * What a lot of one line was paid: the same cents as the line bears of the bill, tax in them as the seller rounded it.
 *     amount = net + taxable fees + their taxes + shares of the taxed fees;  fees = what bears no tax, the rebate as less
 * So that the lots of a bill sum to what it cost, whatever way it rounds. A buyer who gets every component back pays the
 * amounts before tax, to the cent; of one who gets some back, the part is reckoned by the rates. A line exempt of a component that a delivery
 * bears takes its share of that delivery as a fee, with the tax on it that does not come back. Units: the bill's currency.
 * Rounds: never; all parts are cents already (but the tax kept of a registered buyer's exempt line). Source: rules.md R9.
 */
export function linePaid(
  bill: Bill,
  { components }: Pick<BillTerms, "components">,
  line: LineFigures,
  share: LineShare,
  recovered: Recovered,
): Paid {
  const bearsAll = components.every(({ name }) => !line.exempt.includes(name));
  const allBack = !bill.taxIncluded && components.every(recovered);
  const tax = (of: { tax: LineFigures["tax"] }) => (bill.taxIncluded || allBack ? ZERO : of.tax.amount);
  const taxed = share.fees.filter(({ taxable }) => taxable);
  const own = line.taxable.amount.plus(tax(line));
  const amount = bearsAll ? taxed.reduce((sum, one) => sum.plus(one.amount.amount).plus(tax(one)), own) : own;
  const apart = bearsAll
    ? []
    : taxed.map((one) => {
        const beforeTax = one.amount.amount.minus(bill.taxIncluded ? one.tax.amount : ZERO);
        return untaxed(one.name, beforeTax.plus(keptTax(one, components, recovered)));
      });
  const fees = [
    ...line.fees.filter(({ taxable }) => !taxable).map(({ name, amount: fee }) => untaxed(name, fee.amount)),
    ...share.fees.filter(({ taxable }) => !taxable).map((one) => untaxed(one.name, one.amount.amount)),
    ...apart,
    ...(share.rebate.amount.isZero()
      ? []
      : [untaxed(bill.rebates.map(({ name }) => name).join(", "), share.rebate.amount.negated())]),
  ].filter(({ amount: fee }) => fee?.isZero() === false);
  return {
    amount,
    currency: bill.currency,
    taxIncluded: !allBack,
    taxRegion: bill.taxRegion,
    exemptFrom: line.exempt,
    fees,
  };
}
