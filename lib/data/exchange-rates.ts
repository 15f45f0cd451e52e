import "server-only";
import { DAY_LIMITS } from "../calendar/day-limits.ts";
import { type LocalDate, localDate, plusDays } from "../calendar/local-date.ts";
import { decimal } from "../decimal.ts";
import type { Fault, Written } from "../fault.ts";
import type { ExchangeRate } from "../rates/exchange-rate.ts";
import type { ExchangeRateEntry } from "../rates/exchange-rate-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { dayFaults } from "./day-faults.ts";
import { givenRates, insertRates } from "./exchange-rate-insert.ts";
import { Prisma } from "./generated/client.ts";
import { currencyOf, dateOf, digits, rows } from "./rows.ts";
import { STANDS } from "./taken-files.ts";
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

async function ratesWhere(tx: Tx, condition: Prisma.Sql): Promise<ExchangeRate[]> {
  const found = await rows<RateRow>(
    tx,
    Prisma.sql`SELECT on_day, base, quote, rate::text, source FROM exchange_rate WHERE ${STANDS} AND ${condition}
      ORDER BY on_day, base, quote, source`,
  );
  return found.map(rateOfRow);
}

/** Rates by day, oldest first: all, or those that can serve some day from `first` on. What was taken back with its file is none. */
export function ratesWithin(tx: Tx, first?: LocalDate): Promise<ExchangeRate[]> {
  return ratesWhere(
    tx,
    first === undefined
      ? Prisma.sql`true`
      : Prisma.sql`on_day >= ${plusDays(first, -DAY_LIMITS.staleRate)}::date`,
  );
}

/** The rates of one source, by day. */
export function ratesOfSource(tx: Tx, source: string): Promise<ExchangeRate[]> {
  return ratesWhere(tx, Prisma.sql`source = ${source}`);
}

/** Every exchange rate of the workspace, by day. */
export function exchangeRates(scope: Scope): Promise<ExchangeRate[]> {
  return inWorkspace(scope, (tx) => ratesWithin(tx));
}

const keyOf = ({ base, quote, source, on }: ExchangeRate) => ({ base, quote, source, onDay: dateOf(on) });

async function stored(tx: Tx, { base, quote, source, on }: ExchangeRate): Promise<ExchangeRate | null> {
  const [found] = await ratesWhere(
    tx,
    Prisma.sql`(on_day, base, quote, source) = (${on}::date, ${base}, ${quote}, ${source})`,
  );
  return found ?? null;
}

/** One published rate. The same day, pair and source again: repeated when the rate is the same, else a conflict. */
export function addExchangeRate(scope: Scope, entry: ExchangeRateEntry): Promise<Written<ExchangeRate>> {
  return inWorkspace(scope, async (tx) => {
    const faults = dayFaults("date", entry.on, todayOf(await workspaceWithin(tx)));
    if (faults.length > 0) return refused(faults);
    const there = await stored(tx, entry);
    if (there !== null) return there.rate.equals(entry.rate) ? repeated(there) : conflict(there);
    await insertRates(tx, [entry], null);
    return accepted(entry);
  });
}

/** A published rate that was typed wrong, put right; the change log keeps the earlier one. */
export function changeExchangeRate(scope: Scope, entry: ExchangeRateEntry): Promise<Written<ExchangeRate>> {
  return inWorkspace(scope, async (tx) => {
    if ((await stored(tx, entry)) === null) return NOT_THERE;
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
    const writable = good.map(({ entry }) => entry);
    const added = await insertRates(tx, writable, null);
    const against = await rows<{ place: number }>(
      tx,
      Prisma.sql`SELECT g.place FROM ${givenRates(writable)} JOIN exchange_rate e USING (on_day, base, quote, source)
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
