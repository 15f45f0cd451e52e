import { datedColumns } from "../files/dated-columns.ts";
import type { DayOrder } from "../files/day-shapes.ts";
import { type Reading, refused, skipped } from "../files/reading.ts";
import type { SeparatedText } from "../files/separated-rows.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { type RateRead, type RatesAsked, rateRead } from "./rate-read.ts";

/** The euro's reference rates: 1 EUR in each column's currency, N/A where there is none. Source of the shape: European Central Bank, eurofxref CSV, daily and historical (read). */
export function euroRates(text: SeparatedText, asked: RatesAsked): Reading<RateRead>[] {
  return datedColumns(text, { monthly: false }).map((one): Reading<RateRead> => {
    if (one.fate !== "accepted") return one;
    const { on, series, figure } = one.value;
    return rateRead(one, { on, base: "EUR", quote: series, rate: figure }, asked);
  });
}

/** Daily series of the Federal Reserve's H.10 release by their FRED names: 1 base in quote. Source: FRED, series titles (from memory). */
const DAILY: Readonly<Record<string, readonly [base: CurrencyCode, quote: CurrencyCode]>> = {
  DEXCAUS: ["USD", "CAD"],
  DEXUSEU: ["EUR", "USD"],
  DEXUSUK: ["GBP", "USD"],
  DEXUSAL: ["AUD", "USD"],
  DEXUSNZ: ["NZD", "USD"],
  DEXMXUS: ["USD", "MXN"],
  DEXJPUS: ["USD", "JPY"],
  DEXCHUS: ["USD", "CNY"],
  DEXSZUS: ["USD", "CHF"],
};
// EXCAUS and its like are means of a month, known only when it has ended: no rate of any day.
const MEANS = /^EX[A-Z]{4}$/;

/** Whether a series is of the H.10 release. */
export function isH10(series: string): boolean {
  return MEANS.test(series) || Object.hasOwn(DAILY, series);
}

export type DatedRatesAsked = RatesAsked &
  Readonly<{ pair?: readonly [base: string, quote: string] | undefined; order?: DayOrder | undefined }>;

/**
 * The rates of a FRED CSV of H.10 series, or of any day,value text whose pair the person names: 1 base in quote. A series
 * that says no pair is refused, and one of monthly means is passed over.
 */
export function seriesRates(text: SeparatedText, asked: DatedRatesAsked): Reading<RateRead>[] {
  return datedColumns(text, { monthly: false, order: asked.order }).map((one): Reading<RateRead> => {
    if (one.fate !== "accepted") return one;
    const { on, series, figure } = one.value;
    if (MEANS.test(series)) return skipped(one, "monthly-mean");
    const [base, quote] = (Object.hasOwn(DAILY, series) ? DAILY[series] : asked.pair) ?? [];
    if (base === undefined || quote === undefined) return refused(one, "pair-not-said");
    return rateRead(one, { on, base, quote, rate: figure }, asked);
  });
}
