import "server-only";
import type { Category, DimensionName, Dimensions, Material } from "../materials/material.ts";
import type { PurchaseUnit, UnitCode } from "../measure/units.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { dayOrNull, digits, row, rows, storedDecimal } from "./rows.ts";

/** Sizes as they are stored: the value as text, so that no reader turns it into floating point. */
type StoredDimensions = Readonly<Partial<Record<DimensionName, { value: string; unit: UnitCode }>>>;
type MaterialRow = Readonly<{
  id: string;
  name: string;
  category: Category;
  purchase_unit: PurchaseUnit;
  dimensions: StoredDimensions;
  recheck_days: number | null;
  exempt_from: readonly string[];
  note: string | null;
  archived_on: string | null;
}>;

const MATERIAL = Prisma.sql`SELECT m.id, m.name, m.category, m.purchase_unit, m.dimensions, m.recheck_days, m.exempt_from,
  m.note, m.archived_on FROM material m`;

/** Dimensions as the column keeps them: each value as decimal text beside its unit. */
export function storedDimensions(dimensions: Dimensions): StoredDimensions {
  return Object.fromEntries(
    Object.entries(dimensions).flatMap(([name, size]) =>
      size === undefined ? [] : [[name, { value: digits(size.value), unit: size.unit }]],
    ),
  );
}

function materialOfRow(stored: MaterialRow): Material {
  return {
    id: stored.id,
    name: stored.name,
    category: stored.category,
    purchaseUnit: stored.purchase_unit,
    dimensions: Object.fromEntries(
      Object.entries(stored.dimensions).map(([name, { value, unit }]) => [
        name,
        { value: storedDecimal(value), unit },
      ]),
    ),
    recheckDays: stored.recheck_days,
    exemptFrom: stored.exempt_from,
    note: stored.note,
    archivedOn: dayOrNull(stored.archived_on),
  };
}

/** Materials by name: all, live, archived, or those of some ids. */
export async function materialsWithin(
  tx: Tx,
  which: "all" | "live" | "archived" | readonly string[],
): Promise<Material[]> {
  const states = {
    all: Prisma.sql`true`,
    live: Prisma.sql`m.archived_on IS NULL`,
    archived: Prisma.sql`m.archived_on IS NOT NULL`,
  };
  const only =
    typeof which === "string" ? states[which] : Prisma.sql`m.id = ANY(${[...which]}::text[]::uuid[])`;
  const found = await rows<MaterialRow>(
    tx,
    Prisma.sql`${MATERIAL} WHERE ${only} ORDER BY lower(m.name), m.id`,
  );
  return found.map(materialOfRow);
}

/** The material of an id in a transaction's workspace, or null. */
export async function materialWithin(tx: Tx, id: string): Promise<Material | null> {
  const found = await row<MaterialRow>(tx, Prisma.sql`${MATERIAL} WHERE m.id = ${id}::uuid`);
  return found === null ? null : materialOfRow(found);
}
