import { daysBetween, type LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ONE } from "../decimal.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import type { ExchangeRate } from "./exchange-rate.ts";

/** A way from one currency to another by published rates of one source: amount x multiplyBy / divideBy. */
export type Way = Readonly<{ multiplyBy: Decimal; divideBy: Decimal; on: LocalDate; source: string }>;

/** The rates of one source: currency -> currency it is quoted with -> rates, oldest first. */
type Published = Map<CurrencyCode, Map<CurrencyCode, ExchangeRate[]>>;

/** Sorted once per list of rates: a page asks for hundreds of days. */
const published = new WeakMap<readonly ExchangeRate[], ReadonlyMap<string, Published>>();

function append(into: Published, from: CurrencyCode, to: CurrencyCode, rate: ExchangeRate): void {
  const pairs = into.get(from) ?? new Map<CurrencyCode, ExchangeRate[]>();
  const rates = pairs.get(to) ?? [];
  rates.push(rate);
  pairs.set(to, rates);
  into.set(from, pairs);
}

function publishedBy(rates: readonly ExchangeRate[], source: string): Published | undefined {
  let sources = published.get(rates);
  if (sources === undefined) {
    const sorted = new Map<string, Published>();
    for (const rate of [...rates].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0))) {
      const pairs = sorted.get(rate.source) ?? new Map();
      append(pairs, rate.base, rate.quote, rate);
      append(pairs, rate.quote, rate.base, rate);
      sorted.set(rate.source, pairs);
    }
    published.set(rates, sorted);
    sources = sorted;
  }
  return sources.get(source);
}

/** The last of a sorted list on or before a day, by halving. */
function lastOnOrBefore(rates: readonly ExchangeRate[], day: LocalDate): ExchangeRate | null {
  let low = 0;
  let high = rates.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    const rate = rates[middle];
    if (rate !== undefined && rate.on <= day) low = middle + 1;
    else high = middle;
  }
  return rates[low - 1] ?? null;
}

/** One published rate, used either way: multiplied by in its own direction, divided by in the other. */
function direct(pairs: Published, from: CurrencyCode, to: CurrencyCode, day: LocalDate): Way | null {
  const rate = lastOnOrBefore(pairs.get(from)?.get(to) ?? [], day);
  if (rate === null) return null;
  const { on, source } = rate;
  return rate.base === from
    ? { multiplyBy: rate.rate, divideBy: ONE, on, source }
    : { multiplyBy: ONE, divideBy: rate.rate, on, source };
}

function joined(first: Way, second: Way): Way {
  return {
    multiplyBy: first.multiplyBy.times(second.multiplyBy),
    divideBy: first.divideBy.times(second.divideBy),
    on: daysBetween(first.on, second.on) > 0 ? first.on : second.on,
    source: first.source,
  };
}

/**
 * The newest way a source offers on or before a day: its own rate of the pair, or two rates through a common currency
 * (dated by the older of the two). Ties: the pair's own rate, then the common currency first in the alphabet.
 * Rounds: never.
 */
export function newestWay(
  rates: readonly ExchangeRate[],
  source: string,
  from: CurrencyCode,
  to: CurrencyCode,
  day: LocalDate,
): Way | null {
  const pairs = publishedBy(rates, source);
  if (pairs === undefined) return null;
  let newest = direct(pairs, from, to, day);
  for (const through of [...(pairs.get(from)?.keys() ?? [])].sort()) {
    const first = direct(pairs, from, through, day);
    const second = direct(pairs, through, to, day);
    if (first === null || second === null) continue;
    const way = joined(first, second);
    if (newest === null || way.on > newest.on) newest = way;
  }
  return newest;
}
