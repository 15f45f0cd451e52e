import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Observation } from "../prices/observation.ts";
import { inWorkspace, type Scope } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { OBSERVATION, observationOfRow } from "./observation-rows.ts";
import { manyRows } from "./rows.ts";

/** The newest live sightings of each of some materials, at most `each` of every one, seen by a day: for lists with a small line. */
export function recentObservations(
  scope: Scope,
  materialIds: readonly string[],
  until: LocalDate,
  each = 40,
): Promise<Observation[]> {
  return inWorkspace(scope, async (tx) => {
    const found = await manyRows(
      tx,
      OBSERVATION,
      Prisma.sql`FROM unnest(${[...materialIds]}::text[]::uuid[]) AS wanted(id)
        CROSS JOIN LATERAL (
          SELECT * FROM observation s
          WHERE s.material_id = wanted.id AND s.deleted_at IS NULL AND s.seen_on <= ${until}::date
          ORDER BY s.seen_on DESC, s.sequence DESC LIMIT ${each}
        ) o
        ORDER BY o.seen_on, o.sequence`,
    );
    return found.map(observationOfRow);
  });
}
