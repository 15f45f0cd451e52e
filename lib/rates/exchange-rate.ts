import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { CurrencyCode } from "../money/currencies.ts";

/** One published rate: 1 base = rate quote. */
export type ExchangeRate = Readonly<{
  on: LocalDate;
  base: CurrencyCode;
  quote: CurrencyCode;
  rate: Decimal;
  source: string;
}>;

/** Rates as a workspace uses them: one source per currency (R2). `chosen` names it; where it does not, see rateOfDay. */
export type RateBook = Readonly<{
  rates: readonly ExchangeRate[];
  chosen: Readonly<Partial<Record<CurrencyCode, string>>>;
}>;

/**
 * The rate of a day: 1 `from` = rate `to`, for reading. Conversions multiply and divide by the published rates
 * themselves (rate = multiplyBy / divideBy), never by a rounded inverse. on: the day it was published (of two, the older).
 * stale: 8 to 45 days old, allowed for today only (R2).
 */
export type KnownRate = Readonly<{
  known: true;
  rate: Decimal;
  multiplyBy: Decimal;
  divideBy: Decimal;
  on: LocalDate;
  source: string;
  stale: boolean;
}>;
export type RateOfDay = KnownRate | Readonly<{ known: false; reason: "no-rate" }>;
