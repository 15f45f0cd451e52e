import "server-only";
import { createHash } from "node:crypto";
import { Decimal } from "../decimal.ts";
import type { Written } from "../fault.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { row } from "./rows.ts";
import { conflict, repeated } from "./written.ts";

/** One spelling for one content: keys sorted, digits plain, and what is empty left out, so that a later optional field changes nothing. */
function spelled(value: unknown): unknown {
  if (value instanceof Decimal) return value.toFixed();
  if (Array.isArray(value)) return value.length === 0 ? undefined : value.map(spelled);
  if (typeof value !== "object" || value === null) return value ?? undefined;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, inner]) => [key, spelled(inner)]),
  );
}

/** What an entry is known by when it is sent again: SHA-256 of its content. Source: rule R11, repeated create. */
export function entryHash(entry: unknown): string {
  return createHash("sha256")
    .update(JSON.stringify(spelled(entry)) ?? "")
    .digest("hex");
}

export type EntryTable =
  | "store"
  | "material"
  | "observation"
  | "project"
  | "requirement"
  | "lot"
  | "lot_receipt"
  | "lot_payment"
  | "stock_event"
  | "stock_act"
  | "storage_place"
  | "bill"
  | "deposit_event"
  | "takeoff"
  | "saved_report"
  | "asking_price"
  | "reminder_mark"
  | "reference_index"
  | "disposal";

/** The hash an id was first received with, deleted ones too; null when the id is new. */
export async function firstHash(tx: Tx, table: EntryTable, id: string): Promise<string | null> {
  const stored = await row<{ entry_hash: string }>(
    tx,
    Prisma.sql`SELECT entry_hash FROM ${Prisma.raw(table)} WHERE id = ${id}::uuid`,
  );
  return stored?.entry_hash ?? null;
}

/**
 * A create, unless its id is known: then the stored thing when the content is the same as first received, else a
 * conflict. Source: rule R11.
 */
export async function createdOnce<T>(
  tx: Tx,
  known: Readonly<{ table: EntryTable; id: string; hash: string; stored: () => Promise<T | null> }>,
  create: () => Promise<Written<T>>,
): Promise<Written<T>> {
  const first = await firstHash(tx, known.table, known.id);
  if (first === null) return create();
  const stored = await known.stored();
  if (stored === null) throw new Error(`${known.table} ${known.id} vanished while it was read`);
  return first === known.hash ? repeated(stored) : conflict(stored);
}
