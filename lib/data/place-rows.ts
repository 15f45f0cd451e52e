import "server-only";
import { v7 } from "uuid";
import type { Quantity, UnitCode } from "../measure/units.ts";
import type { Place } from "../stock/place.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { dayOrNull, decimalOrNull, row, rows, storedDecimal } from "./rows.ts";

type PlaceRow = Readonly<{
  id: string;
  name: string;
  note: string | null;
  area: string | null;
  area_unit: UnitCode | null;
  volume: string | null;
  volume_unit: UnitCode | null;
  weight: string | null;
  weight_unit: UnitCode | null;
  count: string | null;
  covered: boolean | null;
  ventilated: boolean | null;
  archived_on: string | null;
}>;

const PLACE = Prisma.sql`SELECT p.id, p.name, p.note, p.area::text, p.area_unit, p.volume::text, p.volume_unit,
  p.weight::text, p.weight_unit, p.count::text, p.covered, p.ventilated, p.archived_on FROM storage_place p`;

function limitOf(value: string | null, unit: UnitCode | null): Quantity | null {
  return value === null || unit === null ? null : { value: storedDecimal(value), unit };
}

function placeOfRow(stored: PlaceRow): Place {
  return {
    id: stored.id,
    name: stored.name,
    note: stored.note,
    area: limitOf(stored.area, stored.area_unit),
    volume: limitOf(stored.volume, stored.volume_unit),
    weight: limitOf(stored.weight, stored.weight_unit),
    count: decimalOrNull(stored.count),
    covered: stored.covered,
    ventilated: stored.ventilated,
    archivedOn: dayOrNull(stored.archived_on),
  };
}

/** Places by name; archived ones too unless only the live are wanted. */
export async function placesWithin(tx: Tx, which: "all" | "live" | "archived" = "all"): Promise<Place[]> {
  const only = {
    all: Prisma.empty,
    live: Prisma.sql`WHERE p.archived_on IS NULL`,
    archived: Prisma.sql`WHERE p.archived_on IS NOT NULL`,
  }[which];
  const found = await rows<PlaceRow>(tx, Prisma.sql`${PLACE} ${only} ORDER BY lower(p.name), p.id`);
  return found.map(placeOfRow);
}

/** The place of an id in a transaction's workspace, or null. */
export async function placeWithin(tx: Tx, id: string): Promise<Place | null> {
  const found = await row<PlaceRow>(tx, Prisma.sql`${PLACE} WHERE p.id = ${id}::uuid`);
  return found === null ? null : placeOfRow(found);
}

/** The id of the live place of a name, capitals aside; made when there is none. */
export async function placeNamed(tx: Tx, name: string): Promise<string> {
  const only = Prisma.sql`WHERE lower(p.name) = lower(${name}) AND p.archived_on IS NULL`;
  const known = await row<PlaceRow>(tx, Prisma.sql`${PLACE} ${only}`);
  if (known !== null) return known.id;
  const id = v7();
  await tx.storagePlace.create({ data: { id, name, entryHash: "" }, select: { id: true } });
  return id;
}

/** Lots that were ever put in a place: a condition on a table called l. */
export function everIn(placeId: string): Prisma.Sql {
  return Prisma.sql`(l.place_id = ${placeId}::uuid
    OR l.id IN (SELECT r.lot_id FROM lot_receipt r WHERE r.place_id = ${placeId}::uuid)
    OR l.id IN (SELECT e.lot_id FROM stock_event e WHERE e.place_id = ${placeId}::uuid AND e.undone_at IS NULL))`;
}
