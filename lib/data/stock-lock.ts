import "server-only";
import type { Tx } from "./client.ts";
import { lotWithin, type StoredLot } from "./lot-rows.ts";

/** A live lot, kept from other writers until the transaction ends: two events of one lot are recorded one after the other. */
export async function lockedLot(tx: Tx, id: string): Promise<StoredLot | null> {
  await tx.$queryRaw`SELECT 1 AS one FROM lot WHERE id = ${id}::uuid FOR NO KEY UPDATE`;
  const there = await lotWithin(tx, id);
  return there === null || there.deletedAt !== null ? null : there;
}

/** Live lots by their ids, locked in one order, so that two writers never wait for each other. Those not there are left out. */
export async function lockedLots(tx: Tx, ids: readonly string[]): Promise<ReadonlyMap<string, StoredLot>> {
  const lots = new Map<string, StoredLot>();
  for (const id of [...new Set(ids)].sort()) {
    const found = await lockedLot(tx, id);
    if (found !== null) lots.set(id, found);
  }
  return lots;
}
