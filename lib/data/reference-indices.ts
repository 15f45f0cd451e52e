import "server-only";
import type { Written } from "../fault.ts";
import type { IndexValue, ReferenceIndex } from "../indices/index-value.ts";
import type { ReferenceIndexEntry } from "../indices/reference-index-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import { Prisma } from "./generated/client.ts";
import { indexValuesWithin } from "./index-values.ts";
import { row, rows } from "./rows.ts";
import { accepted, fault, NOT_THERE, refused } from "./written.ts";

const COLUMNS = Prisma.sql`i.id, i.name, i.series, i.publisher, i.base`;

function indexWithin(tx: Tx, id: string): Promise<ReferenceIndex | null> {
  return row<ReferenceIndex>(
    tx,
    Prisma.sql`SELECT ${COLUMNS} FROM reference_index i WHERE i.id = ${id}::uuid`,
  );
}

/** The indices there are, by name. */
export function referenceIndices(scope: Scope): Promise<ReferenceIndex[]> {
  return inWorkspace(scope, (tx) =>
    rows<ReferenceIndex>(tx, Prisma.sql`SELECT ${COLUMNS} FROM reference_index i ORDER BY i.name, i.id`),
  );
}

/** One index, or null. */
export function referenceIndex(scope: Scope, id: string): Promise<ReferenceIndex | null> {
  return inWorkspace(scope, (tx) => indexWithin(tx, id));
}

/** An index without values yet. Faults: name-taken at series, one of this series and publisher is there. */
export function addReferenceIndex(
  scope: Scope,
  id: string,
  entry: ReferenceIndexEntry,
): Promise<Written<ReferenceIndex>> {
  const hash = entryHash(entry);
  return inWorkspace(scope, (tx) =>
    createdOnce(tx, { table: "reference_index", id, hash, stored: () => indexWithin(tx, id) }, async () => {
      const { series, publisher } = entry;
      const there = await tx.referenceIndex.findFirst({
        where: { series, publisher },
        select: { id: true },
      });
      if (there !== null) return refused([fault("series", "name-taken")]);
      const base = entry.base ?? null;
      await tx.referenceIndex.create({
        data: { ...entry, id, base, entryHash: hash },
        select: { id: true },
      });
      return accepted({ ...entry, id, base });
    }),
  );
}

/** The index a material is held against, or none any more. */
export function nameIndexOfMaterial(
  scope: Scope,
  materialId: string,
  indexId: string | null,
): Promise<Written<string | null>> {
  return inWorkspace(scope, async (tx) => {
    if (indexId !== null && (await indexWithin(tx, indexId)) === null)
      return refused([fault("indexId", "not-there")]);
    const { count } = await tx.material.updateMany({ where: { id: materialId }, data: { indexId } });
    return count === 0 ? NOT_THERE : accepted(indexId);
  });
}

/** A material's index with every value published; null: it names none. */
export type MaterialIndex = Readonly<{ index: ReferenceIndex; values: readonly IndexValue[] }>;

/** The index a material names, with its values, revisions too. */
export function indexOfMaterial(scope: Scope, materialId: string): Promise<MaterialIndex | null> {
  return inWorkspace(scope, async (tx) => {
    const index = await row<ReferenceIndex>(
      tx,
      Prisma.sql`SELECT ${COLUMNS} FROM reference_index i JOIN material m ON m.index_id = i.id WHERE m.id = ${materialId}::uuid`,
    );
    return index === null ? null : { index, values: await indexValuesWithin(tx, index.id) };
  });
}

/** The materials that name an index, by name; archived ones too. */
export function materialsOfIndex(scope: Scope, indexId: string): Promise<{ id: string; name: string }[]> {
  return inWorkspace(scope, (tx) =>
    rows<{ id: string; name: string }>(
      tx,
      Prisma.sql`SELECT m.id, m.name FROM material m WHERE m.index_id = ${indexId}::uuid ORDER BY m.name, m.id`,
    ),
  );
}
