import "server-only";
import type { BilledLine } from "../bills/bill.ts";
import type { BillTerms } from "../bills/bill-figures.ts";
import { groupedBy } from "../exposure/exposure-facts.ts";
import type { Material } from "../materials/material.ts";
import { taxOn } from "../tax/tax.ts";
import { depositEventsWithin, type StoredDepositEvent } from "./bill-deposit-rows.ts";
import { billsWithin, type StoredBill } from "./bill-rows.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { materialsWithin } from "./material-rows.ts";
import { storesWithin } from "./store-rows.ts";
import { regionsWithin } from "./tax-regions.ts";

/**
 * A bill with what it is reckoned with; terms null: the tax of its day and place is not known any more. deposited: what
 * became of its deposits, in order, undone ones left out.
 */
export type KeptBill = StoredBill &
  Readonly<{ terms: BillTerms | null; deposited: readonly StoredDepositEvent[] }>;

/** The materials a bill's lines name, by id. */
export async function materialsOfLines(
  tx: Tx,
  lines: readonly Pick<BilledLine, "materialId">[],
): Promise<ReadonlyMap<string, Material>> {
  const ids = lines.flatMap(({ materialId }) => (materialId === null ? [] : [materialId]));
  const found = await materialsWithin(tx, [...new Set(ids)]);
  return new Map(found.map((material) => [material.id, material]));
}

/** Bills as they are kept, each with the taxes of its day and place and the materials of its lines. */
export async function keptBills(tx: Tx, stored: readonly StoredBill[]): Promise<KeptBill[]> {
  if (stored.length === 0) return [];
  const materials = await materialsOfLines(
    tx,
    stored.flatMap(({ lines }) => lines),
  );
  const regions = await regionsWithin(tx);
  const places = new Map((await storesWithin(tx)).map(({ id, taxRegion }) => [id, taxRegion]));
  const ids = stored.map(({ id }) => id);
  const happened = await depositEventsWithin(
    tx,
    Prisma.sql`d.bill_id = ANY(${ids}::text[]::uuid[]) AND d.undone_at IS NULL`,
  );
  const deposited = groupedBy(happened, ({ billId }) => billId);
  return stored.map((bill) => {
    const region = regions.get(bill.taxRegion ?? places.get(bill.storeId) ?? "");
    const tax = region === undefined ? null : taxOn(region, bill.on);
    const terms = tax?.known === true ? { components: tax.components, materials } : null;
    return { ...bill, terms, deposited: deposited.get(bill.id) ?? [] };
  });
}

/** One bill, an undone one too. */
export async function keptBill(tx: Tx, id: string): Promise<KeptBill | null> {
  const stored = await billsWithin(tx, Prisma.sql`WHERE b.id = ${id}::uuid`);
  return (await keptBills(tx, stored))[0] ?? null;
}
