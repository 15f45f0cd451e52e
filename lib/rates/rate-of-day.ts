import { DAY_LIMITS } from "../calendar/day-limits.ts";
import { daysBetween, type LocalDate } from "../calendar/local-date.ts";
import { ONE } from "../decimal.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { type Money, money } from "../money/money.ts";
import { newestWay, type Way } from "./conversion-ways.ts";
import type { KnownRate, RateBook, RateOfDay } from "./exchange-rate.ts";

const NO_RATE: RateOfDay = { known: false, reason: "no-rate" };

/** The sources the workspace chose for either currency; where it chose none, every source there is. */
function sourcesFor(book: RateBook, from: CurrencyCode, to: CurrencyCode): readonly string[] {
  const chosen = [book.chosen[from], book.chosen[to]].filter((source) => source !== undefined);
  const all = chosen.length > 0 ? chosen : book.rates.map((rate) => rate.source);
  return [...new Set(all)].sort();
}

/**
 * The rate of a day between two currencies (R2): the latest published on or before it, at most 7 days older; for today
 * 8 to 45 days old, marked stale; else there is none. A day ahead of today counts as today.
 * One source: the one chosen for either currency; where none is chosen (or two are), the one whose rate is newest, ties
 * by name. A pair the source does not publish goes through a currency it has both of. Rounds: only `rate`, to 40 digits.
 * Source: Council Regulation (EC) 1103/97 article 4: conversion by the published rate, no inverse rates derived from it.
 */
export function rateOfDay(
  book: RateBook,
  from: CurrencyCode,
  to: CurrencyCode,
  day: LocalDate,
  today: LocalDate,
): RateOfDay {
  const asked = day > today ? today : day;
  if (from === to)
    return {
      known: true,
      rate: ONE,
      multiplyBy: ONE,
      divideBy: ONE,
      on: asked,
      source: "same currency",
      stale: false,
    };
  let newest: Way | null = null;
  for (const source of sourcesFor(book, from, to)) {
    const way = newestWay(book.rates, source, from, to, asked);
    if (way !== null && (newest === null || way.on > newest.on)) newest = way;
  }
  if (newest === null) return NO_RATE;
  const age = daysBetween(newest.on, asked);
  if (age > (asked === today ? DAY_LIMITS.staleRate : DAY_LIMITS.goodRate)) return NO_RATE;
  return {
    known: true,
    rate: newest.multiplyBy.dividedBy(newest.divideBy),
    ...newest,
    stale: age > DAY_LIMITS.goodRate,
  };
}

/** An amount in the other currency of a rate: amount x multiplyBy / divideBy. Rounds: that one division, if any, to 40 digits. */
export function inCurrency<C extends CurrencyCode>(
  value: Money,
  to: C,
  rate: Pick<KnownRate, "multiplyBy" | "divideBy">,
): Money<C> {
  const multiplied = value.amount.times(rate.multiplyBy);
  return money(rate.divideBy.equals(ONE) ? multiplied : multiplied.dividedBy(rate.divideBy), to);
}
