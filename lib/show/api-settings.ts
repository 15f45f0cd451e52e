import * as z from "zod";
import { latestOnOrBefore } from "../calendar/as-of.ts";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import type { ExchangeRate } from "../rates/exchange-rate.ts";
import type { Registration, TaxRegion } from "../tax/region.ts";
import { currencyShape, dayShape, decimalShape, exactDigits, spanShape } from "./api-fields.ts";

const moneyRateShape = z.strictObject({ percent: decimalShape, from: dayShape.nullable() });

export const workspaceShape = z.strictObject({
  id: z.string(),
  name: z.string(),
  homeCurrency: currencyShape,
  taxRegion: z.string(),
  registeredFor: z.array(z.strictObject({ tax: z.string(), ...spanShape })),
  moneyRate: decimalShape.nullable().describe("the money rate of today, percent a year"),
  moneyRates: z.array(moneyRateShape),
  recheckDays: z.int(),
  timeZone: z.string(),
  today: dayShape,
  rateSources: z.record(z.string(), z.string()),
});

type MoneyRate = Readonly<{ percent: Decimal; from: LocalDate | null }>;
type Settings = Readonly<{
  id: string;
  name: string;
  homeCurrency: CurrencyCode;
  taxRegion: string;
  registrations: readonly Registration[];
  moneyRates: readonly MoneyRate[];
  recheckDays: number;
  timeZone: string;
  rateSources: Readonly<Partial<Record<CurrencyCode, string>>>;
}>;

const EVER = "0000-01-01" as LocalDate;

/** A workspace's settings, and the money rate that holds today. */
export function apiWorkspace(workspace: Settings, today: LocalDate): z.output<typeof workspaceShape> {
  const { id, name, homeCurrency, taxRegion, recheckDays, timeZone, moneyRates, rateSources } = workspace;
  const ofToday = latestOnOrBefore(moneyRates, today, (rate) => rate.from ?? EVER);
  return {
    id,
    name,
    homeCurrency,
    taxRegion,
    registeredFor: workspace.registrations.map(({ tax, from, until }) => ({ tax, from, until })),
    moneyRate: ofToday === null ? null : exactDigits(ofToday.percent),
    moneyRates: moneyRates.map(({ percent, from }) => ({ percent: exactDigits(percent), from })),
    recheckDays,
    timeZone,
    today,
    rateSources: { ...rateSources },
  };
}

export const taxRegionShape = z.strictObject({
  code: z.string(),
  name: z.string(),
  country: z.string().nullable(),
  completeFrom: dayShape,
  components: z.array(
    z.strictObject({
      name: z.string(),
      ratePercent: decimalShape,
      from: dayShape,
      until: dayShape.nullable(),
      base: z.enum(["price", "price-plus-other-tax"]),
      recoverable: z.boolean(),
      evidence: z.string(),
      fromMemory: z.boolean(),
    }),
  ),
});

/** A tax region with its dated components. */
export function apiTaxRegion(region: TaxRegion): z.output<typeof taxRegionShape> {
  const { code, name, country, completeFrom } = region;
  return {
    code,
    name,
    country,
    completeFrom,
    components: region.components.map((one) => ({
      name: one.name,
      ratePercent: exactDigits(one.ratePercent),
      from: one.from,
      until: one.until,
      base: one.base,
      recoverable: one.recoverable,
      evidence: one.evidence,
      fromMemory: one.fromMemory,
    })),
  };
}

export const exchangeRateShape = z.strictObject({
  date: dayShape,
  base: currencyShape,
  quote: currencyShape,
  rate: decimalShape,
  source: z.string(),
});

/** A published rate: 1 base = rate quote. */
export function apiExchangeRate({
  on,
  base,
  quote,
  rate,
  source,
}: ExchangeRate): z.output<typeof exchangeRateShape> {
  return { date: on, base, quote, rate: exactDigits(rate), source };
}

/** What a rate is known by: its day, pair and source. */
export function exchangeRateKey({ date, base, quote, source }: z.output<typeof exchangeRateShape>): string {
  return `${date} ${base} ${quote} ${source}`;
}
