import "server-only";
import { aboutDatabase } from "./client.ts";

/** What database answers and how far its tables have come. */
export type DatabaseState = Readonly<{
  version: string;
  applied: number;
  newest: string | null;
  failed: number;
}>;

/** Asks the database how it is. Throws: what the client throws when it cannot be reached. */
export function databaseState(): Promise<DatabaseState> {
  return aboutDatabase(async (client) => {
    const [state] = await client.$queryRaw<DatabaseState[]>`
      SELECT current_setting('server_version') AS version, count(finished_at)::int AS applied,
        max(migration_name) FILTER (WHERE finished_at IS NOT NULL) AS newest,
        (count(*) - count(finished_at))::int AS failed
      FROM _prisma_migrations WHERE rolled_back_at IS NULL`;
    if (state === undefined) throw new Error("a count answered without a row");
    return state;
  });
}
