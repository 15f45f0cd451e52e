import "server-only";
import type { PurchaseUnit } from "../measure/units.ts";
import type { Requirement } from "../projects/project.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { dayOrNull, moneyOrNull, row, rows, storedDay, storedDecimal } from "./rows.ts";

type RequirementRow = Readonly<{
  id: string;
  project_id: string;
  material_id: string;
  closed_on: string | null;
  revisions: readonly {
    from: string;
    quantity: string;
    unit: PurchaseUnit;
    waste: string;
    needed: string;
    budget: string | null;
    currency: string | null;
    used: boolean;
  }[];
  alternatives: readonly { material: string; factor: string }[];
}>;

const REQUIREMENT = Prisma.sql`SELECT q.id, q.project_id, q.material_id, q.closed_on,
  (SELECT coalesce(json_agg(json_build_object('from', v.valid_from, 'quantity', v.quantity::text, 'unit', v.unit,
    'waste', v.waste_percent::text, 'needed', v.needed_by, 'budget', v.budget_unit_price::text,
    'currency', v.budget_currency, 'used', v.accepts_used) ORDER BY v.valid_from), '[]')
    FROM requirement_revision v WHERE v.workspace_id = q.workspace_id AND v.requirement_id = q.id) AS revisions,
  (SELECT coalesce(json_agg(json_build_object('material', a.material_id, 'factor', a.factor::text)
    ORDER BY a.material_id), '[]')
    FROM requirement_alternative a WHERE a.workspace_id = q.workspace_id AND a.requirement_id = q.id) AS alternatives
  FROM requirement q`;

function requirementOfRow(stored: RequirementRow): Requirement {
  return {
    id: stored.id,
    projectId: stored.project_id,
    materialId: stored.material_id,
    revisions: stored.revisions.map((revision) => ({
      validFrom: storedDay(revision.from),
      quantity: storedDecimal(revision.quantity),
      unit: revision.unit,
      wastePercent: storedDecimal(revision.waste),
      neededBy: storedDay(revision.needed),
      budgetUnitPrice: moneyOrNull(revision.budget, revision.currency),
      acceptsUsed: revision.used,
    })),
    alternatives: stored.alternatives.map(({ material, factor }) => ({
      materialId: material,
      factor: storedDecimal(factor),
    })),
    closedOn: dayOrNull(stored.closed_on),
  };
}

/** Requirements that meet a condition on a table called q, in the order they were entered. */
export async function requirementsWhere(tx: Tx, only: Prisma.Sql): Promise<Requirement[]> {
  return (await rows<RequirementRow>(tx, Prisma.sql`${REQUIREMENT} WHERE ${only} ORDER BY q.sequence`)).map(
    requirementOfRow,
  );
}

/** Requirements in the order they were entered: all, or one project's. */
export function requirementsWithin(tx: Tx, projectId?: string): Promise<Requirement[]> {
  const only = projectId === undefined ? Prisma.sql`true` : Prisma.sql`q.project_id = ${projectId}::uuid`;
  return requirementsWhere(tx, only);
}

/** The requirement of an id in a transaction's workspace, with its revisions, or null. */
export async function requirementWithin(tx: Tx, id: string): Promise<Requirement | null> {
  const found = await row<RequirementRow>(tx, Prisma.sql`${REQUIREMENT} WHERE q.id = ${id}::uuid`);
  return found === null ? null : requirementOfRow(found);
}
