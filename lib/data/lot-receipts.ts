import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import type { Fault, Written } from "../fault.ts";
import { faultsOfLot } from "../stock/ledger.ts";
import type { Receipt } from "../stock/lot.ts";
import type { ReceiptEntry } from "../stock/stock-act-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { countedDay, dayFaults } from "./day-faults.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import { Prisma } from "./generated/client.ts";
import type { StoredLot } from "./lot-rows.ts";
import { placeWithin } from "./place-rows.ts";
import { dateOf, digits, row, storedDay, storedDecimal } from "./rows.ts";
import { liveEventsOf } from "./stock-event-rows.ts";
import { lockedLot } from "./stock-lock.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { accepted, fault, NOT_THERE, refused, repeated } from "./written.ts";

/** A receipt as it is kept; undoneAt says when it was undone. */
export type StoredReceipt = Readonly<{
  id: string;
  lotId: string;
  quantity: Decimal;
  on: LocalDate;
  placeId: string | null;
  undoneAt: string | null;
}>;

type ReceiptRow = Readonly<{
  id: string;
  lot_id: string;
  quantity: string;
  on_day: string;
  place_id: string | null;
  undone_at: string | null;
}>;

async function receiptWithin(tx: Tx, id: string): Promise<StoredReceipt | null> {
  const found = await row<ReceiptRow>(
    tx,
    Prisma.sql`SELECT id, lot_id, quantity::text, on_day, place_id, undone_at FROM lot_receipt WHERE id = ${id}::uuid`,
  );
  if (found === null) return null;
  return {
    id: found.id,
    lotId: found.lot_id,
    quantity: storedDecimal(found.quantity),
    on: storedDay(found.on_day),
    placeId: found.place_id,
    undoneAt: found.undone_at,
  };
}

/** One receipt of a lot, an undone one too; null: not there. */
export function lotReceipt(scope: Scope, id: string): Promise<StoredReceipt | null> {
  return inWorkspace(scope, (tx) => receiptWithin(tx, id));
}

/** What a lot cannot receive: more than is still to come, or before it was ordered. */
function receiptFaults(lot: StoredLot, { quantity, on }: Receipt): Fault[] {
  if (on < lot.orderedOn) return [fault("on", "before-acquisition")];
  const has = lot.quantity.minus(lot.receipts.reduce((sum, one) => sum.plus(one.quantity), ZERO));
  return quantity.greaterThan(has) ? [fault("quantity", "more-than-ordered", { has: has.toFixed() })] : [];
}

/** A lot as it would be with other receipts: a later event may need one of them. */
async function lifeFaults(tx: Tx, lot: StoredLot, receipts: readonly Receipt[]): Promise<Fault[]> {
  return faultsOfLot({ ...lot, receipts }, await liveEventsOf(tx, lot.id));
}

/**
 * Some of what was ordered has come in. not-there when the lot is not. Faults: more-than-ordered (quantity, with what is still
 * to come), before-acquisition, day-ahead (on), not-there, archived (placeId). Source: rules.md R9 (received in parts).
 */
export function addReceipt(
  scope: Scope,
  lotId: string,
  id: string,
  entry: ReceiptEntry,
): Promise<Written<StoredReceipt>> {
  const hash = entryHash({ lotId, ...entry });
  return inWorkspace(scope, async (tx) => {
    const lot = await lockedLot(tx, lotId);
    const stored = () => receiptWithin(tx, id);
    return createdOnce<StoredReceipt>(tx, { table: "lot_receipt", id, hash, stored }, async () => {
      if (lot === null) return NOT_THERE;
      const today = todayOf(await workspaceWithin(tx));
      const { quantity, placeId } = entry;
      const on = countedDay(entry.on, today);
      const put = placeId === null ? null : await placeWithin(tx, placeId);
      const faults = [
        ...dayFaults("on", entry.on, today),
        ...receiptFaults(lot, { quantity, on }),
        ...(placeId !== null && put === null ? [fault("placeId", "not-there")] : []),
        ...(put !== null && put.archivedOn !== null ? [fault("placeId", "archived")] : []),
      ];
      if (faults.length > 0) return refused(faults);
      const later = await lifeFaults(tx, lot, [...lot.receipts, { quantity, on, placeId }]);
      if (later.length > 0) return refused(later);
      const data = { id, lotId, quantity: digits(quantity), onDay: dateOf(on), placeId, entryHash: hash };
      await tx.lotReceipt.create({ data, select: { id: true } });
      const made = await receiptWithin(tx, id);
      return made === null ? NOT_THERE : accepted(made);
    });
  });
}

async function setUndone(scope: Scope, id: string, undone: boolean): Promise<Written<StoredReceipt>> {
  return inWorkspace(scope, async (tx) => {
    const named = await receiptWithin(tx, id);
    const lot = named === null ? null : await lockedLot(tx, named.lotId);
    const there = await receiptWithin(tx, id);
    if (there === null || lot === null) return NOT_THERE;
    if ((there.undoneAt !== null) === undone) return repeated(there);
    const faults = undone ? [] : receiptFaults(lot, there);
    const others = lot.receipts.filter((receipt) => receipt.id !== id);
    const later = await lifeFaults(tx, lot, undone ? others : [...others, there]);
    if (faults.length + later.length > 0) return refused([...faults, ...later]);
    await tx.lotReceipt.updateMany({ where: { id }, data: { undoneAt: undone ? new Date() : null } });
    return accepted((await receiptWithin(tx, id)) ?? there);
  });
}

/** As if it had not come in; it stays readable. Faults: event-in-the-way, what was taken of it since. */
export function undoReceipt(scope: Scope, id: string): Promise<Written<StoredReceipt>> {
  return setUndone(scope, id, true);
}

/** Brings an undone receipt back. Faults: more-than-ordered, event-in-the-way. */
export function redoReceipt(scope: Scope, id: string): Promise<Written<StoredReceipt>> {
  return setUndone(scope, id, false);
}
