import "server-only";
import { DAY_LIMITS } from "../calendar/day-limits.ts";
import { type LocalDate, localDate, plusDays } from "../calendar/local-date.ts";
import { decimal } from "../decimal.ts";
import type { Fault, Written } from "../fault.ts";
import type { ExchangeRate } from "../rates/exchange-rate.ts";
import type { ExchangeRateEntry } from "../rates/exchange-rate-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { dayFaults } from "./day-faults.ts";
import { Prisma } from "./generated/client.ts";
import { currencyOf, dateOf, digits, rows } from "./rows.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { accepted, conflict, NOT_THERE, refused, repeated } from "./written.ts";

type RateRow = Readonly<{ on_day: string; base: string; quote: string; rate: string; source: string }>;

function rateOfRow({ on_day, base, quote, rate, source }: RateRow): ExchangeRate {
  return {
    on: localDate(on_day),
    base: currencyOf(base),
    quote: currencyOf(quote),
    rate: decimal(rate),
    source,
  };
}

/** Rates by day, oldest first: all, or those that can serve some day from `first` on. */
export async function ratesWithin(tx: Tx, first?: LocalDate): Promise<ExchangeRate[]> {
  const within =
    first === undefined
      ? Prisma.empty
      : Prisma.sql`WHERE on_day >= ${plusDays(first, -DAY_LIMITS.staleRate)}::date`;
  const found = await rows<RateRow>(
    tx,
    Prisma.sql`SELECT on_day, base, quote, rate::text, source FROM exchange_rate ${within} ORDER BY on_day, base, quote, source`,
  );
  return found.map(rateOfRow);
}

/** Every exchange rate of the workspace, by day. */
export function exchangeRates(scope: Scope): Promise<ExchangeRate[]> {
  return inWorkspace(scope, (tx) => ratesWithin(tx));
}

const keyOf = ({ base, quote, source, on }: ExchangeRate) => ({ base, quote, source, onDay: dateOf(on) });

/** One published rate. The same day, pair and source again: repeated when the rate is the same, else a conflict. */
export function addExchangeRate(scope: Scope, entry: ExchangeRateEntry): Promise<Written<ExchangeRate>> {
  return inWorkspace(scope, async (tx) => {
    const faults = dayFaults("date", entry.on, todayOf(await workspaceWithin(tx)));
    if (faults.length > 0) return refused(faults);
    const there = await tx.exchangeRate.findFirst({ where: keyOf(entry), select: { rate: true } });
    if (there !== null) {
      const stored = { ...entry, rate: decimal(there.rate.toFixed()) };
      return stored.rate.equals(entry.rate) ? repeated(stored) : conflict(stored);
    }
    await tx.exchangeRate.create({
      data: { ...keyOf(entry), rate: digits(entry.rate) },
      select: { id: true },
    });
    return accepted(entry);
  });
}

/** A published rate that was typed wrong, put right; the change log keeps the earlier one. */
export function changeExchangeRate(scope: Scope, entry: ExchangeRateEntry): Promise<Written<ExchangeRate>> {
  return inWorkspace(scope, async (tx) => {
    const { count } = await tx.exchangeRate.updateMany({
      where: keyOf(entry),
      data: { rate: digits(entry.rate) },
    });
    return count === 0 ? NOT_THERE : accepted(entry);
  });
}

/** What became of a list of rates: how many are new, how many were there, and the entries (by index) that were refused. */
export type RatesAdded = Readonly<{
  added: number;
  repeated: number;
  rejected: readonly Readonly<{ index: number; why: "faults" | "conflict"; faults: readonly Fault[] }>[];
}>;

/** Many rates in one statement; each entry stands alone, and one that contradicts a stored rate is rejected. */
export function addExchangeRates(scope: Scope, entries: readonly ExchangeRateEntry[]): Promise<RatesAdded> {
  return inWorkspace(scope, async (tx) => {
    const today = todayOf(await workspaceWithin(tx));
    const faulty = entries.map((entry) => dayFaults("date", entry.on, today));
    const good = entries.flatMap((entry, index) => (faulty[index]?.length === 0 ? [{ entry, index }] : []));
    const columns = {
      on: good.map(({ entry }) => entry.on),
      base: good.map(({ entry }) => entry.base),
      quote: good.map(({ entry }) => entry.quote),
      rate: good.map(({ entry }) => digits(entry.rate)),
      source: good.map(({ entry }) => entry.source),
    };
    const given = Prisma.sql`unnest(${columns.on}::text[]::date[], ${columns.base}::text[], ${columns.quote}::text[],
      ${columns.rate}::text[]::numeric[], ${columns.source}::text[])
      WITH ORDINALITY AS g(on_day, base, quote, rate, source, place)`;
    const added = await tx.$executeRaw`INSERT INTO exchange_rate (on_day, base, quote, rate, source)
      SELECT on_day, base, quote, rate, source FROM ${given} ORDER BY place
      ON CONFLICT (workspace_id, base, quote, source, on_day) DO NOTHING`;
    const against = await rows<{ place: number }>(
      tx,
      Prisma.sql`SELECT g.place FROM ${given} JOIN exchange_rate e USING (on_day, base, quote, source)
        WHERE e.rate <> g.rate ORDER BY g.place`,
    );
    const contradicting = new Set(against.map(({ place }) => good[place - 1]?.index));
    const rejected = entries.flatMap((_, index): RatesAdded["rejected"] => {
      const faults = faulty[index] ?? [];
      if (faults.length > 0) return [{ index, why: "faults", faults }];
      return contradicting.has(index) ? [{ index, why: "conflict", faults: [] }] : [];
    });
    return { added, repeated: entries.length - added - rejected.length, rejected };
  });
}
