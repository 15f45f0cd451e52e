import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import { type Money, money } from "../money/money.ts";
import type { TaxComponent } from "../tax/region.ts";
import type { Bill, BilledLine } from "./bill.ts";
import type { LineFigures } from "./bill-figures.ts";
import type { LineShare } from "./line-shares.ts";

/** Whether the buyer gets a component back (lib/tax, isRecovered, on the bill's day). */
export type Recovered = (component: TaxComponent) => boolean;

/**
 * What a line costs the buyer: all it bears of the bill, without the taxes that come back.
 *     cost = total of `lineShares` - the recovered components of its own tax and of its parts of the taxes on fees
 * Below zero for goods handed back: the tax given back on them is owed again where it had been recovered. Units: the
 * bill's currency. Rounds: never; all parts are minor units already. Source: rules.md R3.
 */
export function costOfLine(line: LineFigures, share: LineShare, recovered: Recovered): Money {
  const back = [...line.taxes, ...share.fees.flatMap(({ taxes }) => taxes)]
    .filter(({ component }) => recovered(component))
    .reduce((sum, { amount }) => sum.plus(amount.amount), ZERO);
  return money(share.total.amount.minus(back), share.total.currency);
}

/** Goods that leave a lot: so much, in purchase units, on a day, for a refund. */
export type GoodsReturned = Readonly<{ quantity: Decimal; on: LocalDate; amount: Money }>;

/**
 * Goods handed back as what happens to the lot they are of: returned on the bill's day for the refund.
 *     refund = price + tax given back - restocking fee, without tax that is owed again (what the lot's cost is without, too)
 * So that goods taken back at the full price make neither gain nor loss. quantity: purchase units. Units: the bill's
 * currency. Rounds: never. null: nothing was handed back, or of no lot. Source: rules.md R9, R10.
 */
export function goodsReturned(
  bill: Bill,
  { returned }: BilledLine,
  of: Readonly<{ read: LineFigures; share: LineShare; quantity: Decimal }>,
  recovered: Recovered,
): GoodsReturned | null {
  if (returned === null || (returned.lotId === null && !returned.ofThisBill)) return null;
  const refund = costOfLine(of.read, of.share, recovered).amount.negated();
  return {
    quantity: of.quantity,
    on: bill.on,
    amount: money(refund.isZero() ? ZERO : refund, bill.currency),
  };
}
