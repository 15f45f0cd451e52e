import "server-only";
import type { Quantity } from "../measure/units.ts";
import { type Takeoff, takeoffOf } from "../takeoff/takeoff-entry.ts";
import { typedYield } from "../takeoff/yield.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { row } from "./rows.ts";

/** A takeoff as stored, reckoned again; needs: the requirement each of its lines became, by the line's key. */
export type StoredTakeoff = Takeoff &
  Readonly<{
    id: string;
    projectId: string;
    /** What was asked and answered, as text. */
    inputs: unknown;
    needs: readonly Readonly<{ line: string; requirementId: string }>[];
    /** What one purchase unit gives, where it was typed with the takeoff, by the line's key. */
    yields: ReadonlyMap<string, Quantity>;
  }>;

type TakeoffRow = Readonly<{
  id: string;
  project_id: string;
  calculator: string;
  unit_system: string;
  inputs: unknown;
  yields: Readonly<Record<string, string>>;
  needs: readonly { line: string; requirement: string }[];
}>;

const TAKEOFF = Prisma.sql`SELECT t.id, t.project_id, t.calculator, t.unit_system, t.inputs, t.yields,
  (SELECT coalesce(json_agg(json_build_object('line', q.takeoff_line, 'requirement', q.id) ORDER BY q.sequence), '[]')
    FROM requirement q WHERE q.workspace_id = t.workspace_id AND q.takeoff_id = t.id) AS needs
  FROM takeoff t`;

function takeoffOfRow(stored: TakeoffRow): StoredTakeoff {
  const { id, project_id: projectId, calculator, unit_system: system, inputs } = stored;
  const read = takeoffOf({ calculator, system, inputs });
  if (!read.ok)
    throw new Error(`the stored takeoff ${id} is refused by its calculator: ${JSON.stringify(read.faults)}`);
  const needs = stored.needs.map(({ line, requirement }) => ({ line, requirementId: requirement }));
  const yields = new Map(
    Object.entries(stored.yields).map(([line, text]) => [line, typedYield().parse(text)]),
  );
  return { ...read.value, id, projectId, inputs, needs, yields };
}

/** The takeoff of an id in a transaction's workspace, or null. */
export async function takeoffWithin(tx: Tx, id: string): Promise<StoredTakeoff | null> {
  const found = await row<TakeoffRow>(tx, Prisma.sql`${TAKEOFF} WHERE t.id = ${id}::uuid`);
  return found === null ? null : takeoffOfRow(found);
}

/** The takeoff a requirement came of, or null. */
export async function takeoffIdOf(tx: Tx, requirementId: string): Promise<string | null> {
  const found = await row<{ takeoff_id: string | null }>(
    tx,
    Prisma.sql`SELECT takeoff_id FROM requirement WHERE id = ${requirementId}::uuid`,
  );
  return found?.takeoff_id ?? null;
}
