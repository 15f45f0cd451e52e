import { daysBetween, type LocalDate } from "../calendar/local-date.ts";
import { type Decimal, HUNDRED, ZERO } from "../decimal.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { type Money, money } from "../money/money.ts";

/** What money costs from a day on, percent a year, simple. from null: since ever. */
export type MoneyRate = Readonly<{ percent: Decimal; from: LocalDate | null }>;

/** Money out on a day, home currency. */
export type MoneyOut = Readonly<{ on: LocalDate; amount: Money }>;

/** Days of a year for interest (R10; act/365). */
export const DAYS_OF_YEAR = 365;

/**
 * Simple interest: amount x percent / 100 x days / 365.
 * Units: the amount's currency; percent a year; calendar days. Rounds: never (one division, 40 digits). Source: rules.md R10.
 */
export function simpleInterest(amount: Money, percent: Decimal, days: Decimal | number): Money {
  return money(
    amount.amount.times(percent).times(days).dividedBy(HUNDRED.times(DAYS_OF_YEAR)),
    amount.currency,
  );
}

/** Percent x days, summed over the rates in force one after the other; null when a day of the span has no rate. */
function percentDays(rates: readonly MoneyRate[], from: LocalDate, until: LocalDate): Decimal | null {
  if (from >= until) return ZERO;
  const [only] = rates;
  if (rates.length === 1 && only?.from === null) return only.percent.times(daysBetween(from, until));
  const dated = [...rates].sort((a, b) => (a.from ?? "").localeCompare(b.from ?? ""));
  let total = ZERO;
  let day = from;
  while (day < until) {
    const now = dated.findLast((rate) => rate.from === null || rate.from <= day);
    if (now === undefined) return null;
    const start = day;
    const next = dated.find((rate) => rate.from !== null && rate.from > start)?.from ?? until;
    day = next < until ? next : until;
    total = total.plus(now.percent.times(daysBetween(start, day)));
  }
  return total;
}

/**
 * What it cost to have money in stock until a day.
 *     sum over payments of amount x money rate x days / 365, simple, each day at the rate in force on it
 * A payment on or after `until` costs nothing. null: no money rate for some day of it ("before carrying cost").
 * Units: home currency. Rounds: never. Source: rules.md R10.
 */
export function carryingCost(
  payments: readonly MoneyOut[],
  rates: readonly MoneyRate[],
  until: LocalDate,
  currency: CurrencyCode,
): Money | null {
  if (rates.length === 0) return null;
  let total = ZERO;
  for (const payment of payments) {
    const share = percentDays(rates, payment.on, until);
    if (share === null) return null;
    total = total.plus(payment.amount.amount.times(share));
  }
  return money(total.dividedBy(HUNDRED.times(DAYS_OF_YEAR)), currency);
}
