import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, HUNDRED, ONE, ZERO } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import { type Money, money, roundToMinorUnit } from "../money/money.ts";
import type { Valuation } from "../prices/valuation.ts";
import { rateOfDay } from "../rates/rate-of-day.ts";
import type { TaxComponent } from "../tax/region.ts";
import { baseOfInclusive, isRecovered, taxes, taxOn } from "../tax/tax.ts";
import type { MoneyOut } from "./carrying.ts";
import type { Lot, Paid, Payment } from "./lot.ts";

/** Why a lot's cost cannot be said. */
export type NoCostReason = "tax-unknown" | "rate-unknown" | "region-unknown";

/**
 * What a lot cost. cost: home currency, unrounded, without recovered tax. cash: all of it, recovered tax too. payments:
 * money out, home currency. unpaid: what is still owed, in the currency paid, its part of cost valued at the day's rate.
 */
export type LotCost =
  | Readonly<{ known: true; cost: Money; cash: Money; payments: readonly MoneyOut[]; unpaid: Money }>
  | Readonly<{ known: false; reason: NoCostReason }>;

/** A receipt reckoned: what is due, and the part of it that is cost. Currency: as paid. */
type Due = Readonly<{ gross: Decimal; net: Decimal }>;

/** The tax components of the receipt; a private sale or a gift (no store, no region) bears none. */
function componentsOf(
  lot: Lot,
  valuation: Valuation,
  day: LocalDate,
): readonly TaxComponent[] | NoCostReason {
  const store = lot.storeId === null ? undefined : valuation.stores.get(lot.storeId);
  const code = lot.paid.taxRegion ?? store?.taxRegion ?? null;
  if (code === null) return lot.origin === "bought" || lot.origin === "special-order" ? "region-unknown" : [];
  const region = valuation.regions.get(code);
  if (region === undefined) return "region-unknown";
  const tax = taxOn(region, day);
  return tax.known ? tax.components : tax.reason;
}

/** Fees before tax: an amount per unit or per order (waived from freeFrom up), or a percent of the price before tax. */
function feesOf(paid: Paid, base: Decimal, quantity: Decimal): Readonly<{ all: Decimal; taxable: Decimal }> {
  let all = ZERO;
  let taxable = ZERO;
  for (const fee of paid.fees) {
    if (fee.basis === "order" && fee.freeFrom !== null && base.greaterThanOrEqualTo(fee.freeFrom)) continue;
    const flat = fee.amount === null ? ZERO : fee.basis === "unit" ? fee.amount.times(quantity) : fee.amount;
    const amount = flat.plus(fee.percent === null ? ZERO : base.times(fee.percent).dividedBy(HUNDRED));
    all = all.plus(amount);
    if (fee.taxable) taxable = taxable.plus(amount);
  }
  return { all, taxable };
}

function dueOf(lot: Lot, material: Material, valuation: Valuation, day: LocalDate): Due | NoCostReason {
  const { paid } = lot;
  if (paid.amount.isZero() && paid.fees.length === 0) return { gross: ZERO, net: ZERO };
  const components = componentsOf(lot, valuation, day);
  if (typeof components === "string") return components;
  const exempt = [...paid.exemptFrom, ...material.exemptFrom];
  const amount = money(paid.amount, paid.currency);
  const base = paid.taxIncluded ? baseOfInclusive(amount, components, exempt) : amount;
  const fees = feesOf(paid, base.amount, lot.quantity);
  const onPrice = taxes(base, components, exempt);
  const onFees = taxes(money(fees.taxable, paid.currency), components, exempt);
  const total = (parts: typeof onPrice) => parts.reduce((sum, part) => sum.plus(part.amount.amount), ZERO);
  // A tax-inclusive amount is itself the total: adding its parts up again would lose the last digit.
  const price = paid.taxIncluded ? paid.amount : paid.amount.plus(total(onPrice));
  const gross = price.plus(fees.all).plus(total(onFees));
  const back = [...onPrice, ...onFees].filter((part) =>
    isRecovered(part.component, valuation.registrations, day),
  );
  return { gross, net: gross.minus(total(back)) };
}

/** What was paid by a day; a lot that names no payments and is no special order was paid in full when ordered. */
function paymentsOf(lot: Lot, gross: Decimal, day: LocalDate): readonly Payment[] {
  if (lot.payments.length === 0 && lot.origin !== "special-order")
    return [{ amount: gross, on: lot.orderedOn, home: null }];
  return lot.payments.filter((payment) => payment.on <= day);
}

/** The day whose tax and registration count: of the first payment, else of the order. */
function taxDay(lot: Lot, day: LocalDate): LocalDate {
  const days = lot.payments.map((payment) => payment.on).filter((on) => on <= day);
  return (
    days.reduce<LocalDate | null>((first, on) => (first === null || on < first ? on : first), null) ??
    lot.orderedOn
  );
}

/**
 * A lot's cost in home currency, from what its receipt says (R9), fixed from the day paid.
 *     due  = amount before tax + fees + tax of the first payment's day;  cost = due - recovered tax
 *     home = sum over payments of payment x rate of its own day (or what the card was charged) + unpaid x rate of `day`
 * paidHome, where given, fixes the rate of everything. Payments are money out, tax and fees in them. `day`: payments
 * after it have not been made yet; default is the valuation's today.
 * Units: home currency. Rounds: never. Refuses: tax, region or rate not known. Source: rules.md R2, R3, R9.
 */
export function lotCost(
  lot: Lot,
  material: Material,
  valuation: Valuation,
  day: LocalDate = valuation.today,
): LotCost {
  const due = dueOf(lot, material, valuation, taxDay(lot, day));
  if (typeof due === "string") return { known: false, reason: due };
  const { gross, net } = due;
  const { homeCurrency: home } = valuation;
  const { currency } = lot.paid;
  const paidSoFar = paymentsOf(lot, gross, day);
  const paidAmount = paidSoFar.reduce((sum, payment) => sum.plus(payment.amount), ZERO);
  const settled = paidAmount.greaterThanOrEqualTo(roundToMinorUnit(money(gross, currency)).amount);
  const unpaid = settled ? ZERO : gross.minus(paidAmount);
  // Payments are in whole cents: those that settle the bill are the bill, to the last digit of it.
  const scale = settled && !paidAmount.isZero() ? gross.dividedBy(paidAmount) : ONE;
  const atRate = (amount: Decimal, on: LocalDate): Decimal | null => {
    if (lot.paidHome !== null)
      return gross.isZero() ? ZERO : lot.paidHome.amount.times(amount).dividedBy(gross);
    const rate = rateOfDay(valuation.rates, currency, home, on, valuation.today);
    return rate.known ? amount.times(rate.multiplyBy).dividedBy(rate.divideBy) : null;
  };
  const payments: MoneyOut[] = [];
  let cash = ZERO;
  for (const payment of paidSoFar) {
    const amount = payment.home ?? atRate(payment.amount.times(scale), payment.on);
    if (amount === null) return { known: false, reason: "rate-unknown" };
    payments.push({ on: payment.on, amount: money(amount, home) });
    cash = cash.plus(amount);
  }
  const owed = unpaid.isZero() ? ZERO : atRate(unpaid, day);
  if (owed === null) return { known: false, reason: "rate-unknown" };
  cash = cash.plus(owed);
  const cost = gross.equals(net) ? cash : cash.times(net).dividedBy(gross);
  return {
    known: true,
    cost: money(cost, home),
    cash: money(cash, home),
    payments,
    unpaid: money(unpaid, currency),
  };
}
