import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Fault } from "../fault.ts";
import type { Material } from "../materials/material.ts";
import type { Store } from "../prices/store.ts";
import { copiedReceipt } from "../stock/copied-receipt.ts";
import type { Paid } from "../stock/lot.ts";
import type { LotEntry } from "../stock/lot-entry.ts";
import type { Tx } from "./client.ts";
import { dayFaults } from "./day-faults.ts";
import { materialWithin } from "./material-rows.ts";
import { type StoredObservation, storedObservation } from "./observations.ts";
import { placeWithin } from "./place-rows.ts";
import { storeWithin } from "./store-rows.ts";
import { isRegionKnown } from "./tax-regions.ts";
import { fault } from "./written.ts";

/** What a lot names, read once. */
type Named = Readonly<{ material: Material | null; store: Store | null; seen: StoredObservation | null }>;

async function namedBy(tx: Tx, entry: LotEntry): Promise<Named> {
  const seen = entry.observationId === null ? null : await storedObservation(tx, entry.observationId);
  const storeId = entry.storeId ?? seen?.storeId ?? null;
  return {
    material: await materialWithin(tx, entry.materialId),
    store: storeId === null ? null : await storeWithin(tx, storeId),
    seen: seen?.deletedAt === null ? seen : null,
  };
}

/** An archived material or store is no obstacle: what was bought there was bought. */
function namedFaults(entry: LotEntry, { material, store, seen }: Named): Fault[] {
  const faults: Fault[] = [];
  if (material === null) faults.push(fault("materialId", "not-there"));
  if (entry.storeId !== null && store === null) faults.push(fault("storeId", "not-there"));
  if (entry.observationId !== null && seen === null) faults.push(fault("observationId", "not-there"));
  if (seen !== null && seen.materialId !== entry.materialId)
    faults.push(fault("observationId", "wrong-material"));
  return faults;
}

function datesFaults({ orderedOn, receipts, payments }: LotEntry, today: LocalDate): Fault[] {
  return [
    ...dayFaults("orderedOn", orderedOn, today),
    ...receipts.flatMap(({ on }) => dayFaults("acquiredOn", on, today)),
    ...payments.flatMap(({ on }, index) => dayFaults(`payments.${index}.on`, on, today)),
  ];
}

function paidFor(entry: LotEntry, { material, store, seen }: Named): Paid | null {
  if (entry.paid !== null) return entry.paid;
  return seen === null || material === null || store === null
    ? null
    : copiedReceipt(seen, material, store, entry);
}

/** A lot's entry with what it copies from the observation filled in. */
export type LotToStore = Readonly<{
  entry: LotEntry;
  paid: Paid;
  storeId: string | null;
  terms: LotEntry["terms"];
}>;

/**
 * What a new lot comes to in its surroundings, or what is wrong with it. Faults: not-there (materialId, storeId,
 * observationId), wrong-material (observationId), day-ahead and day-too-early (orderedOn, acquiredOn, payments),
 * unknown-region (paid.taxRegion), unknown-choice (terms: nothing is bought under "none left"), missing (paid: the
 * observation has no price to copy), other-currency (paid.currency: not the store's, and no reason given).
 */
export async function lotToStore(
  tx: Tx,
  entry: LotEntry,
  today: LocalDate,
): Promise<LotToStore | readonly Fault[]> {
  const named = await namedBy(tx, entry);
  const faults = [...namedFaults(entry, named), ...datesFaults(entry, today)];
  const region = entry.paid?.taxRegion ?? null;
  if (region !== null && !(await isRegionKnown(tx, region)))
    faults.push(fault("paid.taxRegion", "unknown-region"));
  if (entry.placeId && (await placeWithin(tx, entry.placeId)) === null)
    faults.push(fault("placeId", "not-there"));
  if (entry.terms === "none-left") faults.push(fault("terms", "unknown-choice"));
  if (faults.length > 0) return faults;
  const paid = paidFor(entry, named);
  if (paid === null) return [fault("paid", "missing")];
  if (named.store !== null && paid.currency !== named.store.currency && !entry.otherCurrency)
    return [fault("paid.currency", "other-currency", { store: named.store.currency })];
  const terms = entry.terms ?? named.seen?.terms ?? null;
  return { entry, paid, storeId: named.store?.id ?? null, terms: terms === "none-left" ? null : terms };
}
