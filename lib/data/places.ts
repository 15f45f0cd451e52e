import "server-only";
import type { Written } from "../fault.ts";
import type { Quantity } from "../measure/units.ts";
import type { Place } from "../stock/place.ts";
import type { PlaceEntry, PlacePatch } from "../stock/place-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import { nameFaults } from "./names.ts";
import { placesWithin, placeWithin } from "./place-rows.ts";
import { dateOf, digits, digitsOrNull } from "./rows.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { accepted, NOT_THERE, refused, repeated } from "./written.ts";

/** The workspace's places by name: live ones, or the archived ones only. */
export function placesOf(scope: Scope, { archived = false }: { archived?: boolean } = {}): Promise<Place[]> {
  return inWorkspace(scope, (tx) => placesWithin(tx, archived ? "archived" : "live"));
}

/** The place of an id, an archived one too, or null. */
export function place(scope: Scope, id: string): Promise<Place | null> {
  return inWorkspace(scope, (tx) => placeWithin(tx, id));
}

function limitColumns<N extends string>(name: N, limit: Quantity | null | undefined) {
  if (limit === undefined) return {};
  return {
    [name]: limit === null ? null : digits(limit.value),
    [`${name}Unit`]: limit?.unit ?? null,
  };
}

function columns({ area, volume, weight, count, ...plain }: PlacePatch) {
  return {
    ...plain,
    ...limitColumns("area", area),
    ...limitColumns("volume", volume),
    ...limitColumns("weight", weight),
    ...(count === undefined ? {} : { count: digitsOrNull(count) }),
  };
}

async function stored(tx: Tx, id: string): Promise<Written<Place>> {
  const value = await placeWithin(tx, id);
  return value === null ? NOT_THERE : accepted(value);
}

/** Faults: name-taken. */
export function addPlace(scope: Scope, id: string, entry: PlaceEntry): Promise<Written<Place>> {
  const hash = entryHash(entry);
  return inWorkspace(scope, (tx) =>
    createdOnce(tx, { table: "storage_place", id, hash, stored: () => placeWithin(tx, id) }, async () => {
      const faults = await nameFaults(tx, "storage_place", entry.name, id);
      if (faults.length > 0) return refused(faults);
      const data = { ...columns(entry), id, name: entry.name, entryHash: hash };
      await tx.storagePlace.create({ data, select: { id: true } });
      return stored(tx, id);
    }),
  );
}

/** What is left out stays; the change log keeps what was. Faults: name-taken. */
export function changePlace(scope: Scope, id: string, patch: PlacePatch): Promise<Written<Place>> {
  return inWorkspace(scope, async (tx) => {
    if ((await placeWithin(tx, id)) === null) return NOT_THERE;
    const faults = patch.name === undefined ? [] : await nameFaults(tx, "storage_place", patch.name, id);
    if (faults.length > 0) return refused(faults);
    await tx.storagePlace.updateMany({ where: { id }, data: columns(patch) });
    return stored(tx, id);
  });
}

/** Out of the lists: nothing is moved there any more; what lies there stays. */
export function archivePlace(scope: Scope, id: string): Promise<Written<Place>> {
  return inWorkspace(scope, async (tx) => {
    const there = await placeWithin(tx, id);
    if (there === null) return NOT_THERE;
    if (there.archivedOn !== null) return repeated(there);
    const archivedOn = dateOf(todayOf(await workspaceWithin(tx)));
    await tx.storagePlace.updateMany({ where: { id }, data: { archivedOn } });
    return stored(tx, id);
  });
}

/** Faults: name-taken, when another place has its name by now. */
export function restorePlace(scope: Scope, id: string): Promise<Written<Place>> {
  return inWorkspace(scope, async (tx) => {
    const there = await placeWithin(tx, id);
    if (there === null) return NOT_THERE;
    if (there.archivedOn === null) return repeated(there);
    const faults = await nameFaults(tx, "storage_place", there.name, id);
    if (faults.length > 0) return refused(faults);
    await tx.storagePlace.updateMany({ where: { id }, data: { archivedOn: null } });
    return stored(tx, id);
  });
}
