import type { ExchangeRate } from "../../../lib/rates/exchange-rate.ts";

/** The words that name a rate in an address or a form. */
export type RateNamed = Readonly<{ date: string; base: string; quote: string; source: string }>;

/** The rate of a day, pair and source; null: there is none. */
export function findRate(rates: readonly ExchangeRate[], named: RateNamed): ExchangeRate | null {
  return (
    rates.find(
      ({ on, base, quote, source }) =>
        on === named.date && base === named.base && quote === named.quote && source === named.source,
    ) ?? null
  );
}
