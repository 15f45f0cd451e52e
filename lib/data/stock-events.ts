import "server-only";
import type { Fault, Written } from "../fault.ts";
import { faultsOfLot, faultsOfUndo } from "../stock/ledger.ts";
import type { Lot, StockEvent } from "../stock/lot.ts";
import type { StockEventEntry } from "../stock/stock-event-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import { Prisma } from "./generated/client.ts";
import { actThatUndid } from "./stock-act-rows.ts";
import { setActUndone } from "./stock-act-undo.ts";
import { insertEvent } from "./stock-event-insert.ts";
import { eventsWithin, eventWithin, liveEventsOf, type StoredEvent } from "./stock-event-rows.ts";
import { lockedLot } from "./stock-lock.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { accepted, fault, NOT_THERE, refused, repeated } from "./written.ts";

export type { StoredEvent } from "./stock-event-rows.ts";

/** What happened to a lot, in order; undone events only when asked for. */
export function eventsOf(
  scope: Scope,
  lotId: string,
  { includeUndone = false }: { includeUndone?: boolean } = {},
): Promise<StoredEvent[]> {
  return inWorkspace(scope, (tx) =>
    includeUndone ? eventsWithin(tx, Prisma.sql`e.lot_id = ${lotId}::uuid`) : liveEventsOf(tx, lotId),
  );
}

/** What happened to some lots and was not undone, in order. */
export function liveEventsOfLots(scope: Scope, lotIds: readonly string[]): Promise<StoredEvent[]> {
  return inWorkspace(scope, (tx) =>
    eventsWithin(tx, Prisma.sql`e.lot_id = ANY(${[...lotIds]}::text[]::uuid[]) AND e.undone_at IS NULL`),
  );
}

/** One event, an undone one too (undoneAt says so). */
export function stockEvent(scope: Scope, id: string): Promise<StoredEvent | null> {
  return inWorkspace(scope, (tx) => eventWithin(tx, id));
}

/**
 * One thing that happened to a lot; not-there when the lot is not. Faults: those of `insertEvent`: on no day of the lot's
 * life may more be gone or held than there is, and the later event in the way is named.
 */
export function addStockEvent(
  scope: Scope,
  lotId: string,
  id: string,
  entry: StockEventEntry,
): Promise<Written<StockEvent>> {
  const hash = entryHash({ lotId, ...entry });
  return inWorkspace(scope, async (tx) => {
    const lot = await lockedLot(tx, lotId);
    return createdOnce(
      tx,
      { table: "stock_event", id, hash, stored: () => eventWithin(tx, id) },
      async () => {
        if (lot === null) return NOT_THERE;
        return insertEvent(tx, lot, { id, entry, hash }, todayOf(await workspaceWithin(tx)));
      },
    );
  });
}

type Change = (lot: Lot, event: StoredEvent, live: readonly StoredEvent[]) => Fault[];

/** What is part of an act is undone and redone with all of it, never by itself. */
async function ofItsAct(tx: Tx, id: string, actId: string, undone: boolean): Promise<Written<StockEvent>> {
  const written = await setActUndone(tx, actId, undone);
  if (!written.ok) return written.why === "conflict" ? NOT_THERE : written;
  const there = await eventWithin(tx, id);
  if (there === null) return NOT_THERE;
  return written.repeated ? repeated(there) : accepted(there);
}

async function setUndone(
  scope: Scope,
  id: string,
  undone: boolean,
  faultsFor: Change,
): Promise<Written<StockEvent>> {
  return inWorkspace(scope, async (tx) => {
    const named = await eventWithin(tx, id);
    if (named?.actId) return ofItsAct(tx, named.id, named.actId, undone);
    const lot = named === null ? null : await lockedLot(tx, named.lotId);
    const there = await eventWithin(tx, id);
    if (there === null || lot === null) return NOT_THERE;
    if ((there.undoneAt !== null) === undone) return repeated(there);
    const holds = undone ? null : await actThatUndid(tx, id);
    if (holds !== null) return refused([fault("", "held-by-an-act", { act: holds })]);
    const faults = faultsFor(lot, there, await liveEventsOf(tx, lot.id));
    if (faults.length > 0) return refused(faults);
    await tx.stockEvent.updateMany({ where: { id }, data: { undoneAt: undone ? new Date() : null } });
    return accepted((await eventWithin(tx, id)) ?? there);
  });
}

/**
 * As if it had not happened, with all that was done together with it; it stays readable and can be redone. Faults:
 * event-in-the-way, the later event that needs it; held-by-an-act.
 */
export function undoStockEvent(scope: Scope, id: string): Promise<Written<StockEvent>> {
  return setUndone(scope, id, true, (lot, { id: undone }, live) => faultsOfUndo(lot, live, undone));
}

/** Brings an undone event back. Faults: event-in-the-way, when what happened since leaves no room for it; held-by-an-act. */
export function redoStockEvent(scope: Scope, id: string): Promise<Written<StockEvent>> {
  return setUndone(scope, id, false, (lot, event, live) => faultsOfLot(lot, [...live, event]));
}
