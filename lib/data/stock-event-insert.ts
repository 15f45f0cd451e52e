import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Fault, Written } from "../fault.ts";
import { standInFactor } from "../projects/stands-in.ts";
import { faultsOfEvent } from "../stock/ledger.ts";
import type { Lot, StockEvent } from "../stock/lot.ts";
import type { StockEventEntry } from "../stock/stock-event-entry.ts";
import type { Tx } from "./client.ts";
import { countedDay } from "./day-faults.ts";
import { placeWithin } from "./place-rows.ts";
import { requirementWithin } from "./requirement-rows.ts";
import { dateOf, digits, digitsOrNull } from "./rows.ts";
import { eventWithin, liveEventsOf } from "./stock-event-rows.ts";
import { usedFaults } from "./used-checks.ts";
import { accepted, fault, NOT_THERE, refused } from "./written.ts";

/** Later than every stored one: the order of recording of what is being recorded. */
export const BEING_RECORDED = Number.MAX_SAFE_INTEGER;

/** A requirement something is set aside or drawn for must be there and take the material. Faults: not-there, wrong-material (requirementId). */
export async function requirementFaults(
  tx: Tx,
  materialId: string,
  requirementId: string | null,
): Promise<Fault[]> {
  if (requirementId === null) return [];
  const requirement = await requirementWithin(tx, requirementId);
  if (requirement === null) return [fault("requirementId", "not-there")];
  return standInFactor(requirement, materialId) === null ? [fault("requirementId", "wrong-material")] : [];
}

/** Places that are named are there; nothing is moved to an archived one. */
async function placeFaults(tx: Tx, { kind, placeId, fromPlaceId }: StockEventEntry): Promise<Fault[]> {
  const to = placeId === null ? null : await placeWithin(tx, placeId);
  const from = fromPlaceId === null ? null : await placeWithin(tx, fromPlaceId);
  return [
    ...(placeId !== null && to === null ? [fault("placeId", "not-there")] : []),
    ...(kind === "moved" && to !== null && to.archivedOn !== null ? [fault("placeId", "archived")] : []),
    ...(fromPlaceId !== null && from === null ? [fault("fromPlaceId", "not-there")] : []),
  ];
}

/** What an event names is there and takes the material. Faults: those of `requirementFaults` and `usedFaults`; not-there, archived (places). */
export async function surroundingFaults(tx: Tx, lot: Lot, entry: StockEventEntry): Promise<Fault[]> {
  // Releasing is never refused for its material: what is no longer accepted must be able to leave.
  const named =
    entry.kind === "released"
      ? []
      : [
          ...(await requirementFaults(tx, lot.materialId, entry.requirementId)),
          ...(await usedFaults(tx, lot, entry.requirementId, entry.on)),
        ];
  return [...named, ...(await placeFaults(tx, entry))];
}

/** actId: what it is undone together with; at: its place among the events of its day, when not the last. */
export type EventToStore = Readonly<{
  id: string;
  entry: StockEventEntry;
  hash: string;
  actId?: string | null | undefined;
  at?: number | undefined;
}>;

/**
 * Records an event of a lot that is locked and live. A day ahead is stored as today. Faults: not-there, wrong-material
 * (requirementId), not-there (placeId, fromPlaceId), archived (placeId, of what is moved) and those of `faultsOfEvent`.
 */
export async function insertEvent(
  tx: Tx,
  lot: Lot,
  { id, entry, hash, actId = null, at }: EventToStore,
  today: LocalDate,
): Promise<Written<StockEvent>> {
  const event: StockEvent = { id, lotId: lot.id, ...entry, actId, sequence: at ?? BEING_RECORDED };
  const around = await surroundingFaults(tx, lot, entry);
  const faults = [...around, ...faultsOfEvent(lot, await liveEventsOf(tx, lot.id), event, today)];
  if (faults.length > 0) return refused(faults);
  await tx.stockEvent.create({
    data: {
      ...(at === undefined ? {} : { sequence: BigInt(at) }),
      id,
      lotId: lot.id,
      kind: entry.kind,
      quantity: digits(entry.quantity),
      onDay: dateOf(countedDay(entry.on, today)),
      requirementId: entry.requirementId,
      amount: digitsOrNull(entry.amount?.amount ?? null),
      currency: entry.amount?.currency ?? null,
      reason: entry.reason,
      placeId: entry.placeId,
      fromPlaceId: entry.fromPlaceId,
      actId,
      entryHash: hash,
    },
    select: { id: true },
  });
  const stored = await eventWithin(tx, id);
  return stored === null ? NOT_THERE : accepted(stored);
}
