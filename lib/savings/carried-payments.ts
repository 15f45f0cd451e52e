import { daysBetween, type LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { Money } from "../money/money.ts";
import { type MoneyOut, type MoneyRate, simpleInterest } from "../stock/carrying.ts";

/** A payment over days of one money rate. until: the first day no longer counted. carrying: unrounded. */
export type CarriedPayment = Readonly<{
  paidOn: LocalDate;
  amount: Money;
  from: LocalDate;
  until: LocalDate;
  days: number;
  percent: Decimal;
  carrying: Money;
}>;

/**
 * What `carryingCost` is the sum of, one line per payment and money rate: amount x percent / 100 x days / 365.
 * null: no money rate for some day of it. Units: home currency; percent a year; calendar days. Rounds: never.
 * Source: rules.md R10.
 */
export function carriedPayments(
  payments: readonly MoneyOut[],
  rates: readonly MoneyRate[],
  until: LocalDate,
): CarriedPayment[] | null {
  if (rates.length === 0) return null;
  const dated = [...rates].sort((a, b) => ((a.from ?? "") < (b.from ?? "") ? -1 : 1));
  const lines: CarriedPayment[] = [];
  for (const { on: paidOn, amount } of payments) {
    let from = paidOn;
    while (from < until) {
      const start = from;
      const rate = dated.findLast((one) => one.from === null || one.from <= start);
      if (rate === undefined) return null;
      const change = dated.find((one) => one.from !== null && one.from > start)?.from ?? until;
      const end = change < until ? change : until;
      const days = daysBetween(start, end);
      const carrying = simpleInterest(amount, rate.percent, days);
      lines.push({ paidOn, amount, from: start, until: end, days, percent: rate.percent, carrying });
      from = end;
    }
  }
  return lines;
}
