import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import type { Registration } from "../tax/region.ts";
import { Prisma } from "./generated/client.ts";
import { currencyOf, dayOrNull, storedDecimal } from "./rows.ts";

/** What a workspace is and how it reckons. moneyRates: percent a year from a day on (null: from the beginning). */
export type Workspace = Readonly<{
  id: string;
  kind: "owner" | "demo";
  name: string;
  homeCurrency: CurrencyCode;
  /** The workspace's own region: says which stores are foreign. */
  taxRegion: string;
  registrations: readonly Registration[];
  moneyRates: readonly Readonly<{ percent: Decimal; from: LocalDate | null }>[];
  recheckDays: number;
  timeZone: string;
  /** The chosen source of exchange rates, per currency (R2). */
  rateSources: Readonly<Partial<Record<CurrencyCode, string>>>;
}>;

export type WorkspaceRow = Readonly<{
  id: string;
  kind: "owner" | "demo";
  name: string;
  home_currency: string;
  tax_region: string;
  recheck_days: number;
  time_zone: string;
  registrations: readonly { tax: string; from: string | null; until: string | null }[];
  money_rates: readonly { percent: string; from: string | null }[];
  rate_sources: readonly { currency: string; source: string }[];
}>;

/** The workspace a transaction is in, as one row. */
export const WORKSPACE = Prisma.sql`SELECT w.id, w.kind, w.name, w.home_currency, w.tax_region, w.recheck_days, w.time_zone,
  (SELECT coalesce(json_agg(json_build_object('tax', r.tax, 'from', r.from_day, 'until', r.until_day)
    ORDER BY r.tax, r.from_day NULLS FIRST), '[]') FROM registration r) AS registrations,
  (SELECT coalesce(json_agg(json_build_object('percent', m.percent::text, 'from', m.from_day)
    ORDER BY m.from_day NULLS FIRST), '[]') FROM money_rate m) AS money_rates,
  (SELECT coalesce(json_agg(json_build_object('currency', s.currency, 'source', s.source)
    ORDER BY s.currency), '[]') FROM rate_source s) AS rate_sources
  FROM workspace w WHERE w.id = current_workspace()`;

/** A row of the table as our value. */
export function workspaceOfRow(row: WorkspaceRow): Workspace {
  return {
    id: row.id,
    kind: row.kind,
    name: row.name,
    homeCurrency: currencyOf(row.home_currency),
    taxRegion: row.tax_region,
    registrations: row.registrations.map(({ tax, from, until }) => ({
      tax,
      from: dayOrNull(from),
      until: dayOrNull(until),
    })),
    moneyRates: row.money_rates.map(({ percent, from }) => ({
      percent: storedDecimal(percent),
      from: dayOrNull(from),
    })),
    recheckDays: row.recheck_days,
    timeZone: row.time_zone,
    rateSources: Object.fromEntries(
      row.rate_sources.map(({ currency, source }) => [currencyOf(currency), source]),
    ),
  };
}
