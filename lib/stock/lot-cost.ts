import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import { type Money, money, roundToMinorUnit } from "../money/money.ts";
import { lacksImportCharges } from "../prices/foreign-store.ts";
import { rateKept } from "../prices/rate-kept.ts";
import type { Valuation } from "../prices/valuation.ts";
import type { MoneyOut } from "./carrying.ts";
import type { Lot, Payment } from "./lot.ts";
import { type NoCostReason, receiptDue } from "./receipt-due.ts";

/**
 * What a lot cost. cost: home currency, unrounded, without recovered tax. cash: recovered tax too. payments: money out, home
 * currency. unpaid: what is still owed, in the currency paid, valued at the day's rate within cost and cash.
 * beforeImportCharges: bought abroad where nobody has confirmed what the border takes; cost is without it.
 */
export type KnownLotCost = Readonly<{
  known: true;
  cost: Money;
  cash: Money;
  payments: readonly MoneyOut[];
  unpaid: Money;
  beforeImportCharges: boolean;
}>;
export type LotCost = KnownLotCost | Readonly<{ known: false; reason: NoCostReason }>;

/** What was paid by a day; a lot that names no payments was paid in full when ordered. */
function paymentsBy(lot: Lot, gross: Decimal, day: LocalDate): readonly Payment[] {
  if (lot.payments.length === 0) return [{ amount: gross, on: lot.orderedOn, home: null }];
  return lot.payments.filter((payment) => payment.on <= day);
}

/**
 * Payments are in whole cents: those that settle a bill are the bill, to its last digit. Shared by what was paid, the last
 * one being the rest, so that no division leaves anything behind.
 */
function ofTheBill(made: readonly Payment[], gross: Decimal, paid: Decimal): Decimal[] {
  let rest = gross;
  return made.map(({ amount }, index) => {
    const part = index === made.length - 1 ? rest : amount.times(gross).dividedBy(paid);
    rest = rest.minus(part);
    return part;
  });
}

/** The day whose tax, registration and import charges count: of the first payment by `day`, else of the order. */
export function taxDay(lot: Lot, day: LocalDate): LocalDate {
  let first: LocalDate | null = null;
  for (const { on } of lot.payments) if (on <= day && (first === null || on < first)) first = on;
  return first ?? lot.orderedOn;
}

/** So much of the receipt in home currency: as the card was charged for the whole, else at the rate of the day; null: no rate. */
function atHome(
  lot: Lot,
  valuation: Valuation,
  gross: Decimal,
  amount: Decimal,
  on: LocalDate,
): Decimal | null {
  if (lot.paidHome !== null)
    return gross.isZero() ? ZERO : lot.paidHome.amount.times(amount).dividedBy(gross);
  if (lot.paid.currency === valuation.homeCurrency || amount.isZero()) return amount;
  const rate = rateKept(valuation, lot.paid.currency, valuation.homeCurrency, on);
  return rate.known ? amount.times(rate.multiplyBy).dividedBy(rate.divideBy) : null;
}

/**
 * A lot's cost in home currency, from what its receipt says, fixed from the day paid and never revalued (R9).
 *     gross = `receiptDue`, with the tax of the first payment's day (of the order, before any payment)
 *     home  = sum over payments of payment x rate of its own day (or what the card was charged) + unpaid x rate of `day`
 *     cost  = home x (gross - recovered tax) / gross + import charges that do not come back
 * paidHome, where given, fixes the rate of everything. Payments are money out: tax and fees are in them. Payments after
 * `day` have not been made yet; `day` is the valuation's today when left out. Import charges per order are not in it.
 * Units: home currency. Rounds: only divisions that do not end. Not known: tax, region or rate. Source: rules.md R2, R3, R9.
 */
export function lotCost(
  lot: Lot,
  material: Material,
  valuation: Valuation,
  day: LocalDate = valuation.today,
): LotCost {
  const taxedOn = taxDay(lot, day);
  const due = receiptDue(lot, material, valuation, taxedOn);
  if (typeof due === "string") return { known: false, reason: due };
  const { gross } = due;
  const { homeCurrency } = valuation;
  const { currency } = lot.paid;
  const made = paymentsBy(lot, gross, day);
  const paidSoFar = made.reduce((total, payment) => total.plus(payment.amount), ZERO);
  const settled = paidSoFar.greaterThanOrEqualTo(roundToMinorUnit(money(gross, currency)).amount);
  const parts = settled ? ofTheBill(made, gross, paidSoFar) : made.map((payment) => payment.amount);
  const unpaid = settled ? ZERO : gross.minus(paidSoFar);

  const payments: MoneyOut[] = [];
  let home = ZERO;
  for (const [index, payment] of made.entries()) {
    const amount = payment.home ?? atHome(lot, valuation, gross, parts[index] ?? ZERO, payment.on);
    if (amount === null) return { known: false, reason: "rate-unknown" };
    payments.push({ on: payment.on, amount: money(amount, homeCurrency) });
    home = home.plus(amount);
  }
  const owed = atHome(lot, valuation, gross, unpaid, day);
  const border = atHome(lot, valuation, gross, due.border, taxedOn);
  const borderCost = atHome(lot, valuation, gross, due.borderCost, taxedOn);
  if (owed === null || border === null || borderCost === null)
    return { known: false, reason: "rate-unknown" };
  if (!border.isZero()) payments.push({ on: taxedOn, amount: money(border, homeCurrency) });
  home = home.plus(owed);
  const kept = due.recovered.isZero() ? home : home.times(gross.minus(due.recovered)).dividedBy(gross);
  const store = lot.storeId === null ? undefined : valuation.stores.get(lot.storeId);
  return {
    known: true,
    cost: money(kept.plus(borderCost), homeCurrency),
    cash: money(home.plus(border), homeCurrency),
    payments,
    unpaid: money(unpaid, currency),
    beforeImportCharges: store !== undefined && lacksImportCharges(store, valuation),
  };
}
