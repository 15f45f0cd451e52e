import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import { ONE } from "../decimal.ts";
import type { Fault } from "../fault.ts";
import { convertFor } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import type { ObservationEntry } from "../prices/observation-entry.ts";
import { CANADA } from "../tax/regions-ca.ts";
import type { Tx } from "./client.ts";
import { dayFaults } from "./day-faults.ts";
import { Prisma } from "./generated/client.ts";
import { materialsWithin } from "./material-rows.ts";
import { rows } from "./rows.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { fault } from "./written.ts";

/** What observations are checked against: read once for one entry or ten thousand. */
export type Surroundings = Readonly<{
  today: LocalDate;
  materials: ReadonlyMap<string, Material>;
  /** By id: the day it was archived, or null. */
  stores: ReadonlyMap<string, string | null>;
  regions: ReadonlySet<string>;
}>;

/** What entries of prices are checked against, loaded once for all of them. */
export async function surroundingsOf(tx: Tx, entries: readonly ObservationEntry[]): Promise<Surroundings> {
  const materialIds = [...new Set(entries.map((entry) => entry.materialId))];
  const storeIds = [...new Set(entries.map((entry) => entry.storeId))];
  const workspace = await workspaceWithin(tx);
  const materials = await materialsWithin(tx, materialIds);
  const stores = await rows<{ id: string; archived_on: string | null }>(
    tx,
    Prisma.sql`SELECT id, archived_on FROM store WHERE id = ANY(${storeIds}::text[]::uuid[])`,
  );
  const delivered = entries.some((entry) => entry.taxRegion !== null);
  const own = delivered ? await rows<{ code: string }>(tx, Prisma.sql`SELECT code FROM tax_region`) : [];
  return {
    today: todayOf(workspace),
    materials: new Map(materials.map((material) => [material.id, material])),
    stores: new Map(stores.map(({ id, archived_on }) => [id, archived_on])),
    regions: new Set([...CANADA, ...own].map(({ code }) => code)),
  };
}

/**
 * What is wrong with a sighting in its surroundings. Faults: not-there and archived (materialId, storeId), day-ahead,
 * day-too-early (seenOn), unknown-region (taxRegion), unit-not-convertible (per.unit).
 */
export function observationFaults(entry: ObservationEntry, around: Surroundings): Fault[] {
  const faults: Fault[] = [];
  const material = around.materials.get(entry.materialId);
  if (material === undefined) faults.push(fault("materialId", "not-there"));
  else if (material.archivedOn !== null) faults.push(fault("materialId", "archived"));
  const store = around.stores.get(entry.storeId);
  if (store === undefined) faults.push(fault("storeId", "not-there"));
  else if (store !== null) faults.push(fault("storeId", "archived"));
  faults.push(...dayFaults("seenOn", entry.seenOn, around.today));
  if (entry.taxRegion !== null && !around.regions.has(entry.taxRegion))
    faults.push(fault("taxRegion", "unknown-region"));
  if (material !== undefined) faults.push(...unitFaults("per.unit", entry, material));
  return faults;
}

function unitFaults(path: string, { per, amount }: ObservationEntry, material: Material): Fault[] {
  if (amount === null) return [];
  const read = convertFor(material, { value: ONE, unit: per.unit }, material.purchaseUnit);
  return read.ok ? [] : [fault(path, "unit-not-convertible", { reason: read.reason })];
}
