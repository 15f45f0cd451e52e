import "server-only";
import { v7 } from "uuid";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Written } from "../fault.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { agreedOf } from "../stock/agreed.ts";
import type { Lot } from "../stock/lot.ts";
import type { LotEntry } from "../stock/lot-entry.ts";
import { NO_PLACE } from "../stock/stock-event-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { countedDay } from "./day-faults.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import { Prisma } from "./generated/client.ts";
import { type LotToStore, lotToStore } from "./lot-checks.ts";
import { LIVE_LOTS, lotsWithin, lotWithin, type StoredLot } from "./lot-rows.ts";
import { storedFee } from "./observation-rows.ts";
import { placeNamed } from "./place-rows.ts";
import { dateOf, dateOrNull, digits, digitsOrNull } from "./rows.ts";
import { insertEvent, requirementFaults } from "./stock-event-insert.ts";
import { storeWithin } from "./store-rows.ts";
import { usedFaults } from "./used-checks.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { accepted, NOT_THERE, refused, repeated } from "./written.ts";

export type { StoredLot } from "./lot-rows.ts";

/** The workspace's lots, the newest order first: all or one material's; live, or the deleted ones only. */
export function lotsOf(
  scope: Scope,
  { materialId, deleted = false }: { materialId?: string; deleted?: boolean } = {},
): Promise<StoredLot[]> {
  const state = deleted ? Prisma.sql`l.deleted_at IS NOT NULL` : LIVE_LOTS;
  const only =
    materialId === undefined ? state : Prisma.sql`${state} AND l.material_id = ${materialId}::uuid`;
  return inWorkspace(scope, (tx) => lotsWithin(tx, only));
}

/** One lot, a deleted one too (deletedAt says so). */
export function lot(scope: Scope, id: string): Promise<StoredLot | null> {
  return inWorkspace(scope, (tx) => lotWithin(tx, id));
}

type Placed = Readonly<{ id: string; hash: string; today: LocalDate; homeCurrency: CurrencyCode }>;

/** Where a new lot is put and what is agreed on it: as the entry says, else as its store does. */
async function placedAndAgreed(tx: Tx, entry: LotEntry, storeId: string | null) {
  const store = storeId === null ? null : await storeWithin(tx, storeId);
  const awaited = entry.receipts.length === 0;
  const agreed = agreedOf(entry, { orderedOn: entry.orderedOn, awaited }, store);
  return {
    placeId: entry.placeId ?? (entry.storedAt === null ? null : await placeNamed(tx, entry.storedAt)),
    expectedOn: dateOrNull(agreed.expectedOn),
    leadDays: agreed.leadDays,
    returnableUntil: dateOrNull(agreed.returnableUntil),
    adjustableUntil: dateOrNull(agreed.adjustableUntil),
    restockingPercent: digitsOrNull(agreed.restockingPercent),
    givenFree: entry.givenFree ?? null,
    otherCurrency: entry.otherCurrency ?? null,
  };
}

/** A checked lot with its receipts and payments. */
export async function insertLot(
  tx: Tx,
  { entry, paid, storeId, terms }: LotToStore,
  { id, hash, today, homeCurrency }: Placed,
): Promise<void> {
  const day = (on: LocalDate) => dateOf(countedDay(on, today));
  await tx.lot.create({
    data: {
      id,
      materialId: entry.materialId,
      origin: entry.origin,
      storeId,
      terms,
      observationId: entry.observationId,
      quantity: digits(entry.quantity),
      paidAmount: digits(paid.amount),
      paidCurrency: paid.currency,
      taxIncluded: paid.taxIncluded,
      taxRegion: paid.taxRegion,
      exemptFrom: [...paid.exemptFrom],
      fees: paid.fees.map(storedFee),
      taxes: paid.taxes?.map(({ name, amount }) => ({ name, amount: digits(amount) })) ?? Prisma.DbNull,
      paidHome: digitsOrNull(entry.paidHome),
      paidHomeCurrency: entry.paidHome === null ? null : homeCurrency,
      orderedOn: day(entry.orderedOn),
      condition: digits(entry.condition),
      ...(await placedAndAgreed(tx, entry, storeId)),
      note: entry.note,
      entryHash: hash,
    },
    select: { id: true },
  });
  await tx.lotReceipt.createMany({
    data: entry.receipts.map(({ quantity, on }) => ({
      lotId: id,
      quantity: digits(quantity),
      onDay: day(on),
    })),
  });
  await tx.lotPayment.createMany({
    data: entry.payments.map(({ amount, on, home }) => ({
      lotId: id,
      amount: digits(amount),
      onDay: day(on),
      home: digitsOrNull(home),
    })),
  });
}

/** The whole lot set aside for a requirement on the day it was ordered. The requirement has been checked. */
async function allocateWhole(tx: Tx, lotId: string, requirementId: string, today: LocalDate): Promise<void> {
  const placed = await lotWithin(tx, lotId);
  if (placed === null) throw new Error(`lot ${lotId} vanished while it was written`);
  const { quantity, orderedOn: on } = placed;
  const entry = {
    kind: "allocated",
    quantity,
    on,
    requirementId,
    amount: null,
    reason: null,
    ...NO_PLACE,
  } as const;
  const id = v7();
  const hash = entryHash({ lotId, ...entry });
  const written = await insertEvent(tx, placed, { id, entry, hash }, today);
  if (!written.ok) throw new Error(`the allocation of the new lot ${lotId} was refused after it was checked`);
}

/**
 * What was laid in at one time at one cost. allocateTo: the requirement the whole of it is set aside for, in the same
 * write. Without `paid` the observation's price is copied (`copiedReceipt`), and its store and terms where none are given.
 * Faults: those of `lotToStore`; not-there, wrong-material, used-not-accepted (requirementId).
 */
export function addLot(
  scope: Scope,
  id: string,
  entry: LotEntry,
  { allocateTo }: { allocateTo?: string | undefined } = {},
): Promise<Written<Lot>> {
  const hash = entryHash({ ...entry, allocateTo });
  return inWorkspace(scope, (tx) =>
    createdOnce(tx, { table: "lot", id, hash, stored: () => lotWithin(tx, id) }, async () => {
      const workspace = await workspaceWithin(tx);
      const today = todayOf(workspace);
      const checked = await lotToStore(tx, entry, today);
      const faults = [
        ...("paid" in checked ? [] : checked),
        ...(await requirementFaults(tx, entry.materialId, allocateTo ?? null)),
        ...(await usedFaults(
          tx,
          "paid" in checked ? { ...entry, terms: checked.terms } : entry,
          allocateTo ?? null,
          entry.orderedOn,
        )),
      ];
      if (!("paid" in checked) || faults.length > 0) return refused(faults);
      await insertLot(tx, checked, { id, hash, today, homeCurrency: workspace.homeCurrency });
      if (allocateTo !== undefined) await allocateWhole(tx, id, allocateTo, today);
      const placed = await lotWithin(tx, id);
      return placed === null ? NOT_THERE : accepted(placed);
    }),
  );
}

async function setDeleted(scope: Scope, id: string, deleted: boolean): Promise<Written<Lot>> {
  return inWorkspace(scope, async (tx) => {
    const there = await lotWithin(tx, id);
    if (there === null) return NOT_THERE;
    if ((there.deletedAt !== null) === deleted) return repeated(there);
    await tx.lot.updateMany({ where: { id }, data: { deletedAt: deleted ? new Date() : null } });
    return accepted((await lotWithin(tx, id)) ?? there);
  });
}

/** Out of the books with everything that happened to it, on every day (R11); can be taken back. */
export function deleteLot(scope: Scope, id: string): Promise<Written<Lot>> {
  return setDeleted(scope, id, true);
}

/** Takes a deletion back; the change log keeps both. Not there: no lot of this id. */
export function undeleteLot(scope: Scope, id: string): Promise<Written<Lot>> {
  return setDeleted(scope, id, false);
}
