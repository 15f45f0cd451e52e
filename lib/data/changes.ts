import "server-only";
import { inWorkspace, type Scope } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import type { Page } from "./observations.ts";
import { rows } from "./rows.ts";

/** Who changed what, when: the row as it was and as it is now. noun: the table's name; figures are text or JSON as stored. */
export type Change = Readonly<{
  id: string;
  at: string;
  actor: string;
  noun: string;
  rowId: string;
  action: string;
  before: Readonly<Record<string, unknown>> | null;
  after: Readonly<Record<string, unknown>> | null;
}>;

type ChangeRow = Omit<Change, "rowId"> & Readonly<{ row_id: string }>;

/** The change log, the newest first: all of it, or what touched one thing (a lot, and what happened to it). */
export function changesOf(
  scope: Scope,
  { of, limit = 100, cursor = null }: { of?: string; limit?: number; cursor?: string | null } = {},
): Promise<Page<Change>> {
  return inWorkspace(scope, async (tx) => {
    const only =
      of === undefined
        ? Prisma.empty
        : Prisma.sql`AND (c.row_id = ${of}::uuid OR ${of} IN (coalesce(c.after, c.before) ->> 'lot_id',
            coalesce(c.after, c.before) ->> 'observation_id', coalesce(c.after, c.before) ->> 'project_id',
            coalesce(c.after, c.before) ->> 'requirement_id', coalesce(c.after, c.before) ->> 'store_id',
            coalesce(c.after, c.before) ->> 'bill_id', coalesce(c.after, c.before) ->> 'takeoff_id'))`;
    const after = cursor === null ? Prisma.empty : Prisma.sql`AND c.id < ${cursor}::bigint`;
    const found = await rows<ChangeRow>(
      tx,
      Prisma.sql`SELECT c.id::text, c.at, c.actor, c.noun, c.row_id, c.action, numbers_as_text(c.before) AS before,
        numbers_as_text(c.after) AS after FROM change c WHERE true ${only} ${after} ORDER BY c.id DESC LIMIT ${limit + 1}`,
    );
    const items = found.slice(0, limit).map(({ row_id, ...change }) => ({ ...change, rowId: row_id }));
    return { items, next: found.length > limit ? (items.at(-1)?.id ?? null) : null };
  });
}
