import "server-only";
import { v7 } from "uuid";
import type { Bill, TaxRounding } from "../bills/bill.ts";
import type { BillEntry } from "../bills/bill-entry.ts";
import type { LineKept } from "../bills/lines-kept.ts";
import type { Written } from "../fault.ts";
import { type BillToStore, billToStore } from "./bill-checks.ts";
import { insertBill, type LineMade } from "./bill-insert.ts";
import { placeReturns, returnFaults, undoReturns } from "./bill-returns.ts";
import { billsWithin } from "./bill-rows.ts";
import { type KeptBill, keptBill, keptBills } from "./bill-terms.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import { Prisma } from "./generated/client.ts";
import { insertLot } from "./lots.ts";
import { placeObservations } from "./observation-insert.ts";
import type { Page } from "./observations.ts";
import { row } from "./rows.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { accepted, NOT_THERE, refused, repeated } from "./written.ts";

export type { StoredLine } from "./bill-rows.ts";
export type { KeptBill } from "./bill-terms.ts";

const AS_PER_BILL: TaxRounding = "per-bill";

/** How a store rounds its taxes, as its last bill said (of one day, the one recorded later). */
async function roundingWithin(tx: Tx, storeId: string): Promise<TaxRounding | null> {
  const last = await row<{ tax_rounding: TaxRounding }>(
    tx,
    Prisma.sql`SELECT tax_rounding FROM bill WHERE store_id = ${storeId}::uuid AND deleted_at IS NULL
      ORDER BY on_day DESC, sequence DESC LIMIT 1`,
  );
  return last?.tax_rounding ?? null;
}

/** How each store rounded the taxes of its last bill, by the store's id. */
export function taxRoundings(scope: Scope): Promise<ReadonlyMap<string, TaxRounding>> {
  return inWorkspace(scope, async (tx) => {
    const found = await billsWithin(
      tx,
      Prisma.sql`WHERE b.id IN (SELECT DISTINCT ON (l.store_id) l.id FROM bill l WHERE l.deleted_at IS NULL
        ORDER BY l.store_id, l.on_day DESC, l.sequence DESC)`,
    );
    return new Map(found.map(({ storeId, taxRounding }) => [storeId, taxRounding]));
  });
}

type Made = Omit<LineMade, "stockEventId">;

async function placePrices(tx: Tx, kept: readonly LineKept[], made: readonly Made[]): Promise<void> {
  const sent = kept.flatMap(({ seen }, at) => {
    const id = made[at]?.observationId ?? null;
    return seen === null || id === null ? [] : [{ id, entry: seen }];
  });
  const placed = await placeObservations(tx, sent);
  const wrong = placed.find(({ now }) => now !== "added");
  if (wrong !== undefined)
    throw new Error(`the price ${wrong.id} of a checked bill was not taken: ${JSON.stringify(wrong)}`);
}

async function make(tx: Tx, id: string, hash: string, { bill, kept }: BillToStore): Promise<void> {
  const workspace = await workspaceWithin(tx);
  const today = todayOf(workspace);
  const made = kept.map(({ seen, lot }) => ({
    observationId: seen === null ? null : v7(),
    lotId: lot === null ? null : v7(),
  }));
  await placePrices(tx, kept, made);
  for (const [at, { lot }] of kept.entries()) {
    const { lotId, observationId } = made[at] ?? { lotId: null, observationId: null };
    if (lot === null || lotId === null || lot.paid === null) continue;
    const entry = { ...lot, observationId };
    await insertLot(
      tx,
      { entry, paid: lot.paid, storeId: lot.storeId, terms: lot.terms },
      { id: lotId, hash: entryHash({ bill: id, ...entry }), today, homeCurrency: workspace.homeCurrency },
    );
  }
  const returned = await placeReturns(tx, bill, kept, made, today);
  const all = made.map((one, at) => ({ ...one, stockEventId: returned[at] ?? null }));
  await insertBill(tx, { id, hash, bill, made: all, homeCurrency: workspace.homeCurrency });
}

/**
 * A receipt or a quote, kept as a document, and in the same step what its lines are kept as: prices seen ("paid", or
 * "quote" until its last day) and lots; goods handed back leave theirs. taxRounding left out: as the store's last bill.
 * Faults: those of `billToStore` and `returnFaults`.
 */
export function addBill(scope: Scope, id: string, entry: BillEntry): Promise<Written<KeptBill>> {
  const hash = entryHash(entry);
  return inWorkspace(scope, (tx) =>
    createdOnce(tx, { table: "bill", id, hash, stored: () => keptBill(tx, id) }, async () => {
      const workspace = await workspaceWithin(tx);
      const around = { workspace, today: todayOf(workspace) };
      const taxRounding = entry.taxRounding ?? (await roundingWithin(tx, entry.storeId)) ?? AS_PER_BILL;
      const bill: Bill = { ...entry, taxRounding };
      const checked = await billToStore(tx, bill, around);
      if (!("kept" in checked)) return refused(checked);
      const returned = await returnFaults(tx, checked.bill, checked.kept, around.today);
      if (returned.length > 0) return refused(returned);
      await make(tx, id, hash, checked);
      const placed = await keptBill(tx, id);
      return placed === null ? NOT_THERE : accepted(placed);
    }),
  );
}

/** One bill, an undone one too (deletedAt says so). */
export function bill(scope: Scope, id: string): Promise<KeptBill | null> {
  return inWorkspace(scope, (tx) => keptBill(tx, id));
}

/** The workspace's bills, the newest day first; `next` is the cursor of the following page. */
export function bills(
  scope: Scope,
  { limit = 100, cursor = null }: { limit?: number; cursor?: string | null } = {},
): Promise<Page<KeptBill>> {
  return inWorkspace(scope, async (tx) => {
    const after =
      cursor === null
        ? Prisma.empty
        : Prisma.sql`AND (b.on_day, b.sequence) < (SELECT c.on_day, c.sequence FROM bill c WHERE c.id = ${cursor}::uuid)`;
    const found = await billsWithin(
      tx,
      Prisma.sql`WHERE b.deleted_at IS NULL ${after} ORDER BY b.on_day DESC, b.sequence DESC LIMIT ${limit + 1}`,
    );
    const items = await keptBills(tx, found.slice(0, limit));
    return { items, next: found.length > limit ? (items.at(-1)?.id ?? null) : null };
  });
}

/** Goods handed back, lots, then prices, undone and brought back at the bill's own moment: what was deleted by itself stays so. */
async function setUndone(scope: Scope, id: string, undone: boolean): Promise<Written<KeptBill>> {
  return inWorkspace(scope, async (tx) => {
    await tx.$queryRaw`SELECT 1 AS one FROM bill WHERE id = ${id}::uuid FOR NO KEY UPDATE`;
    const there = await keptBill(tx, id);
    if (there === null) return NOT_THERE;
    if ((there.deletedAt !== null) === undone) return repeated(there);
    const [held] = await tx.bill.findMany({ where: { id }, select: { deletedAt: true } });
    const lotIds = there.lines.flatMap(({ lotId }) => lotId ?? []);
    const seenIds = there.lines.flatMap(({ observationId }) => observationId ?? []);
    const before = { deletedAt: held?.deletedAt ?? null };
    const data = { deletedAt: undone ? new Date() : null };
    const eventIds = there.lines.flatMap(({ stockEventId }) => stockEventId ?? []);
    const faults = await undoReturns(tx, eventIds, { before: before.deletedAt, now: data.deletedAt });
    if (faults.length > 0) return refused(faults);
    await tx.lot.updateMany({ where: { id: { in: lotIds }, ...before }, data });
    await tx.observation.updateMany({ where: { id: { in: seenIds }, ...before }, data });
    await tx.bill.updateMany({ where: { id }, data });
    return accepted((await keptBill(tx, id)) ?? there);
  });
}

/** Takes a bill back with the prices and lots it made and the goods it handed back, and with what happened to those lots (R11); can be taken back. */
export function undoBill(scope: Scope, id: string): Promise<Written<KeptBill>> {
  return setUndone(scope, id, true);
}

/** Brings an undone bill back with what was undone with it. Not there: no bill of this id. Faults: those of `undoReturns`. */
export function redoBill(scope: Scope, id: string): Promise<Written<KeptBill>> {
  return setUndone(scope, id, false);
}
