import "server-only";
import { v7 } from "uuid";
import { houseClient } from "./house-client.ts";

/** How many tries in how many seconds. */
export type Limit = Readonly<{ most: number; seconds: number }>;
/** Wrong passwords from one address. */
export const PASSWORD_LIMIT: Limit = { most: 10, seconds: 300 };
/** Wrong codes from one address. */
export const CODE_LIMIT: Limit = { most: 10, seconds: 600 };

/** Counts a try, in the database, so that a restart forgives nothing. False when there were too many lately. */
export async function mayTry(what: string, client: string, { most, seconds }: Limit): Promise<boolean> {
  const now = Date.now();
  const since = now - seconds * 1000;
  const [row] = await (await houseClient()).$queryRaw<{ count: number }[]>`
    INSERT INTO sign_in_attempt AS a (id, key, count, last_request) VALUES (${v7()}, ${`${client}|${what}`}, 1, ${now})
    ON CONFLICT (key) DO UPDATE SET count = CASE WHEN a.last_request < ${since} THEN 1 ELSE a.count + 1 END,
      last_request = CASE WHEN a.count >= ${most} AND a.last_request >= ${since} THEN a.last_request ELSE ${now} END
    RETURNING count`;
  return row !== undefined && row.count <= most;
}
