import { isLocalDate, type LocalDate } from "../../../lib/calendar/local-date.ts";
import type { ExposureFacts } from "../../../lib/exposure/exposure-facts.ts";
import type { Material } from "../../../lib/materials/material.ts";
import { measuresOf } from "../../../lib/materials/measures.ts";
import type { CurrencyCode } from "../../../lib/money/currencies.ts";
import { currenciesSeen } from "../../../lib/show/currencies-seen.ts";
import { type TrendAsked, usualPeriod } from "../../../lib/show/trend-points.ts";

/** Periods a trend is shown for, by the word in the address. */
export const PERIODS = [
  { word: "year", days: 365 },
  { word: "three-years", days: 1096 },
  { word: "all", days: null },
] as const;

type Words = Readonly<{ per?: string; in?: string; period?: string; asOf?: string }>;

/** How the trend is looked at, and what else there is to choose. */
export type View = Readonly<{
  asked: TrendAsked;
  units: readonly TrendAsked["unit"][];
  currencies: readonly TrendAsked["currency"][];
  home: CurrencyCode;
  /** The page's address with one thing chosen otherwise. */
  href: (change: Words) => string;
}>;

/** The view an address asks for; what it does not say, or says wrongly, is as usual: per purchase unit, home currency. */
export function viewOf(query: Words, day: LocalDate, material: Material, facts: ExposureFacts): View {
  const units = measuresOf(material);
  const seen = currenciesSeen(facts);
  const foreign: CurrencyCode[] = seen.filter((code) => code !== facts.valuation.homeCurrency);
  const currencies = ["home" as const, ...(foreign.length > 0 ? ["as-seen" as const] : []), ...foreign];
  const period = PERIODS.find(({ word }) => word === query.period);
  const asked: TrendAsked = {
    day,
    days: period === undefined ? usualPeriod(facts.observations, day) : period.days,
    unit: units.find((unit) => unit === query.per) ?? material.purchaseUnit,
    currency: currencies.find((currency) => currency === query.in) ?? "home",
  };
  const kept: Words = {
    ...(asked.unit === material.purchaseUnit ? {} : { per: asked.unit }),
    ...(asked.currency === "home" ? {} : { in: asked.currency }),
    ...(period === undefined ? {} : { period: period.word }),
    ...(isLocalDate(query.asOf) ? { asOf: query.asOf } : {}),
  };
  const href = (change: Words) => {
    const text = new URLSearchParams({ ...kept, ...change }).toString();
    return `/materials/${material.id}${text === "" ? "" : `?${text}`}`;
  };
  return { asked, units, currencies, home: facts.valuation.homeCurrency, href };
}
