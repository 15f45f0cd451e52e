import "server-only";
import type { DepositEvent } from "../bills/deposit-events.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { type Columns, manyRows, storedDay, storedDecimal } from "./rows.ts";

/** What became of a deposit, as it is kept; undoneAt says when it was undone. */
export type StoredDepositEvent = DepositEvent & Readonly<{ undoneAt: string | null }>;

type EventRow = Readonly<{
  id: string;
  bill_id: string;
  deposit: number;
  kind: DepositEvent["kind"];
  amount: string;
  on_day: string;
  note: string | null;
  sequence: number;
  undone_at: string | null;
}>;

const EVENT: Columns<EventRow> = {
  id: "d.id",
  bill_id: "d.bill_id",
  deposit: "d.deposit",
  kind: "d.kind",
  amount: "d.amount::text",
  on_day: "d.on_day",
  note: "d.note",
  sequence: "d.sequence",
  undone_at: "d.undone_at",
};

/** What became of deposits, of `<only>` (a condition on a table called d), in the order it happened. */
export async function depositEventsWithin(tx: Tx, only: Prisma.Sql): Promise<StoredDepositEvent[]> {
  const found = await manyRows(
    tx,
    EVENT,
    Prisma.sql`FROM deposit_event d WHERE ${only} ORDER BY d.on_day, d.sequence`,
  );
  return found.map((stored) => ({
    id: stored.id,
    billId: stored.bill_id,
    deposit: stored.deposit,
    kind: stored.kind,
    amount: storedDecimal(stored.amount),
    on: storedDay(stored.on_day),
    note: stored.note,
    sequence: stored.sequence,
    undoneAt: stored.undone_at,
  }));
}

/** One of them, an undone one too. */
export async function depositEventWithin(tx: Tx, id: string): Promise<StoredDepositEvent | null> {
  return (await depositEventsWithin(tx, Prisma.sql`d.id = ${id}::uuid`))[0] ?? null;
}
