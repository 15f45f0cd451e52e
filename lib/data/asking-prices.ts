import "server-only";
import type { Written } from "../fault.ts";
import type { AskingPrice } from "../stock/asking-price.ts";
import type { AskingPriceEntry } from "../stock/asking-price-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { countedDay, dayFaults } from "./day-faults.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import { Prisma } from "./generated/client.ts";
import { lotWithin } from "./lot-rows.ts";
import { type Columns, dateOf, digitsOrNull, manyRows, moneyOrNull, storedDay } from "./rows.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { accepted, fault, NOT_THERE, refused, repeated } from "./written.ts";

/** An asking price as it is kept; undoneAt says when it was undone. */
export type StoredAskingPrice = AskingPrice & Readonly<{ undoneAt: string | null }>;

type AskedRow = Readonly<{
  id: string;
  lot_id: string;
  amount: string | null;
  currency: string;
  since: string;
  note: string | null;
  sequence: number;
  undone_at: string | null;
}>;

const ASKED: Columns<AskedRow> = {
  id: "a.id",
  lot_id: "a.lot_id",
  amount: "a.amount::text",
  currency: "a.currency",
  since: "a.since",
  note: "a.note",
  sequence: "a.sequence",
  undone_at: "a.undone_at",
};

async function askedWithin(tx: Tx, only: Prisma.Sql): Promise<StoredAskingPrice[]> {
  const found = await manyRows<AskedRow>(
    tx,
    ASKED,
    Prisma.sql`FROM asking_price a WHERE ${only} ORDER BY a.since, a.sequence`,
  );
  return found.map((stored) => ({
    id: stored.id,
    lotId: stored.lot_id,
    amount: moneyOrNull(stored.amount, stored.currency),
    since: storedDay(stored.since),
    note: stored.note,
    sequence: stored.sequence,
    undoneAt: stored.undone_at,
  }));
}

async function askedOfId(tx: Tx, id: string): Promise<StoredAskingPrice | null> {
  return (await askedWithin(tx, Prisma.sql`a.id = ${id}::uuid`))[0] ?? null;
}

/** What is and was asked for a lot, or for every live lot, by day; undone ones never. */
export function askingPrices(scope: Scope, lotId?: string): Promise<StoredAskingPrice[]> {
  const only =
    lotId === undefined
      ? Prisma.sql`EXISTS (SELECT 1 FROM lot l WHERE l.workspace_id = a.workspace_id AND l.id = a.lot_id AND l.deleted_at IS NULL)`
      : Prisma.sql`a.lot_id = ${lotId}::uuid`;
  return inWorkspace(scope, (tx) => askedWithin(tx, Prisma.sql`a.undone_at IS NULL AND ${only}`));
}

/** One asking price, an undone one too. */
export function askingPrice(scope: Scope, id: string): Promise<StoredAskingPrice | null> {
  return inWorkspace(scope, (tx) => askedOfId(tx, id));
}

/**
 * What is asked for one of a lot from a day on; amount null: no longer for sale. Not there: no such live lot. A day ahead
 * counts as today. Faults: day-ahead, day-too-early, before-acquisition (since).
 */
export function addAskingPrice(
  scope: Scope,
  lotId: string,
  id: string,
  entry: AskingPriceEntry,
): Promise<Written<StoredAskingPrice>> {
  const hash = entryHash({ lotId, ...entry });
  return inWorkspace(scope, (tx) =>
    createdOnce(tx, { table: "asking_price", id, hash, stored: () => askedOfId(tx, id) }, async () => {
      const lot = await lotWithin(tx, lotId);
      if (lot === null || lot.deletedAt !== null) return NOT_THERE;
      const today = todayOf(await workspaceWithin(tx));
      const faults = [
        ...dayFaults("since", entry.since, today),
        ...(entry.since < lot.orderedOn ? [fault("since", "before-acquisition")] : []),
      ];
      if (faults.length > 0) return refused(faults);
      await tx.askingPrice.create({
        data: {
          id,
          lotId,
          amount: digitsOrNull(entry.amount),
          currency: entry.currency,
          since: dateOf(countedDay(entry.since, today)),
          note: entry.note,
          entryHash: hash,
        },
        select: { id: true },
      });
      const stored = await askedOfId(tx, id);
      return stored === null ? NOT_THERE : accepted(stored);
    }),
  );
}

async function setUndone(scope: Scope, id: string, undone: boolean): Promise<Written<StoredAskingPrice>> {
  return inWorkspace(scope, async (tx) => {
    const there = await askedOfId(tx, id);
    if (there === null) return NOT_THERE;
    if ((there.undoneAt !== null) === undone) return repeated(there);
    await tx.askingPrice.updateMany({ where: { id }, data: { undoneAt: undone ? new Date() : null } });
    return accepted((await askedOfId(tx, id)) ?? there);
  });
}

/** As if it had not been asked; what was asked before counts again. Can be redone. */
export function undoAskingPrice(scope: Scope, id: string): Promise<Written<StoredAskingPrice>> {
  return setUndone(scope, id, true);
}

/** Brings an undone asking price back. */
export function redoAskingPrice(scope: Scope, id: string): Promise<Written<StoredAskingPrice>> {
  return setUndone(scope, id, false);
}
