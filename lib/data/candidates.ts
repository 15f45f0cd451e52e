import "server-only";
import type { Observation } from "../prices/observation.ts";
import { type Ask, type AskedOf, candidateIds } from "./candidates-query.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { OBSERVATION, observationOfRow } from "./observation-rows.ts";
import { manyRows } from "./rows.ts";

export type { Ask, AskedOf } from "./candidates-query.ts";

/** The few sightings that answer what some materials were to be had for on some days (`candidateIds`); history stays where it is. */
export async function candidatesWithin(tx: Tx, asks: readonly Ask[], asked: AskedOf): Promise<Observation[]> {
  const once = [...new Map(asks.map((ask) => [`${ask.day} ${ask.materialId}`, ask])).values()];
  if (once.length === 0) return [];
  const found = await manyRows(
    tx,
    OBSERVATION,
    // OFFSET 0: each by its key; the planner would rather read them all.
    Prisma.sql`FROM (${candidateIds(once, asked)}) c CROSS JOIN LATERAL (
      SELECT * FROM observation s WHERE s.workspace_id = current_workspace() AND s.id = c.id OFFSET 0
    ) o`,
  );
  return found.map(observationOfRow);
}
