import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import { ZERO } from "../decimal.ts";
import type { Fault, Written } from "../fault.ts";
import { money } from "../money/money.ts";
import { split } from "../money/split.ts";
import type { StockEvent } from "../stock/lot.ts";
import { lyingIn } from "../stock/lying.ts";
import { type Stay, stayIn } from "../stock/place-charge.ts";
import { spaceOf } from "../stock/space-of.ts";
import type { PlaceCountEntry, PlaceMoneyEntry } from "../stock/stock-act-entry.ts";
import type { StockEventEntry } from "../stock/stock-event-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { countedDay, dayFaults } from "./day-faults.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import { byId } from "./gathered.ts";
import { Prisma } from "./generated/client.ts";
import { LIVE_LOTS, lotsWithin, type StoredLot } from "./lot-rows.ts";
import { materialsWithin } from "./material-rows.ts";
import { everIn, placeWithin } from "./place-rows.ts";
import { type ActEvent, liveByLot, performAct } from "./stock-act-insert.ts";
import { actWithin, type StoredAct } from "./stock-act-rows.ts";
import { lockedLots } from "./stock-lock.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { fault, NOT_THERE, refused } from "./written.ts";

/** What counting a lot in a place brings to light: found there, or missing there; null: as in the books. */
function countedEntry(
  { lot, events, placeId }: Readonly<{ lot: StoredLot; events: readonly StockEvent[]; placeId: string }>,
  on: LocalDate,
  { quantity, reason }: Readonly<{ quantity: typeof ZERO; reason: string | null }>,
): StockEventEntry | null {
  const difference = quantity.minus(lyingIn(lot, events, on, placeId));
  if (difference.isZero()) return null;
  const kind = difference.isNegative() ? "missing" : "found";
  const nobody = { requirementId: null, amount: null, fromPlaceId: null };
  return { kind, quantity: difference.abs(), on, reason, placeId, ...nobody };
}

/**
 * A stock-take of a place: how many of each lot named lie there at the end of a day; what is found or missing is booked for
 * all of them as one act, undone as one. A lot not named was not counted. not-there when the place is not. Faults: not-there
 * (counts.n.lotId), counted-twice (counts.n.lotId), day-ahead, and those of `faultsOfEvent` under counts.n: what is
 * missing is never taken from what is set aside.
 */
export function countPlace(
  scope: Scope,
  placeId: string,
  id: string,
  entry: PlaceCountEntry,
): Promise<Written<StoredAct>> {
  const hash = entryHash({ placeId, ...entry });
  return inWorkspace(scope, (tx) =>
    createdOnce(tx, { table: "stock_act", id, hash, stored: () => actWithin(tx, id) }, async () => {
      if ((await placeWithin(tx, placeId)) === null) return NOT_THERE;
      const today = todayOf(await workspaceWithin(tx));
      const on = countedDay(entry.on, today);
      const ids = entry.counts.map(({ lotId }) => lotId);
      const lots = await lockedLots(tx, ids);
      const faults = [
        ...dayFaults("on", entry.on, today),
        ...ids.flatMap((lotId, at): Fault[] => {
          const path = `counts.${at}.lotId`;
          if (!lots.has(lotId)) return [fault(path, "not-there")];
          return ids.indexOf(lotId) === at ? [] : [fault(path, "counted-twice")];
        }),
      ];
      if (faults.length > 0) return refused(faults);
      const live = await liveByLot(tx, lots);
      const makes = entry.counts.flatMap(({ lotId, quantity }, at): ActEvent[] => {
        const lot = lots.get(lotId);
        if (lot === undefined) return [];
        const of = { lot, events: live.get(lotId) ?? [], placeId };
        const counted = countedEntry(of, on, { quantity, reason: entry.reason });
        return counted === null ? [] : [{ lot, under: `counts.${at}`, entry: counted }];
      });
      const plan = { id, kind: "counted", on, reason: entry.reason, hash, undoes: [], makes } as const;
      return performAct(tx, plan, lots, today);
    }),
  );
}

type Stays = Readonly<{ lot: StoredLot; stay: Stay }>[];

/** Who lay in the place in that time, and how much room they took; a fault when that cannot be said of one. */
async function staysWithin(
  tx: Tx,
  placeId: string,
  { from, until, shareBy }: PlaceMoneyEntry,
  lots: ReadonlyMap<string, StoredLot>,
): Promise<Stays | Fault> {
  const live = await liveByLot(tx, lots);
  const materials = byId(
    await materialsWithin(
      tx,
      [...lots.values()].map(({ materialId }) => materialId),
    ),
  );
  const stays: Stays = [];
  for (const lot of lots.values()) {
    const material = materials.get(lot.materialId);
    if (material === undefined) continue;
    const of = { lot, events: live.get(lot.id) ?? [] };
    const stay = stayIn(placeId, of, { from, until }, (quantity) => spaceOf(material, quantity, shareBy));
    if (stay === "unknown") return fault("shareBy", "space-unknown", { material: material.name });
    if (stay !== null) stays.push({ lot, stay });
  }
  return stays;
}

/**
 * What a place cost over some days, shared over the lots that lay there by the room they took and for how long, to the cent,
 * as one act: a `stored` event on each, dated the last day it lay there. not-there when the place is not. Faults: day-ahead
 * (until), space-unknown (shareBy, naming a material), nothing-stored (from). Rounds: shares to the minor unit by the largest
 * remainder, so that they add up.
 */
export function chargePlace(
  scope: Scope,
  placeId: string,
  id: string,
  entry: PlaceMoneyEntry,
): Promise<Written<StoredAct>> {
  const hash = entryHash({ placeId, ...entry });
  return inWorkspace(scope, (tx) =>
    createdOnce(tx, { table: "stock_act", id, hash, stored: () => actWithin(tx, id) }, async () => {
      if ((await placeWithin(tx, placeId)) === null) return NOT_THERE;
      const today = todayOf(await workspaceWithin(tx));
      const faults = dayFaults("until", entry.until, today);
      if (faults.length > 0) return refused(faults);
      const all = await lotsWithin(tx, Prisma.sql`${LIVE_LOTS} AND ${everIn(placeId)}`);
      const lots = await lockedLots(
        tx,
        all.map((lot) => lot.id),
      );
      const stays = await staysWithin(tx, placeId, entry, lots);
      if (!Array.isArray(stays)) return refused([stays]);
      if (stays.length === 0) return refused([fault("from", "nothing-stored")]);
      const shares = split(
        money(entry.amount, entry.currency),
        stays.map(({ stay }) => stay.weight),
      );
      const makes = stays.flatMap(({ lot, stay }, at): ActEvent[] => {
        const amount = shares[at];
        if (amount === undefined || amount.amount.isZero()) return [];
        const nobody = { requirementId: null, fromPlaceId: null, reason: entry.reason };
        const stored = {
          kind: "stored",
          quantity: ZERO,
          on: stay.lastDay,
          amount,
          placeId,
          ...nobody,
        } as const;
        return [{ lot, under: "", entry: stored }];
      });
      const { until: on, reason } = entry;
      const concerned = new Map(makes.map(({ lot }) => [lot.id, lot]));
      const plan = { id, kind: "storage-money", on, reason, hash, undoes: [], makes } as const;
      return performAct(tx, plan, concerned, today);
    }),
  );
}
