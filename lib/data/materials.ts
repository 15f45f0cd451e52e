import "server-only";
import type { Fault, Written } from "../fault.ts";
import type { Material } from "../materials/material.ts";
import type { MaterialEntry, MaterialPatch } from "../materials/material-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import { materialsWithin, materialWithin, storedDimensions } from "./material-rows.ts";
import { nameFaults } from "./names.ts";
import { dateOf } from "./rows.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { accepted, fault, NOT_THERE, refused, repeated } from "./written.ts";

/** The workspace's materials by name: live ones, or the archived ones only. */
export function materialsOf(
  scope: Scope,
  { archived = false }: { archived?: boolean } = {},
): Promise<Material[]> {
  return inWorkspace(scope, (tx) => materialsWithin(tx, archived ? "archived" : "live"));
}

/** The material of an id in the workspace, or null. */
export function material(scope: Scope, id: string): Promise<Material | null> {
  return inWorkspace(scope, (tx) => materialWithin(tx, id));
}

async function stored(tx: Tx, id: string): Promise<Written<Material>> {
  const value = await materialWithin(tx, id);
  return value === null ? NOT_THERE : accepted(value);
}

/** Faults: name-taken. */
export function addMaterial(scope: Scope, id: string, entry: MaterialEntry): Promise<Written<Material>> {
  const hash = entryHash(entry);
  return inWorkspace(scope, (tx) =>
    createdOnce(tx, { table: "material", id, hash, stored: () => materialWithin(tx, id) }, async () => {
      const faults = await nameFaults(tx, "material", entry.name, id);
      if (faults.length > 0) return refused(faults);
      await tx.material.create({
        data: { ...entry, id, dimensions: storedDimensions(entry.dimensions), entryHash: hash },
        select: { id: true },
      });
      return stored(tx, id);
    }),
  );
}

/** Lots, smallest quantities and factors are counted in the purchase unit: once there are any, another unit is another material. */
async function unitFaults(tx: Tx, id: string): Promise<Fault[]> {
  const of = { where: { materialId: id }, take: 1 };
  const used =
    (await tx.observation.count(of)) + (await tx.lot.count(of)) + (await tx.requirementAlternative.count(of));
  return used === 0 ? [] : [fault("purchaseUnit", "already-in-use")];
}

/** Faults: name-taken, already-in-use (the purchase unit of a material that has prices or lots). */
export function changeMaterial(scope: Scope, id: string, patch: MaterialPatch): Promise<Written<Material>> {
  return inWorkspace(scope, async (tx) => {
    const there = await materialWithin(tx, id);
    if (there === null) return NOT_THERE;
    const faults = patch.name === undefined ? [] : await nameFaults(tx, "material", patch.name, id);
    if (patch.purchaseUnit !== undefined && patch.purchaseUnit !== there.purchaseUnit)
      faults.push(...(await unitFaults(tx, id)));
    if (faults.length > 0) return refused(faults);
    const { dimensions, ...plain } = patch;
    await tx.material.updateMany({
      where: { id },
      data: dimensions === undefined ? plain : { ...plain, dimensions: storedDimensions(dimensions) },
    });
    return stored(tx, id);
  });
}

/** Out of the lists; its prices, lots and requirements stay. */
export function archiveMaterial(scope: Scope, id: string): Promise<Written<Material>> {
  return inWorkspace(scope, async (tx) => {
    const there = await materialWithin(tx, id);
    if (there === null) return NOT_THERE;
    if (there.archivedOn !== null) return repeated(there);
    const archivedOn = dateOf(todayOf(await workspaceWithin(tx)));
    await tx.material.updateMany({ where: { id }, data: { archivedOn } });
    return stored(tx, id);
  });
}

/** Faults: name-taken, when another material has its name by now. */
export function restoreMaterial(scope: Scope, id: string): Promise<Written<Material>> {
  return inWorkspace(scope, async (tx) => {
    const there = await materialWithin(tx, id);
    if (there === null) return NOT_THERE;
    if (there.archivedOn === null) return repeated(there);
    const faults = await nameFaults(tx, "material", there.name, id);
    if (faults.length > 0) return refused(faults);
    await tx.material.updateMany({ where: { id }, data: { archivedOn: null } });
    return stored(tx, id);
  });
}
