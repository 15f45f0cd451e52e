import { type LocalDate, within } from "../calendar/local-date.ts";
import { type Decimal, HUNDRED, ONE, ZERO } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { importChargesOf } from "./foreign-store.ts";
import type { Fee, Observation } from "./observation.ts";
import type { NoPriceReason } from "./offer.ts";
import { purchaseUnitsBought, purchaseUnitsInOne } from "./purchase-units-bought.ts";
import { seenDay } from "./seen-day.ts";
import { standingDiscount } from "./standing-discount.ts";
import type { Store } from "./store.ts";
import { taxShares } from "./tax-shares.ts";
import type { Valuation } from "./valuation.ts";

/** A price per purchase unit in the currency of the tag; feeShare: what a taxable order fee bears of tax that is cost. */
export type OwnCurrencyPrice =
  | Readonly<{
      known: true;
      currency: CurrencyCode;
      store: Store;
      price: Decimal;
      beforeTax: Decimal;
      cash: Decimal;
      feeShare: Decimal;
    }>
  | Readonly<{ known: false; reason: NoPriceReason }>;

const NONE: readonly string[] = [];

function exemptions(observation: Observation, material: Material): readonly string[] {
  if (observation.exemptFrom.length === 0) return material.exemptFrom;
  if (material.exemptFrom.length === 0) return observation.exemptFrom;
  return [...material.exemptFrom, ...observation.exemptFrom];
}

/** Sum of the fees that belong in a unit price: amounts per one of the tag's unit, and every percentage. */
function unitFees(fees: readonly Fee[], taxable: boolean, price: Decimal, inOne: Decimal): Decimal {
  let total = ZERO;
  for (const fee of fees) {
    if (fee.taxable !== taxable) continue;
    if (fee.basis === "unit" && fee.amount !== null) total = total.plus(fee.amount.dividedBy(inOne));
    if (fee.percent !== null) total = total.plus(price.times(fee.percent).dividedBy(HUNDRED));
  }
  return total;
}

/** Percent that crossing the border adds: all of it, and what is not given back to a registered buyer (R3). */
function importPercents(store: Store, valuation: Valuation, day: LocalDate): { all: Decimal; cost: Decimal } {
  let all = ZERO;
  let cost = ZERO;
  for (const charge of importChargesOf(store, valuation)) {
    if (!within(day, charge.from, charge.until)) continue;
    all = all.plus(charge.percent);
    if (!isImportRecovered(charge.recoverable, valuation, day)) cost = cost.plus(charge.percent);
  }
  return { all, cost };
}

/** A charge marked recoverable comes back to a workspace that is registered for a tax on the day. */
export function isImportRecovered(recoverable: boolean, valuation: Valuation, day: LocalDate): boolean {
  return recoverable && valuation.registrations.some(({ from, until }) => within(day, from, until));
}

/**
 * What one purchase unit costs on a day by a tag, in the tag's own currency (R4, R2).
 *     listed    = amount / purchase units it buys, without the tax of the day SEEN where the tag includes tax
 *     net       = listed x (1 - standing discount of the day; none on a receipt, which shows it already)
 *     beforeTax = net + fees per unit + percentage fees (percent of net)
 *     cash      = beforeTax + all tax of the day on (net + taxable fees) + all import charges on beforeTax
 *     price     = the same with the tax and import charges that are not recovered
 * Units: the tag's currency per purchase unit. Rounds: only divisions that do not end, to 40 digits.
 * Not known: the reason. Source: rules.md R2-R4; a discount before tax as in U10 of the trade facts.
 */
export function ownCurrencyPrice(
  observation: Observation,
  material: Material,
  valuation: Valuation,
  day: LocalDate,
): OwnCurrencyPrice {
  const { amount, fees } = observation;
  if (amount === null) return { known: false, reason: "no-amount" };
  const store = valuation.stores.get(observation.storeId);
  if (store === undefined) return { known: false, reason: "store-unknown" };
  const per = { value: observation.per.quantity, unit: observation.per.unit };
  const bought = purchaseUnitsBought(material, per);
  if (bought === null || bought.isZero()) return { known: false, reason: "unit-not-convertible" };

  const region = observation.taxRegion ?? store.taxRegion;
  const exempt = exemptions(observation, material);
  const shares = taxShares(valuation, region, exempt.length > 0 ? exempt : NONE, day);
  if (!shares.known) return shares;
  let net = bought.equals(ONE) ? amount.amount : amount.amount.dividedBy(bought);
  if (observation.taxIncluded) {
    const seen = taxShares(valuation, region, exempt, seenDay(observation, valuation));
    if (!seen.known) return seen;
    if (!seen.all.isZero()) net = net.dividedBy(seen.all.plus(ONE));
  }
  if (observation.terms !== "paid") {
    const discount = standingDiscount(store, material.category, day);
    if (!discount.isZero()) net = net.times(HUNDRED.minus(discount)).dividedBy(HUNDRED);
  }
  let taxed = net;
  let beforeTax = net;
  if (fees.length > 0) {
    const inOne = purchaseUnitsInOne(material, per.unit) ?? ONE;
    taxed = net.plus(unitFees(fees, true, net, inOne));
    beforeTax = taxed.plus(unitFees(fees, false, net, inOne));
  }
  let price = beforeTax.plus(taxed.times(shares.cost));
  let cash = shares.all === shares.cost ? price : beforeTax.plus(taxed.times(shares.all));
  if (store.importCharges !== null && store.importCharges.length > 0) {
    const border = importPercents(store, valuation, day);
    price = price.plus(beforeTax.times(border.cost).dividedBy(HUNDRED));
    cash = cash.plus(beforeTax.times(border.all).dividedBy(HUNDRED));
  }
  return { known: true, currency: amount.currency, store, price, beforeTax, cash, feeShare: shares.cost };
}
