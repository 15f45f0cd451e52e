import "server-only";
import type { Fault } from "../fault.ts";
import type { Material } from "../materials/material.ts";
import { type Compared, substitutionRefusals } from "../materials/substitution.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { materialsWithin } from "./material-rows.ts";
import { rows } from "./rows.ts";
import { fault } from "./written.ts";

/** Pairs in which a material is wanted, or stands in for the wanted one. */
function pairsOf(tx: Tx, id: string): Promise<{ wanted: string; given: string }[]> {
  return rows(
    tx,
    Prisma.sql`SELECT DISTINCT q.material_id AS wanted, a.material_id AS given FROM requirement q
      JOIN requirement_alternative a ON a.workspace_id = q.workspace_id AND a.requirement_id = q.id
      WHERE q.material_id = ${id}::uuid OR a.material_id = ${id}::uuid`,
  );
}

/** The field of a material that a comparison looks at. */
function fieldOf(by: Compared): string {
  if (by === "category") return by;
  return by === "grade" || by === "hand" || by === "doorKind" || by === "treatment"
    ? `identity.${by}`
    : `dimensions.${by}`;
}

/**
 * Whether a change of a material would make it, or what is accepted in its place, no longer do the work: a door that stands
 * in for another is not turned to the other hand under a requirement. Faults: stands-in-elsewhere, once per field. What
 * did not do before the change either is left alone.
 */
export async function standInFaults(tx: Tx, before: Material, after: Material): Promise<Fault[]> {
  const pairs = await pairsOf(tx, before.id);
  if (pairs.length === 0) return [];
  const ids = pairs.flatMap(({ wanted, given }) => [wanted, given]).filter((id) => id !== before.id);
  const others = new Map((await materialsWithin(tx, ids)).map((other) => [other.id, other]));
  const refusals = (self: Material) =>
    pairs.flatMap(({ wanted, given }) => {
      const asked = wanted === self.id ? self : others.get(wanted);
      const offered = given === self.id ? self : others.get(given);
      if (asked === undefined || offered === undefined) return [];
      return substitutionRefusals(asked, offered).map(({ by }) => ({ pair: `${wanted} ${given} ${by}`, by }));
    });
  const old = new Set(refusals(before).map(({ pair }) => pair));
  const fields = refusals(after).flatMap(({ pair, by }) => (old.has(pair) ? [] : [fieldOf(by)]));
  return [...new Set(fields)].map((path) => fault(path, "stands-in-elsewhere"));
}
