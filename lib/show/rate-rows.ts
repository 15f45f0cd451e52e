import { daysBetween, type LocalDate } from "../calendar/local-date.ts";
import type { ExchangeRate } from "../rates/exchange-rate.ts";
import { dayText } from "./day-text.ts";
import { figureText } from "./money-text.ts";

export type RateRow = Readonly<{
  key: string;
  pair: string;
  rate: string;
  day: string;
  ageDays: number;
  source: string;
  /** What names it in an address. */
  named: Readonly<{ date: string; base: string; quote: string; source: string }>;
}>;

/** Published rates for reading, newest first. Rounds: to 12 places at most, as entered. */
export function rateRows(rates: readonly ExchangeRate[], today: LocalDate, locale: string): RateRow[] {
  return [...rates]
    .sort((a, b) => b.on.localeCompare(a.on) || a.base.localeCompare(b.base))
    .map((rate) => ({
      key: [rate.on, rate.base, rate.quote, rate.source].join(" "),
      pair: `${rate.base}/${rate.quote}`,
      rate: figureText(rate.rate, locale, 4, 12),
      day: dayText(rate.on, locale),
      ageDays: daysBetween(rate.on, today),
      source: rate.source,
      named: { date: rate.on, base: rate.base, quote: rate.quote, source: rate.source },
    }));
}
