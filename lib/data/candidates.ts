import "server-only";
import type { Observation } from "../prices/observation.ts";
import { type Ask, type AskedOf, candidateIds } from "./candidates-query.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { OBSERVATION_COLUMNS, type ObservationRow, observationOfRow } from "./observation-rows.ts";
import { rows } from "./rows.ts";

export type { Ask, AskedOf } from "./candidates-query.ts";

/** The few sightings that answer what some materials were to be had for on some days (`candidateIds`); history stays where it is. */
export async function candidatesWithin(tx: Tx, asks: readonly Ask[], asked: AskedOf): Promise<Observation[]> {
  const once = [...new Map(asks.map((ask) => [`${ask.day} ${ask.materialId}`, ask])).values()];
  if (once.length === 0) return [];
  const found = await rows<ObservationRow>(
    tx,
    Prisma.sql`SELECT ${OBSERVATION_COLUMNS} FROM observation o JOIN (${candidateIds(once, asked)}) c ON c.id = o.id
      WHERE o.workspace_id = current_workspace()`,
  );
  return found.map(observationOfRow);
}
