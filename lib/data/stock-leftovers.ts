import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Fault, Written } from "../fault.ts";
import { drawnLess, type Leftover, leftovers } from "../stock/leftovers.ts";
import type { StockEvent } from "../stock/lot.ts";
import type { LeftoversEntry, UnusedEntry } from "../stock/stock-act-entry.ts";
import { NO_PLACE, type StockEventEntry } from "../stock/stock-event-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { countedDay, dayFaults } from "./day-faults.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import { lotsFor } from "./gathered.ts";
import { Prisma } from "./generated/client.ts";
import { LIVE_LOTS, lotsWithin, type StoredLot } from "./lot-rows.ts";
import { projectsOfIds } from "./project-rows.ts";
import { requirementsWithin } from "./requirement-rows.ts";
import { type ActEvent, liveByLot, performAct } from "./stock-act-insert.ts";
import { actWithin, type StoredAct } from "./stock-act-rows.ts";
import { eventWithin, type StoredEvent } from "./stock-event-rows.ts";
import { lockedLots } from "./stock-lock.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { fault, NOT_THERE, refused } from "./written.ts";

/** A live draw and how much of it came back; under: where its faults are shown. */
type CameBack = Readonly<{ draw: StoredEvent; unused: UnusedEntry["quantity"]; under: string }>;

function cameBackFaults({ draw, unused, under }: CameBack): Fault[] {
  if (!unused.greaterThan(draw.quantity)) return [];
  const path = under === "" ? "quantity" : `${under}.quantity`;
  return [fault(path, "more-than-drawn", { has: draw.quantity.toFixed() })];
}

function entryOf({ id: _, lotId: _lot, sequence: _at, actId: _act, ...event }: StockEvent): StockEventEntry {
  const { kind, quantity, on, requirementId, amount, reason, placeId, fromPlaceId } = event;
  return { kind, quantity, on, requirementId, amount, reason, placeId, fromPlaceId };
}

/** What is drawn again of draws that are taken back: the same day, for the same, at the same place in the day. */
function redrawn(back: readonly CameBack[], lots: ReadonlyMap<string, StoredLot>): ActEvent[] {
  return back.flatMap(({ draw, unused, under }): ActEvent[] => {
    const less = drawnLess(draw, unused);
    const lot = lots.get(draw.lotId);
    return less === null || lot === undefined
      ? []
      : [{ lot, under, at: draw.sequence, entry: entryOf(less) }];
  });
}

/**
 * So much of a draw came back from the site unused: the draw is taken back and the rest drawn again on the same day, as one
 * act; the realised row follows. not-there when there is no such live draw. Faults: more-than-drawn (quantity, with `has`),
 * event-in-the-way. Source: rules.md R9 (unused material is an undone draw).
 */
export function takeBackUnused(
  scope: Scope,
  drawId: string,
  id: string,
  entry: UnusedEntry,
): Promise<Written<StoredAct>> {
  const hash = entryHash({ drawId, ...entry });
  return inWorkspace(scope, (tx) =>
    createdOnce(tx, { table: "stock_act", id, hash, stored: () => actWithin(tx, id) }, async () => {
      const named = await eventWithin(tx, drawId);
      const lots = await lockedLots(tx, named === null ? [] : [named.lotId]);
      const draw = await eventWithin(tx, drawId);
      if (draw === null || draw.kind !== "drawn" || draw.undoneAt !== null || lots.size === 0)
        return NOT_THERE;
      const back = [{ draw, unused: entry.quantity, under: "" }];
      const faults = back.flatMap(cameBackFaults);
      if (faults.length > 0) return refused(faults);
      const makes = redrawn(back, lots);
      const { on } = draw;
      const plan = { id, kind: "unused", on, reason: entry.reason, hash, undoes: [draw], makes } as const;
      return performAct(tx, plan, lots, todayOf(await workspaceWithin(tx)));
    }),
  );
}

/** The requirements of a project and the lots that ever served them. */
async function served(tx: Tx, projectId: string) {
  const ids = (await requirementsWithin(tx, projectId)).map((requirement) => requirement.id);
  return { ids, lots: await lotsWithin(tx, Prisma.sql`${LIVE_LOTS} AND ${lotsFor(ids)}`) };
}

/** What a project has set aside and not drawn on a day: what `returnLeftovers` would give free. null: no such project. */
export function leftoversOf(scope: Scope, projectId: string, day: LocalDate): Promise<Leftover[] | null> {
  return inWorkspace(scope, async (tx) => {
    if ((await projectsOfIds(tx, [projectId])).length === 0) return null;
    const { ids, lots } = await served(tx, projectId);
    const live = await liveByLot(tx, new Map(lots.map((lot) => [lot.id, lot])));
    return leftovers(ids, lots, [...live.values()].flat(), day);
  });
}

/**
 * The left-overs of a project back to stock at cost, in one act, undone as one: what of its draws came back from the site is
 * undrawn, then everything set aside for it and not drawn is free again. Faults: not-there (projectId, unused.n.eventId: no
 * live draw of the project), more-than-drawn (unused.n.quantity), nothing-left-over (projectId), day-ahead, event-in-the-way.
 */
export function returnLeftovers(
  scope: Scope,
  id: string,
  entry: LeftoversEntry,
): Promise<Written<StoredAct>> {
  const hash = entryHash(entry);
  return inWorkspace(scope, (tx) =>
    createdOnce(tx, { table: "stock_act", id, hash, stored: () => actWithin(tx, id) }, async () => {
      if ((await projectsOfIds(tx, [entry.projectId])).length === 0)
        return refused([fault("projectId", "not-there")]);
      const today = todayOf(await workspaceWithin(tx));
      const on = countedDay(entry.on, today);
      const { ids, lots: known } = await served(tx, entry.projectId);
      const lots = await lockedLots(
        tx,
        known.map((lot) => lot.id),
      );
      const live = await liveByLot(tx, lots);
      const events = [...live.values()].flat();
      const faults = dayFaults("on", entry.on, today);
      const named = entry.unused.map(({ eventId }) => eventId);
      const back = entry.unused.flatMap(({ eventId, quantity }, at): CameBack[] => {
        if (named.indexOf(eventId) !== at) faults.push(fault(`unused.${at}.eventId`, "counted-twice"));
        const draw = events.find((event) => event.id === eventId && event.kind === "drawn");
        if (draw?.requirementId && ids.includes(draw.requirementId))
          return [{ draw, unused: quantity, under: `unused.${at}` }];
        faults.push(fault(`unused.${at}.eventId`, "not-there"));
        return [];
      });
      faults.push(...back.flatMap(cameBackFaults));
      if (faults.length > 0) return refused(faults);
      const undoes = back.map(({ draw }) => draw);
      const kept = events.filter((event) => !undoes.includes(event));
      const again = back.flatMap(({ draw, unused }) => drawnLess(draw, unused) ?? []);
      const over = leftovers(ids, [...lots.values()], [...kept, ...again], on);
      const released = over.flatMap(({ lotId, requirementId, quantity }): ActEvent[] => {
        const lot = lots.get(lotId);
        const shared = { on, amount: null, reason: entry.reason, ...NO_PLACE };
        const free = { kind: "released", quantity, requirementId, ...shared } as const;
        return lot === undefined ? [] : [{ lot, under: "", entry: free }];
      });
      const makes = [...redrawn(back, lots), ...released];
      if (makes.length === 0 && undoes.length === 0)
        return refused([fault("projectId", "nothing-left-over")]);
      const plan = { id, kind: "left-overs", on, reason: entry.reason, hash, undoes, makes } as const;
      return performAct(tx, plan, lots, today);
    }),
  );
}
