import "server-only";
import type { Project, ProjectStatus } from "../projects/project.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { moneyOrNull, row, rows, storedDay } from "./rows.ts";

type ProjectRow = Readonly<{
  id: string;
  name: string;
  budget: string | null;
  budget_currency: string | null;
  note: string | null;
  statuses: readonly { status: ProjectStatus; from: string }[];
}>;

const PROJECT = Prisma.sql`SELECT p.id, p.name, p.budget::text, p.budget_currency, p.note,
  (SELECT coalesce(json_agg(json_build_object('status', s.status, 'from', s.from_day) ORDER BY s.from_day), '[]')
    FROM project_status s WHERE s.workspace_id = p.workspace_id AND s.project_id = p.id) AS statuses
  FROM project p`;

function projectOfRow(stored: ProjectRow): Project {
  return {
    id: stored.id,
    name: stored.name,
    statuses: stored.statuses.map(({ status, from }) => ({ status, from: storedDay(from) })),
    budget: moneyOrNull(stored.budget, stored.budget_currency),
    note: stored.note,
  };
}

/** Every project by name. */
export async function projectsWithin(tx: Tx): Promise<Project[]> {
  return (await rows<ProjectRow>(tx, Prisma.sql`${PROJECT} ORDER BY lower(p.name)`)).map(projectOfRow);
}

/** Projects of some ids, by name. */
export async function projectsOfIds(tx: Tx, ids: readonly string[]): Promise<Project[]> {
  const only = Prisma.sql`WHERE p.id = ANY(${[...new Set(ids)]}::text[]::uuid[])`;
  return (await rows<ProjectRow>(tx, Prisma.sql`${PROJECT} ${only} ORDER BY lower(p.name)`)).map(
    projectOfRow,
  );
}

/** The project of an id in a transaction's workspace, or null. */
export async function projectWithin(tx: Tx, id: string): Promise<Project | null> {
  const found = await row<ProjectRow>(tx, Prisma.sql`${PROJECT} WHERE p.id = ${id}::uuid`);
  return found === null ? null : projectOfRow(found);
}
