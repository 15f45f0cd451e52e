import "server-only";
import type { Reading } from "../files/reading.ts";
import type { ExchangeRate } from "../rates/exchange-rate.ts";
import { type RateFated, rateFates } from "../rates/rate-fates.ts";
import type { RateRead } from "../rates/rate-read.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { insertRates } from "./exchange-rate-insert.ts";
import { ratesOfSource } from "./exchange-rates.ts";
import { noteTakenFile, takenFileWithin } from "./taken-files.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";

/** A file of rates, read: its rates are kept as the source's. */
export type RatesToTake = Readonly<{
  name: string;
  source: string;
  readings: readonly Reading<RateRead>[];
}>;

async function fatesWithin(tx: Tx, { source, readings }: RatesToTake): Promise<RateFated[]> {
  const today = todayOf(await workspaceWithin(tx));
  return rateFates(readings, await ratesOfSource(tx, source), { source, today });
}

/** What taking a file in would do, row by row; nothing is written. */
export function ratesFated(scope: Scope, file: RatesToTake): Promise<RateFated[]> {
  return inWorkspace(scope, (tx) => fatesWithin(tx, file));
}

/** How many rates were added; the rest were there, contradicted what is there, were refused or passed over. */
export type RatesTaken = Readonly<{ added: number; fates: readonly RateFated[] }>;

/**
 * Takes a file in: its new rates are added, nothing there is changed, all in one transaction. The same id again, and the
 * same file again, add nothing.
 */
export function takeRates(scope: Scope, id: string, file: RatesToTake): Promise<RatesTaken> {
  return inWorkspace(scope, async (tx) => {
    await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtext(${`rates ${scope.workspaceId} ${file.source}`}))`;
    const fates = await fatesWithin(tx, file);
    const entries = fates.flatMap(({ reading, fate }): ExchangeRate[] =>
      fate === "new" && reading.fate === "accepted" ? [{ ...reading.value, source: file.source }] : [],
    );
    if (entries.length === 0 || (await takenFileWithin(tx, id)) !== null) return { added: 0, fates };
    await noteTakenFile(
      tx,
      { id, kind: "rates", name: file.name, source: file.source, indexId: null },
      entries.length,
    );
    return { added: await insertRates(tx, entries, id), fates };
  });
}
