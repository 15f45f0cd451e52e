import "server-only";
import { v7 } from "uuid";
import type { Bill } from "../bills/bill.ts";
import type { GoodsReturned } from "../bills/line-refund.ts";
import type { LineKept } from "../bills/lines-kept.ts";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Fault } from "../fault.ts";
import { faultsOfEvent, faultsOfLot } from "../stock/ledger.ts";
import type { Lot, StockEvent } from "../stock/lot.ts";
import { lotToBe } from "../stock/lot-to-be.ts";
import { type StockEventEntry, stockEventEntry } from "../stock/stock-event-entry.ts";
import type { Tx } from "./client.ts";
import { entryHash } from "./first-received.ts";
import { Prisma } from "./generated/client.ts";
import { lotWithin } from "./lot-rows.ts";
import { insertEvent } from "./stock-event-insert.ts";
import { eventsWithin, liveEventsOf } from "./stock-event-rows.ts";
import { lockedLot } from "./stock-lock.ts";
import { fault } from "./written.ts";

/** What leaves a lot as the stock's own entry, which may know of more than a bill says. */
function eventEntry({ quantity, on, amount }: GoodsReturned): StockEventEntry {
  const { currency } = amount;
  const plain = stockEventEntry.parse({ kind: "returned", quantity: "1", on, amount: "0", currency });
  return { ...plain, quantity, amount };
}

/** The line of the same bill whose lot goods handed back are of: the first of their material that makes one. */
function lineOfThisBill(bill: Bill, kept: readonly LineKept[], at: number): number | null {
  const material = bill.lines[at]?.materialId ?? null;
  const found = kept.findIndex(({ lot }) => lot !== null && lot.materialId === material);
  return found < 0 ? null : found;
}

/** A lot still to be made, as far as what may leave it depends on it. */
function lotOfLine(kept: LineKept | undefined, id: string): Lot | null {
  const entry = kept?.lot ?? null;
  return entry === null || entry.paid === null
    ? null
    : lotToBe(entry, { id, paid: entry.paid, paidHome: null });
}

/** Faults of a line's goods as its fields are called. */
function atLine(found: readonly Fault[], at: number): Fault[] {
  return found.map((one) => ({ ...one, path: one.path === "on" ? "on" : `lines.${at}.quantity` }));
}

type Live = { lot: Lot; events: StockEvent[] };

async function liveLot(tx: Tx, id: string): Promise<Live | null> {
  const lot = await lockedLot(tx, id);
  return lot === null ? null : { lot, events: await liveEventsOf(tx, id) };
}

/**
 * Why goods a bill says were handed back cannot have left their lots; the lots are held until the transaction ends.
 * Faults: not-there, wrong-material (returned.lotId), missing (returned.ofThisBill: no line makes a lot of it), those of
 * `faultsOfEvent` (quantity, on).
 */
export async function returnFaults(
  tx: Tx,
  bill: Bill,
  kept: readonly LineKept[],
  today: LocalDate,
): Promise<Fault[]> {
  const named = bill.lines.flatMap(({ returned }) => returned?.lotId ?? []);
  const live = new Map<string, Live>();
  // In one order, so that two bills never wait for each other.
  for (const id of [...new Set(named)].sort()) {
    const found = await liveLot(tx, id);
    if (found !== null) live.set(id, found);
  }
  return kept.flatMap(({ returned }, at) => {
    const line = bill.lines[at];
    if (returned === null || line === undefined || line.returned === null) return [];
    const { lotId, ofThisBill } = line.returned;
    const own = ofThisBill ? lineOfThisBill(bill, kept, at) : null;
    const key = lotId ?? `line ${own}`;
    const made = own === null ? null : lotOfLine(kept[own], key);
    if (made !== null && !live.has(key)) live.set(key, { lot: made, events: [] });
    const of = live.get(key);
    if (of === undefined)
      return [
        ofThisBill
          ? fault(`lines.${at}.returned.ofThisBill`, "missing")
          : fault(`lines.${at}.returned.lotId`, "not-there"),
      ];
    if (of.lot.materialId !== line.materialId) return [fault(`lines.${at}.returned.lotId`, "wrong-material")];
    const event = { ...eventEntry(returned), id: `line ${at}`, lotId: of.lot.id, sequence: at };
    // Recorded after all that is there already, in the order of the lines.
    const recorded = { ...event, sequence: Number.MAX_SAFE_INTEGER - bill.lines.length + at };
    const faults = atLine(faultsOfEvent(of.lot, of.events, recorded, today), at);
    if (faults.length === 0) of.events.push(recorded);
    return faults;
  });
}

/**
 * Records what goods handed back leave their lots with, by line: the event's id, or null. The bill was checked by
 * `returnFaults` and its own lots are made.
 */
export async function placeReturns(
  tx: Tx,
  bill: Bill,
  kept: readonly LineKept[],
  made: readonly Readonly<{ lotId: string | null }>[],
  today: LocalDate,
): Promise<(string | null)[]> {
  const placed: (string | null)[] = [];
  for (const [at, { returned }] of kept.entries()) {
    const own = lineOfThisBill(bill, kept, at);
    const named = bill.lines[at]?.returned?.lotId ?? (own === null ? null : (made[own]?.lotId ?? null));
    const lot = returned === null || named === null ? null : await lotWithin(tx, named);
    if (returned === null || lot === null) {
      placed.push(null);
      continue;
    }
    const [id, entry] = [v7(), eventEntry(returned)];
    const written = await insertEvent(
      tx,
      lot,
      { id, entry, hash: entryHash({ lotId: lot.id, ...entry }) },
      today,
    );
    if (!written.ok)
      throw new Error(`goods handed back on a checked bill were refused: ${JSON.stringify(written)}`);
    placed.push(id);
  }
  return placed;
}

/**
 * Takes back, or brings back, what goods handed back left their lots with: those undone at the bill's own moment, so that
 * one undone by itself stays so. Faults: event-in-the-way, where what happened since leaves no room to bring one back.
 */
export async function undoReturns(
  tx: Tx,
  ids: readonly string[],
  { before, now }: Readonly<{ before: Date | null; now: Date | null }>,
): Promise<Fault[]> {
  if (ids.length === 0) return [];
  const held = await tx.stockEvent.findMany({
    where: { id: { in: [...ids] }, undoneAt: before },
    select: { id: true },
  });
  const chosen = held.map(({ id }) => id);
  const events = await eventsWithin(tx, Prisma.sql`e.id = ANY(${chosen}::text[]::uuid[])`);
  for (const lotId of [...new Set(events.map((event) => event.lotId))].sort()) {
    const of = await liveLot(tx, lotId);
    if (of === null || now !== null) continue;
    const back = events.filter((event) => event.lotId === lotId);
    const faults = faultsOfLot(of.lot, [...of.events, ...back]);
    if (faults.length > 0) return faults;
  }
  await tx.stockEvent.updateMany({ where: { id: { in: chosen } }, data: { undoneAt: now } });
  return [];
}
