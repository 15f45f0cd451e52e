import "server-only";
import type { Identity } from "../materials/identity.ts";
import type { Category, DimensionName, Material, Sources } from "../materials/material.ts";
import type { PurchaseUnit, UnitCode } from "../measure/units.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { dayOrNull, digits, row, rows, storedDecimal } from "./rows.ts";

/** What is kept of a material in its `dimensions` column. */
export type Figures = Pick<Material, "dimensions" | "identity" | "shelfLifeDays" | "sources">;

/**
 * Sizes as they are stored: the value as text, so that no reader turns it into floating point. Beside them, only where
 * there is something to say: identity, shelf life, and where the figures were read.
 */
type StoredFigures = Readonly<Partial<Record<DimensionName, { value: string; unit: UnitCode }>>> &
  Readonly<{ identity?: Identity; shelfLifeDays?: number; sources?: Sources }>;
type MaterialRow = Readonly<{
  id: string;
  name: string;
  category: Category;
  purchase_unit: PurchaseUnit;
  dimensions: StoredFigures;
  recheck_days: number | null;
  exempt_from: readonly string[];
  note: string | null;
  archived_on: string | null;
}>;

const MATERIAL = Prisma.sql`SELECT m.id, m.name, m.category, m.purchase_unit, m.dimensions, m.recheck_days, m.exempt_from,
  m.note, m.archived_on FROM material m`;

function unlessEmpty<K extends string, T extends object>(key: K, value: T): Partial<Record<K, T>> {
  return Object.keys(value).length === 0 ? {} : ({ [key]: value } as Partial<Record<K, T>>);
}

/** Figures as the column keeps them: each size as decimal text beside its unit, and nothing that is empty. */
export function storedFigures({ dimensions, identity, shelfLifeDays, sources }: Figures): StoredFigures {
  const sizes = Object.entries(dimensions).flatMap(([name, size]) =>
    size === undefined ? [] : [[name, { value: digits(size.value), unit: size.unit }]],
  );
  return {
    ...Object.fromEntries(sizes),
    ...unlessEmpty("identity", identity),
    ...(shelfLifeDays === null ? {} : { shelfLifeDays }),
    ...unlessEmpty("sources", sources),
  };
}

function figuresOf({ identity, shelfLifeDays, sources, ...sizes }: StoredFigures): Figures {
  const dimensions = Object.entries(sizes).map(([name, { value, unit }]) => [
    name,
    { value: storedDecimal(value), unit },
  ]);
  return {
    dimensions: Object.fromEntries(dimensions),
    identity: identity ?? {},
    shelfLifeDays: shelfLifeDays ?? null,
    sources: sources ?? {},
  };
}

function materialOfRow(stored: MaterialRow): Material {
  return {
    id: stored.id,
    name: stored.name,
    category: stored.category,
    purchaseUnit: stored.purchase_unit,
    ...figuresOf(stored.dimensions),
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
