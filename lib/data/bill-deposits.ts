import "server-only";
import type { DepositEventEntry } from "../bills/deposit-event-entry.ts";
import { depositEventFaults } from "../bills/deposit-events.ts";
import type { Written } from "../fault.ts";
import { depositEventWithin, type StoredDepositEvent } from "./bill-deposit-rows.ts";
import { type KeptBill, keptBill } from "./bill-terms.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { countedDay, dayFaults } from "./day-faults.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import { dateOf, digits } from "./rows.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { accepted, NOT_THERE, refused, repeated } from "./written.ts";

export type { StoredDepositEvent } from "./bill-deposit-rows.ts";

/** A live bill, kept from other writers until the transaction ends. */
async function lockedBill(tx: Tx, id: string): Promise<KeptBill | null> {
  await tx.$queryRaw`SELECT 1 AS one FROM bill WHERE id = ${id}::uuid FOR NO KEY UPDATE`;
  const there = await keptBill(tx, id);
  return there === null || there.deletedAt !== null ? null : there;
}

/** What became of a deposit of a bill, an undone one too (undoneAt says so). */
export function depositEvent(scope: Scope, id: string): Promise<StoredDepositEvent | null> {
  return inWorkspace(scope, (tx) => depositEventWithin(tx, id));
}

/**
 * So much of a bill's deposit given back or forfeited on a day; not-there when the bill is not, or was undone. A day ahead
 * counts as today. Faults: day-ahead and day-too-early (on), those of `depositEventFaults`.
 */
export function addDepositEvent(
  scope: Scope,
  billId: string,
  id: string,
  entry: DepositEventEntry,
): Promise<Written<StoredDepositEvent>> {
  const hash = entryHash({ billId, ...entry });
  return inWorkspace(scope, async (tx) => {
    const bill = await lockedBill(tx, billId);
    const stored = () => depositEventWithin(tx, id);
    return createdOnce(tx, { table: "deposit_event", id, hash, stored }, async () => {
      if (bill === null) return NOT_THERE;
      const today = todayOf(await workspaceWithin(tx));
      const on = countedDay(entry.on, today);
      const faults = [
        ...dayFaults("on", entry.on, today),
        ...depositEventFaults(bill, bill.deposited, { ...entry, on }),
      ];
      if (faults.length > 0) return refused(faults);
      await tx.depositEvent.create({
        data: {
          id,
          billId,
          deposit: entry.deposit,
          kind: entry.kind,
          amount: digits(entry.amount),
          onDay: dateOf(on),
          note: entry.note,
          entryHash: hash,
        },
        select: { id: true },
      });
      const placed = await depositEventWithin(tx, id);
      return placed === null ? NOT_THERE : accepted(placed);
    });
  });
}

async function setUndone(scope: Scope, id: string, undone: boolean): Promise<Written<StoredDepositEvent>> {
  return inWorkspace(scope, async (tx) => {
    const named = await depositEventWithin(tx, id);
    const bill = named === null ? null : await lockedBill(tx, named.billId);
    const there = await depositEventWithin(tx, id);
    if (there === null || bill === null) return NOT_THERE;
    if ((there.undoneAt !== null) === undone) return repeated(there);
    const faults = undone ? [] : depositEventFaults(bill, bill.deposited, there);
    if (faults.length > 0) return refused(faults);
    await tx.depositEvent.updateMany({ where: { id }, data: { undoneAt: undone ? new Date() : null } });
    return accepted((await depositEventWithin(tx, id)) ?? there);
  });
}

/** As if it had not happened: the deposit is held again; can be redone. */
export function undoDepositEvent(scope: Scope, id: string): Promise<Written<StoredDepositEvent>> {
  return setUndone(scope, id, true);
}

/** Brings an undone event back. Faults: more-than-held, when what happened since leaves too little. */
export function redoDepositEvent(scope: Scope, id: string): Promise<Written<StoredDepositEvent>> {
  return setUndone(scope, id, false);
}
