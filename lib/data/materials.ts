import "server-only";
import type { Fault, Written } from "../fault.ts";
import { sourcesKept } from "../materials/figures-kept.ts";
import type { Material } from "../materials/material.ts";
import type { MaterialEntry, MaterialPatch } from "../materials/material-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import { type Figures, materialsWithin, materialWithin, storedFigures } from "./material-rows.ts";
import { nameFaults } from "./names.ts";
import { dateOf } from "./rows.ts";
import { standInFaults } from "./stand-in-checks.ts";
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

/** What an entry says, without the fields that came later and say nothing: it hashes as it did before they came. */
function said({ identity, sources, ...entry }: MaterialEntry) {
  const some = <T extends object>(value: T) => (Object.keys(value).length === 0 ? null : value);
  return { ...entry, identity: some(identity), sources: some(sources) };
}

/** Faults: name-taken. */
export function addMaterial(scope: Scope, id: string, entry: MaterialEntry): Promise<Written<Material>> {
  const hash = entryHash(said(entry));
  return inWorkspace(scope, (tx) =>
    createdOnce(tx, { table: "material", id, hash, stored: () => materialWithin(tx, id) }, async () => {
      const faults = await nameFaults(tx, "material", entry.name, id);
      if (faults.length > 0) return refused(faults);
      const { dimensions, identity, shelfLifeDays, sources, ...plain } = entry;
      const figures = storedFigures({ dimensions, identity, shelfLifeDays, sources });
      await tx.material.create({
        data: { ...plain, id, dimensions: figures, entryHash: hash },
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

/** The figures after a change. Sources that are not given anew go with the figures they spoke of. */
function changed(there: Material, { dimensions, identity, shelfLifeDays, sources }: MaterialPatch): Figures {
  const after = {
    dimensions: dimensions ?? there.dimensions,
    identity: identity ?? there.identity,
    shelfLifeDays: shelfLifeDays === undefined ? there.shelfLifeDays : shelfLifeDays,
  };
  return { ...after, sources: sources ?? sourcesKept(there.sources, there, after) };
}

/**
 * Faults: name-taken, already-in-use (the purchase unit of a material that has prices or lots), stands-in-elsewhere (what
 * a requirement accepts in another's place would no longer do).
 */
export function changeMaterial(scope: Scope, id: string, patch: MaterialPatch): Promise<Written<Material>> {
  return inWorkspace(scope, async (tx) => {
    const there = await materialWithin(tx, id);
    if (there === null) return NOT_THERE;
    const { dimensions: _, identity: __, shelfLifeDays: ___, sources: ____, ...plain } = patch;
    const figures = changed(there, patch);
    const faults = patch.name === undefined ? [] : await nameFaults(tx, "material", patch.name, id);
    if (patch.purchaseUnit !== undefined && patch.purchaseUnit !== there.purchaseUnit)
      faults.push(...(await unitFaults(tx, id)));
    faults.push(
      ...(await standInFaults(tx, there, {
        ...there,
        ...figures,
        category: patch.category ?? there.category,
      })),
    );
    if (faults.length > 0) return refused(faults);
    await tx.material.updateMany({ where: { id }, data: { ...plain, dimensions: storedFigures(figures) } });
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
