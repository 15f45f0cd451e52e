import "server-only";
import type { StockAct, StockActKind } from "../stock/stock-act.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { row, storedDay } from "./rows.ts";
import { eventsWithin, type StoredEvent } from "./stock-event-rows.ts";

type ActRow = Readonly<{
  id: string;
  kind: StockActKind;
  on_day: string;
  reason: string | null;
  undoes: readonly string[];
  undone_at: string | null;
}>;

/** An act as it is kept, with the events it made, undone ones too. */
export type StoredAct = Omit<StockAct, "events"> & Readonly<{ events: readonly StoredEvent[] }>;

/** One act, an undone one too, or null. */
export async function actWithin(tx: Tx, id: string): Promise<StoredAct | null> {
  const found = await row<ActRow>(
    tx,
    Prisma.sql`SELECT a.id, a.kind, a.on_day, a.reason, a.undoes, a.undone_at FROM stock_act a WHERE a.id = ${id}::uuid`,
  );
  if (found === null) return null;
  return {
    id: found.id,
    kind: found.kind,
    on: storedDay(found.on_day),
    reason: found.reason,
    undoes: found.undoes,
    events: await eventsWithin(tx, Prisma.sql`e.act_id = ${id}::uuid`),
    undoneAt: found.undone_at,
  };
}

/** The act, not undone, that took an event back; null: none did. */
export async function actThatUndid(tx: Tx, eventId: string): Promise<string | null> {
  const found = await row<{ id: string }>(
    tx,
    Prisma.sql`SELECT id FROM stock_act WHERE undoes @> ARRAY[${eventId}::uuid] AND undone_at IS NULL`,
  );
  return found?.id ?? null;
}

/** Events by their ids, undone ones too. */
export function eventsOfIds(tx: Tx, ids: readonly string[]): Promise<StoredEvent[]> {
  return eventsWithin(tx, Prisma.sql`e.id = ANY(${[...ids]}::text[]::uuid[])`);
}
