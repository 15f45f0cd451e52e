import "server-only";
import type { Fault, Written } from "../fault.ts";
import type { Store } from "../prices/store.ts";
import type { StoreEntry, StorePatch } from "../prices/store-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import { nameFaults } from "./names.ts";
import { dateOf, dateOrNull, digits, digitsOrNull } from "./rows.ts";
import { storesWithin, storeWithin } from "./store-rows.ts";
import { isRegionKnown } from "./tax-regions.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { accepted, fault, NOT_THERE, refused, repeated } from "./written.ts";

/** The workspace's stores by name: live ones, or the archived ones only. */
export function storesOf(scope: Scope, { archived = false }: { archived?: boolean } = {}): Promise<Store[]> {
  return inWorkspace(scope, (tx) => storesWithin(tx, archived ? "archived" : "live"));
}

/** The store of an id in the workspace, or null. */
export function store(scope: Scope, id: string): Promise<Store | null> {
  return inWorkspace(scope, (tx) => storeWithin(tx, id));
}

async function faultsOf(tx: Tx, id: string, entry: StorePatch): Promise<Fault[]> {
  const faults = entry.name === undefined ? [] : await nameFaults(tx, "store", entry.name, id);
  if (entry.taxRegion !== undefined && !(await isRegionKnown(tx, entry.taxRegion)))
    faults.push(fault("taxRegion", "unknown-region"));
  return faults;
}

function columns({
  tripCost,
  distanceKm,
  importCharges,
  restockingPercent,
  discounts: _,
  ...plain
}: StorePatch) {
  return {
    ...plain,
    ...(tripCost === undefined
      ? {}
      : { tripCost: digitsOrNull(tripCost?.amount ?? null), tripCurrency: tripCost?.currency ?? null }),
    ...(distanceKm === undefined ? {} : { distanceKm: digitsOrNull(distanceKm) }),
    ...(restockingPercent === undefined ? {} : { restockingPercent: digitsOrNull(restockingPercent) }),
    ...(importCharges === undefined ? {} : { importChargesConfirmed: importCharges !== null }),
  };
}

/** Discounts and import charges are replaced as whole lists; the change log keeps the earlier ones. */
async function replaceLists(
  tx: Tx,
  storeId: string,
  { discounts, importCharges }: StorePatch,
): Promise<void> {
  if (discounts !== undefined) {
    await tx.storeDiscount.deleteMany({ where: { storeId } });
    await tx.storeDiscount.createMany({
      data: discounts.map(({ category, percent, from, until }) => ({
        storeId,
        category,
        percent: digits(percent),
        fromDay: dateOrNull(from),
        untilDay: dateOrNull(until),
      })),
    });
  }
  if (importCharges !== undefined) {
    await tx.storeImportCharge.deleteMany({ where: { storeId } });
    await tx.storeImportCharge.createMany({
      data: (importCharges ?? []).map(({ name, percent, perOrder, recoverable, from, until }) => ({
        storeId,
        name,
        percent: digits(percent),
        perOrder: digitsOrNull(perOrder),
        recoverable,
        fromDay: dateOrNull(from),
        untilDay: dateOrNull(until),
      })),
    });
  }
}

async function stored(tx: Tx, id: string): Promise<Written<Store>> {
  const value = await storeWithin(tx, id);
  return value === null ? NOT_THERE : accepted(value);
}

/** Faults: name-taken, unknown-region. */
export function addStore(scope: Scope, id: string, entry: StoreEntry): Promise<Written<Store>> {
  const hash = entryHash(entry);
  return inWorkspace(scope, (tx) =>
    createdOnce(tx, { table: "store", id, hash, stored: () => storeWithin(tx, id) }, async () => {
      const faults = await faultsOf(tx, id, entry);
      if (faults.length > 0) return refused(faults);
      const { name, taxRegion, currency, pricesIncludeTax } = entry;
      await tx.store.create({
        data: {
          importChargesConfirmed: entry.importCharges !== null,
          ...columns(entry),
          id,
          name,
          taxRegion,
          currency,
          pricesIncludeTax,
          entryHash: hash,
        },
        select: { id: true },
      });
      await replaceLists(tx, id, entry);
      return stored(tx, id);
    }),
  );
}

/** Faults: name-taken, unknown-region. */
export function changeStore(scope: Scope, id: string, patch: StorePatch): Promise<Written<Store>> {
  return inWorkspace(scope, async (tx) => {
    if ((await storeWithin(tx, id)) === null) return NOT_THERE;
    const faults = await faultsOf(tx, id, patch);
    if (faults.length > 0) return refused(faults);
    await tx.store.updateMany({ where: { id }, data: columns(patch) });
    await replaceLists(tx, id, patch);
    return stored(tx, id);
  });
}

/** Out of the lists and of the offers from today on; its prices and lots stay. */
export function archiveStore(scope: Scope, id: string): Promise<Written<Store>> {
  return inWorkspace(scope, async (tx) => {
    const there = await storeWithin(tx, id);
    if (there === null) return NOT_THERE;
    if (there.archivedOn !== null) return repeated(there);
    const archivedOn = dateOf(todayOf(await workspaceWithin(tx)));
    await tx.store.updateMany({ where: { id }, data: { archivedOn } });
    return stored(tx, id);
  });
}

/** Faults: name-taken, when another store has its name by now. */
export function restoreStore(scope: Scope, id: string): Promise<Written<Store>> {
  return inWorkspace(scope, async (tx) => {
    const there = await storeWithin(tx, id);
    if (there === null) return NOT_THERE;
    if (there.archivedOn === null) return repeated(there);
    const faults = await nameFaults(tx, "store", there.name, id);
    if (faults.length > 0) return refused(faults);
    await tx.store.updateMany({ where: { id }, data: { archivedOn: null } });
    return stored(tx, id);
  });
}
