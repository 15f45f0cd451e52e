import { type Decimal, HUNDRED, ONE, ZERO } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import { add, type Money, money, roundToMinorUnit } from "../money/money.ts";
import { taxShares } from "../prices/tax-shares.ts";
import type { Valuation } from "../prices/valuation.ts";
import type { Lot } from "./lot.ts";
import { taxDay } from "./lot-cost.ts";
import type { NoCostReason } from "./receipt-due.ts";

/** What a store would give back. net: after the restocking fee, before tax; refund = net + tax, in the currency paid. */
export type Refund =
  | Readonly<{ known: true; net: Money; tax: Money; refund: Money }>
  | Readonly<{ known: false; reason: NoCostReason }>;

/** percent: kept of the price (left out: as agreed on the lot; nothing agreed: 0). taxOn: whether tax comes back on what is left or on all. */
export type RefundTerms = Readonly<{ percent?: Decimal | undefined; taxOn?: "net" | "price" | undefined }>;

/** The price of the whole before tax, and the tax one unit of it bore. */
function beforeTax(
  lot: Lot,
  material: Material,
  valuation: Valuation,
): { base: Decimal; tax: Decimal } | NoCostReason {
  const { amount, taxIncluded, taxRegion, exemptFrom } = lot.paid;
  if (amount.isZero()) return { base: ZERO, tax: ZERO };
  const store = lot.storeId === null ? undefined : valuation.stores.get(lot.storeId);
  const region = taxRegion ?? store?.taxRegion ?? null;
  const bought = lot.origin === "bought" || lot.origin === "special-order";
  if (region === null) return bought ? "region-unknown" : { base: amount, tax: ZERO };
  const exempt = [...material.exemptFrom, ...exemptFrom];
  const shares = taxShares(valuation, region, exempt, taxDay(lot, valuation.today));
  if (!shares.known) return shares.reason;
  return { base: taxIncluded ? amount.dividedBy(shares.all.plus(ONE)) : amount, tax: shares.all };
}

/**
 * What to expect back for a quantity handed back: a suggestion, the slip of the store counts.
 *     net = price before tax / quantity bought x quantity x (1 - restocking % / 100);  tax = net (or price) x tax of the day it was bought
 * Fees (delivery, eco fees) are not in it. Tax on what a restocking fee takes away varies: taxOn says. Units: the currency
 * paid; quantity in purchase units. Rounds: net once and tax once, half up, to the minor unit. Source: trade.md T23.
 */
export function suggestedRefund(
  lot: Lot,
  material: Material,
  valuation: Valuation,
  quantity: Decimal,
  { percent, taxOn = "net" }: RefundTerms = {},
): Refund {
  const paid = beforeTax(lot, material, valuation);
  if (typeof paid === "string") return { known: false, reason: paid };
  const kept = percent ?? lot.agreed.restockingPercent ?? ZERO;
  const { currency } = lot.paid;
  const price = paid.base.times(quantity).dividedBy(lot.quantity);
  const net = roundToMinorUnit(money(price.times(HUNDRED.minus(kept)).dividedBy(HUNDRED), currency));
  const taxed = taxOn === "net" ? net.amount : price;
  const tax = roundToMinorUnit(money(taxed.times(paid.tax), currency));
  return { known: true, net, tax, refund: add(net, tax) };
}
