import "server-only";
import type { Fault } from "../fault.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { row } from "./rows.ts";
import { fault } from "./written.ts";

/** One live thing of a kind per name, capitals aside. `id`: the thing that wants it. */
export async function nameFaults(
  tx: Tx,
  table: "store" | "material" | "project" | "storage_place",
  name: string,
  id: string,
): Promise<Fault[]> {
  const live = table === "project" ? Prisma.empty : Prisma.sql`AND archived_on IS NULL`;
  const other = await row<{ id: string }>(
    tx,
    Prisma.sql`SELECT id FROM ${Prisma.raw(table)} WHERE lower(name) = lower(${name}) AND id <> ${id}::uuid ${live} LIMIT 1`,
  );
  return other === null ? [] : [fault("name", "name-taken", { id: other.id })];
}
