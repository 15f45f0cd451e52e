import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { ExposureFacts } from "../exposure/exposure-facts.ts";
import type { Tx } from "./client.ts";
import { byId, stockWithin } from "./gathered.ts";
import { Prisma } from "./generated/client.ts";
import { materialsWithin, materialWithin } from "./material-rows.ts";
import { historyWithin } from "./observations.ts";
import { materialIdsOf } from "./project-facts.ts";
import { projectsOfIds } from "./project-rows.ts";
import { requirementsWhere } from "./requirement-rows.ts";
import { valuedWithin } from "./valuation.ts";

/**
 * Everything about one material up to a day: all its sightings, lots and what happened to them, the requirements it is
 * wanted or was used for, every exchange rate. null: not there.
 */
export async function materialFactsWithin(
  tx: Tx,
  materialId: string,
  day: LocalDate,
): Promise<ExposureFacts | null> {
  if ((await materialWithin(tx, materialId)) === null) return null;
  const stock = await stockWithin(tx, Prisma.sql`l.material_id = ${materialId}::uuid`);
  const used = stock.events.flatMap(({ requirementId }) => requirementId ?? []);
  const requirements = await requirementsWhere(
    tx,
    Prisma.sql`(q.material_id = ${materialId}::uuid OR q.id = ANY(${used}::text[]::uuid[])
      OR EXISTS (SELECT 1 FROM requirement_alternative a WHERE a.requirement_id = q.id AND a.material_id = ${materialId}::uuid))`,
  );
  const projectIds = requirements.map((requirement) => requirement.projectId);
  return {
    ...(await valuedWithin(tx)),
    ...stock,
    requirements,
    materials: byId(await materialsWithin(tx, [materialId, ...materialIdsOf(requirements)])),
    projects: await projectsOfIds(tx, projectIds),
    observations: await historyWithin(tx, materialId, day),
  };
}
