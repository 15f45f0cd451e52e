import "server-only";
import type { StockEvent, StockEventKind } from "../stock/lot.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { type Columns, manyRows, moneyOrNull, storedDay, storedDecimal } from "./rows.ts";

/** An event as it is kept; undoneAt says when it was undone. */
export type StoredEvent = StockEvent & Readonly<{ undoneAt: string | null }>;

type EventRow = Readonly<{
  id: string;
  lot_id: string;
  kind: StockEventKind;
  quantity: string;
  on_day: string;
  requirement_id: string | null;
  amount: string | null;
  currency: string | null;
  reason: string | null;
  place_id: string | null;
  from_place_id: string | null;
  act_id: string | null;
  sequence: number;
  undone_at: string | null;
}>;

const EVENT: Columns<EventRow> = {
  id: "e.id",
  lot_id: "e.lot_id",
  kind: "e.kind",
  quantity: "e.quantity::text",
  on_day: "e.on_day",
  requirement_id: "e.requirement_id",
  amount: "e.amount::text",
  currency: "e.currency",
  reason: "e.reason",
  place_id: "e.place_id",
  from_place_id: "e.from_place_id",
  act_id: "e.act_id",
  sequence: "e.sequence",
  undone_at: "e.undone_at",
};

function eventOfRow(stored: EventRow): StoredEvent {
  return {
    id: stored.id,
    lotId: stored.lot_id,
    kind: stored.kind,
    quantity: storedDecimal(stored.quantity),
    on: storedDay(stored.on_day),
    requirementId: stored.requirement_id,
    amount: moneyOrNull(stored.amount, stored.currency),
    reason: stored.reason,
    placeId: stored.place_id,
    fromPlaceId: stored.from_place_id,
    actId: stored.act_id,
    sequence: stored.sequence,
    undoneAt: stored.undone_at,
  };
}

/** Events that meet a condition on a table called e, in the order they happened. */
export async function eventsWithin(tx: Tx, only: Prisma.Sql): Promise<StoredEvent[]> {
  const found = await manyRows(
    tx,
    EVENT,
    Prisma.sql`FROM stock_event e WHERE ${only} ORDER BY e.on_day, e.sequence`,
  );
  return found.map(eventOfRow);
}

/** What happened to a lot and was not undone. */
export function liveEventsOf(tx: Tx, lotId: string): Promise<StoredEvent[]> {
  return eventsWithin(tx, Prisma.sql`e.lot_id = ${lotId}::uuid AND e.undone_at IS NULL`);
}

/** One event, an undone one too. */
export async function eventWithin(tx: Tx, id: string): Promise<StoredEvent | null> {
  return (await eventsWithin(tx, Prisma.sql`e.id = ${id}::uuid`))[0] ?? null;
}
