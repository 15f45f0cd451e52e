import "server-only";
import type { ExchangeRate } from "../rates/exchange-rate.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { digits } from "./rows.ts";

/** Entries as a table of the query: on_day, base, quote, rate, source and their place, from 1. */
export function givenRates(entries: readonly ExchangeRate[]): Prisma.Sql {
  return Prisma.sql`unnest(${entries.map(({ on }) => on)}::text[]::date[], ${entries.map(({ base }) => base)}::text[],
    ${entries.map(({ quote }) => quote)}::text[], ${entries.map(({ rate }) => digits(rate))}::text[]::numeric[],
    ${entries.map(({ source }) => source)}::text[]) WITH ORDINALITY AS g(on_day, base, quote, rate, source, place)`;
}

/**
 * Writes rates whose day, pair and source have none that stands, and answers how many. One that was taken back with its
 * file makes room for the new one. Of two of one key the first is written.
 */
export async function insertRates(
  tx: Tx,
  entries: readonly ExchangeRate[],
  takenFileId: string | null,
): Promise<number> {
  const given = givenRates(entries);
  const again =
    await tx.$executeRaw`UPDATE exchange_rate e SET rate = n.rate, taken_file_id = ${takenFileId}::uuid
    FROM (SELECT DISTINCT ON (on_day, base, quote, source) * FROM ${given} ORDER BY on_day, base, quote, source, place) n
    WHERE (e.on_day, e.base, e.quote, e.source) = (n.on_day, n.base, n.quote, n.source)
      AND e.taken_file_id IN (SELECT f.id FROM taken_file f WHERE f.undone_at IS NOT NULL)`;
  const added =
    await tx.$executeRaw`INSERT INTO exchange_rate (on_day, base, quote, rate, source, taken_file_id)
    SELECT on_day, base, quote, rate, source, ${takenFileId}::uuid FROM ${given} ORDER BY place
    ON CONFLICT (workspace_id, base, quote, source, on_day) DO NOTHING`;
  return again + added;
}
