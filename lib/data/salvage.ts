import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { Fault, Written } from "../fault.ts";
import type { Material } from "../materials/material.ts";
import { lotEntry } from "../stock/lot-entry.ts";
import { type SalvageDetail, salvagePaid } from "../stock/salvage.ts";
import type { SalvageCorrection, SalvageEntry } from "../stock/salvage-entry.ts";
import { tallySum } from "../stock/tally.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { dayFaults } from "./day-faults.ts";
import { createdOnce, entryHash, firstHash } from "./first-received.ts";
import { lotToStore } from "./lot-checks.ts";
import { LIVE_LOTS, lotsWithin, lotWithin, type StoredLot } from "./lot-rows.ts";
import { insertLot } from "./lots.ts";
import { materialWithin } from "./material-rows.ts";
import { projectWithin } from "./project-rows.ts";
import { digits } from "./rows.ts";
import { salvagesWithin, salvageWithin } from "./salvage-rows.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { accepted, fault, NOT_THERE, refused } from "./written.ts";

/** A salvaged lot with what it took to get. */
export type Salvage = Readonly<{ lot: StoredLot; detail: SalvageDetail }>;

/** What a lot was counted in as, a deleted one too; null: not there, or no salvage. */
export async function storedSalvage(tx: Tx, lotId: string): Promise<Salvage | null> {
  const detail = await salvageWithin(tx, lotId);
  const lot = detail === null ? null : await lotWithin(tx, lotId);
  return detail === null || lot === null ? null : { lot, detail };
}

/** What a lot was counted in as, a deleted one too; null: not there, or no salvage. */
export function salvage(scope: Scope, lotId: string): Promise<Salvage | null> {
  return inWorkspace(scope, (tx) => storedSalvage(tx, lotId));
}

/** All salvage that was counted in and not deleted, the newest first. */
export function salvages(scope: Scope): Promise<Salvage[]> {
  return inWorkspace(scope, async (tx) => {
    const details = await salvagesWithin(tx, LIVE_LOTS);
    const lots = new Map((await lotsWithin(tx, LIVE_LOTS)).map((lot) => [lot.id, lot]));
    return details.flatMap((detail) => {
      const lot = lots.get(detail.lotId);
      return lot === undefined ? [] : [{ lot, detail }];
    });
  });
}

/** How much was counted in: as said, or as the tally comes to. */
export function quantityOf(
  { quantity, tally }: Pick<SalvageCorrection, "quantity" | "tally">,
  material: Material,
): Decimal | readonly Fault[] {
  if (quantity !== null) return quantity;
  const sum = tallySum(tally, material);
  return sum.ok ? sum.quantity : sum.faults;
}

/** The project is there, the day has come. Faults: not-there (projectId), day-ahead, day-too-early (on). */
export async function aroundFaults(
  tx: Tx,
  { projectId, on }: Pick<SalvageCorrection, "projectId" | "on">,
  today: LocalDate,
): Promise<Fault[]> {
  const there = projectId === null || (await projectWithin(tx, projectId)) !== null;
  return [...(there ? [] : [fault("projectId", "not-there")]), ...dayFaults("on", on, today)];
}

/** What salvage took, as columns. */
export function detailColumns(entry: SalvageCorrection) {
  return {
    reclaimedFrom: entry.reclaimedFrom,
    projectId: entry.projectId,
    hours: digits(entry.hours),
    hourlyRate: digits(entry.hourlyRate),
    hauling: digits(entry.hauling),
    purchasePrice: digits(entry.purchasePrice),
    tally: entry.tally.map(({ pieces, length }) => ({ pieces: digits(pieces), length })),
  };
}

/** An entry of salvage as the lot it makes; its receipt is `salvagePaid`. */
function asLotEntry(entry: SalvageEntry, quantity: Decimal) {
  const { materialId, on, condition, placeId, storedAt, note } = entry;
  const { amount, currency } = salvagePaid(entry);
  return lotEntry.parse({
    materialId,
    origin: "salvaged",
    quantity: digits(quantity),
    paid: { amount: digits(amount), currency, taxIncluded: true },
    orderedOn: on,
    condition: digits(condition),
    placeId,
    storedAt,
    note,
  });
}

/**
 * Salvage counted in: a lot of origin salvaged whose cost is `salvageCost`, with its detail, in one write. Faults: not-there
 * (materialId, projectId, placeId), day-ahead and day-too-early (on), those of `tallySum` at their rows, not-positive
 * (quantity: a tally that comes to nothing), used-id.
 */
export function addSalvage(scope: Scope, id: string, entry: SalvageEntry): Promise<Written<Salvage>> {
  const hash = entryHash({ ...entry, salvage: true });
  return inWorkspace(scope, async (tx) => {
    // A lot that was recorded as any other has its id already.
    if ((await firstHash(tx, "lot", id)) !== null && (await salvageWithin(tx, id)) === null)
      return refused([fault("id", "used-id")]);
    return createdOnce(tx, { table: "lot", id, hash, stored: () => storedSalvage(tx, id) }, async () => {
      const workspace = await workspaceWithin(tx);
      const today = todayOf(workspace);
      const material = await materialWithin(tx, entry.materialId);
      const around = await aroundFaults(tx, entry, today);
      if (material === null) return refused([fault("materialId", "not-there"), ...around]);
      const quantity = quantityOf(entry, material);
      if (!("toFixed" in quantity)) return refused([...quantity, ...around]);
      if (!quantity.greaterThan(0)) return refused([fault("quantity", "not-positive"), ...around]);
      if (around.length > 0) return refused(around);
      const checked = await lotToStore(tx, asLotEntry(entry, quantity), today);
      if (!("paid" in checked)) return refused(checked);
      await insertLot(tx, checked, { id, hash, today, homeCurrency: workspace.homeCurrency });
      await tx.salvage.create({ data: { lotId: id, ...detailColumns(entry) }, select: { id: true } });
      const stored = await storedSalvage(tx, id);
      return stored === null ? NOT_THERE : accepted(stored);
    });
  });
}
