import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { ExposureFacts } from "../exposure/exposure-facts.ts";
import type { Material } from "../materials/material.ts";
import type { Lot, StockEvent } from "../stock/lot.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { LIVE_LOTS, lotsWithin } from "./lot-rows.ts";
import { eventsWithin } from "./stock-event-rows.ts";

/** Lots that meet a condition on l and are in the books, with what happened to them and was not undone. */
export async function stockWithin(tx: Tx, only: Prisma.Sql): Promise<Pick<ExposureFacts, "lots" | "events">> {
  const which = Prisma.sql`${LIVE_LOTS} AND ${only}`;
  return {
    lots: await lotsWithin(tx, which),
    events: await eventsWithin(
      tx,
      Prisma.sql`e.undone_at IS NULL AND EXISTS (SELECT 1 FROM lot l WHERE l.id = e.lot_id AND ${which})`,
    ),
  };
}

/** Lots that were ever set aside or drawn for some requirements. */
export function lotsFor(requirementIds: readonly string[]): Prisma.Sql {
  return Prisma.sql`l.id IN (SELECT e.lot_id FROM stock_event e
    WHERE e.requirement_id = ANY(${[...requirementIds]}::text[]::uuid[]) AND e.undone_at IS NULL)`;
}

/** The first day something of the stock is valued on: rates are needed from then on where it was in another currency. */
export function firstDayOf(
  { lots, events }: Readonly<{ lots: readonly Lot[]; events: readonly StockEvent[] }>,
  day: LocalDate,
): LocalDate {
  const days = [
    ...lots.flatMap((lot) => [lot.orderedOn, ...lot.payments.map(({ on }) => on)]),
    ...events.map(({ on }) => on),
  ];
  return days.reduce((first, on) => (on < first ? on : first), day);
}

/** Materials by their ids. */
export function byId(materials: readonly Material[]): ReadonlyMap<string, Material> {
  return new Map(materials.map((material) => [material.id, material]));
}
