import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { ExposureFacts } from "../exposure/exposure-facts.ts";
import type { Observation } from "../prices/observation.ts";
import type { Requirement } from "../projects/project.ts";
import { candidatesWithin } from "./candidates.ts";
import type { Tx } from "./client.ts";
import { byId, firstDayOf, lotsFor, stockWithin } from "./gathered.ts";
import { Prisma } from "./generated/client.ts";
import { materialsWithin } from "./material-rows.ts";
import { projectsOfIds } from "./project-rows.ts";
import { requirementsWhere } from "./requirement-rows.ts";
import { valuedWithin } from "./valuation.ts";

/** Every material a requirement may be covered by. */
export function materialIdsOf(requirements: readonly Requirement[]): string[] {
  return requirements.flatMap((requirement) => [
    requirement.materialId,
    ...requirement.alternatives.map(({ materialId }) => materialId),
  ]);
}

/**
 * Condition on q: a project's requirements, and all others that may take some of the same limited offers: those of the
 * limited materials, and of every material that stands in for one of them or the other way round.
 */
function competing(projectId: string, limited: readonly string[]): Prisma.Sql {
  const own = Prisma.sql`q.project_id = ${projectId}::uuid`;
  if (limited.length === 0) return own;
  return Prisma.sql`(${own} OR q.material_id IN (
    WITH RECURSIVE stands_in AS (
      SELECT r.material_id AS one, a.material_id AS other FROM requirement r
      JOIN requirement_alternative a ON a.workspace_id = r.workspace_id AND a.requirement_id = r.id
    ), linked AS (
      SELECT unnest(${[...limited]}::text[]::uuid[]) AS id
      UNION
      SELECT CASE l.id WHEN s.one THEN s.other ELSE s.one END FROM linked l JOIN stands_in s ON l.id IN (s.one, s.other)
    )
    SELECT id FROM linked))`;
}

function limitedMaterials(observations: readonly Observation[]): string[] {
  const limited = observations.filter(({ maxQuantity }) => maxQuantity !== null);
  return [...new Set(limited.map(({ materialId }) => materialId))];
}

/**
 * What one project's exposure on a day is computed from. Other projects come along as far as they may take a limited offer
 * before it (R6); their own figures, and totals over all, are not whole then.
 */
export async function projectFactsWithin(tx: Tx, projectId: string, day: LocalDate): Promise<ExposureFacts> {
  const own = await requirementsWhere(tx, competing(projectId, []));
  const stock = await stockWithin(tx, lotsFor(own.map(({ id }) => id)));
  const valued = await valuedWithin(tx, firstDayOf(stock, day));
  const asked = { valuation: valued.valuation, knownOn: day, every: false };
  const first = new Set([...materialIdsOf(own), ...stock.lots.map(({ materialId }) => materialId)]);
  const asks = (ids: Iterable<string>) => [...ids].map((materialId) => ({ materialId, day }));
  const observations = await candidatesWithin(tx, asks(first), asked);
  const limited = limitedMaterials(observations);
  if (limited.length === 0)
    return {
      ...valued,
      ...stock,
      observations,
      requirements: own,
      projects: await projectsOfIds(tx, [projectId]),
      materials: byId(await materialsWithin(tx, [...first])),
    };
  const requirements = await requirementsWhere(tx, competing(projectId, limited));
  const held = await stockWithin(tx, lotsFor(requirements.map(({ id }) => id)));
  const all = new Set([...materialIdsOf(requirements), ...held.lots.map(({ materialId }) => materialId)]);
  const others = [...all].filter((id) => !first.has(id));
  return {
    ...valued,
    ...held,
    requirements,
    observations: [...observations, ...(await candidatesWithin(tx, asks(others), asked))],
    projects: await projectsOfIds(tx, [projectId, ...requirements.map((one) => one.projectId)]),
    materials: byId(await materialsWithin(tx, [...all])),
  };
}
