import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { BasketFacts } from "../exposure/basket.ts";
import { inSnapshot, type Scope, type Tx } from "./client.ts";
import { byId } from "./gathered.ts";
import { Prisma } from "./generated/client.ts";
import { materialsWithin } from "./material-rows.ts";
import { OBSERVATION, observationOfRow } from "./observation-rows.ts";
import { projectWithin } from "./project-rows.ts";
import { requirementsWithin } from "./requirement-rows.ts";
import { manyRows } from "./rows.ts";
import { valuedWithin } from "./valuation.ts";

/** Every live shelf sighting of some materials up to a day, the oldest first: a going price rests on nothing else (R7). */
async function shelfHistory(tx: Tx, materialIds: readonly string[], until: LocalDate) {
  if (materialIds.length === 0) return [];
  const found = await manyRows(
    tx,
    OBSERVATION,
    Prisma.sql`FROM observation o WHERE o.material_id = ANY(${[...materialIds]}::text[]::uuid[])
      AND o.terms = 'shelf' AND o.deleted_at IS NULL AND o.seen_on <= ${until}::date
      ORDER BY o.seen_on, o.sequence`,
  );
  return found.map(observationOfRow);
}

/** What a project's basket index up to a day is computed from, on whatever base day; null: no such project. */
export function basketFacts(scope: Scope, projectId: string, day: LocalDate): Promise<BasketFacts | null> {
  return inSnapshot(scope, async (tx) => {
    const project = await projectWithin(tx, projectId);
    if (project === null) return null;
    const requirements = await requirementsWithin(tx, projectId);
    const ids = [...new Set(requirements.map(({ materialId }) => materialId))];
    return {
      valuation: (await valuedWithin(tx)).valuation,
      materials: byId(await materialsWithin(tx, ids)),
      projects: [project],
      requirements,
      observations: await shelfHistory(tx, ids, day),
    };
  });
}
