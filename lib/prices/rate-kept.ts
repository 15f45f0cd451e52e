import type { LocalDate } from "../calendar/local-date.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import type { RateOfDay } from "../rates/exchange-rate.ts";
import { rateOfDay } from "../rates/rate-of-day.ts";
import type { Valuation } from "./valuation.ts";

const kept = new WeakMap<Valuation, Map<string, RateOfDay>>();

/** `rateOfDay` of a valuation's rates, looked up once per day and pair of currencies. */
export function rateKept(
  valuation: Valuation,
  from: CurrencyCode,
  to: CurrencyCode,
  day: LocalDate,
): RateOfDay {
  let rates = kept.get(valuation);
  if (rates === undefined) {
    rates = new Map();
    kept.set(valuation, rates);
  }
  const key = `${day} ${from} ${to}`;
  let rate = rates.get(key);
  if (rate === undefined) {
    rate = rateOfDay(valuation.rates, from, to, day, valuation.today);
    rates.set(key, rate);
  }
  return rate;
}
