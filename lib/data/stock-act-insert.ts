import "server-only";
import { v7 } from "uuid";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Fault, Written } from "../fault.ts";
import { faultsOfEvent, faultsOfLot } from "../stock/ledger.ts";
import type { StockEvent } from "../stock/lot.ts";
import type { StockActKind } from "../stock/stock-act.ts";
import type { StockEventEntry } from "../stock/stock-event-entry.ts";
import type { Tx } from "./client.ts";
import { countedDay } from "./day-faults.ts";
import { entryHash } from "./first-received.ts";
import type { StoredLot } from "./lot-rows.ts";
import { dateOf } from "./rows.ts";
import { actWithin, type StoredAct } from "./stock-act-rows.ts";
import { BEING_RECORDED, insertEvent, surroundingFaults } from "./stock-event-insert.ts";
import { liveEventsOf, type StoredEvent } from "./stock-event-rows.ts";
import { accepted, NOT_THERE, refused } from "./written.ts";

/** One event an act makes. under: where its faults are shown ("counts.0"; "" for the entry itself); at: its place in its day. */
export type ActEvent = Readonly<{
  lot: StoredLot;
  entry: StockEventEntry;
  under: string;
  at?: number | undefined;
}>;

/** What an act does, checked as a whole before anything is written. */
export type ActPlan = Readonly<{
  id: string;
  kind: StockActKind;
  on: LocalDate;
  reason: string | null;
  hash: string;
  undoes: readonly StoredEvent[];
  makes: readonly ActEvent[];
}>;

/** The live events of the lots an act is about. */
export async function liveByLot(
  tx: Tx,
  lots: ReadonlyMap<string, StoredLot>,
): Promise<Map<string, StoredEvent[]>> {
  const live = new Map<string, StoredEvent[]>();
  for (const id of lots.keys()) live.set(id, await liveEventsOf(tx, id));
  return live;
}

function shownUnder(under: string, found: readonly Fault[]): Fault[] {
  return found.map((one) => ({ ...one, path: [under, one.path].filter(Boolean).join(".") }));
}

/** What stands in the way of an act: each event after those before it, then each lot as it would be in the end. */
async function planFaults(
  tx: Tx,
  plan: ActPlan,
  live: ReadonlyMap<string, readonly StockEvent[]>,
  today: LocalDate,
): Promise<Fault[]> {
  const gone = new Set(plan.undoes.map(({ id }) => id));
  const after = new Map([...live].map(([id, events]) => [id, events.filter((event) => !gone.has(event.id))]));
  const faults: Fault[] = [];
  for (const [index, { lot, entry, under, at }] of plan.makes.entries()) {
    const before = after.get(lot.id) ?? [];
    const sequence = at ?? BEING_RECORDED - plan.makes.length + index;
    const event: StockEvent = { id: v7(), lotId: lot.id, ...entry, sequence };
    const found = [...(await surroundingFaults(tx, lot, entry)), ...faultsOfEvent(lot, before, event, today)];
    faults.push(...shownUnder(under, found));
    if (found.length === 0) after.set(lot.id, [...before, event]);
  }
  return faults;
}

/**
 * Does what is planned, all or nothing, as one act. The lots are locked and live. A day ahead counts as today. Faults: those
 * of `faultsOfEvent` for every event, each under its own path, and event-in-the-way for what is taken back.
 */
export async function performAct(
  tx: Tx,
  plan: ActPlan,
  lots: ReadonlyMap<string, StoredLot>,
  today: LocalDate,
): Promise<Written<StoredAct>> {
  const live = await liveByLot(tx, lots);
  const faults = await planFaults(tx, plan, live, today);
  if (faults.length > 0) return refused(faults);
  const { id, kind, reason, hash, undoes, makes } = plan;
  const gone = undoes.map((event) => event.id);
  for (const lot of lots.values()) {
    const kept = (live.get(lot.id) ?? []).filter((event) => !gone.includes(event.id));
    const found = undoes.some((event) => event.lotId === lot.id) ? faultsOfLot(lot, kept) : [];
    if (found.length > 0) return refused(found);
  }
  const onDay = dateOf(countedDay(plan.on, today));
  const data = { id, kind, onDay, reason, undoes: gone, entryHash: hash };
  await tx.stockAct.create({ data, select: { id: true } });
  await tx.stockEvent.updateMany({ where: { id: { in: gone } }, data: { undoneAt: new Date() } });
  for (const { lot, entry, at } of makes) {
    const event = { id: v7(), entry, hash: entryHash({ act: id, lotId: lot.id, ...entry }), actId: id, at };
    const written = await insertEvent(tx, lot, event, today);
    // Thrown, so that nothing of the act stays.
    if (!written.ok) throw new Error(`an act that was checked was refused: ${JSON.stringify(written)}`);
  }
  const made = await actWithin(tx, id);
  return made === null ? NOT_THERE : accepted(made);
}
