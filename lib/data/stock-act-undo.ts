import "server-only";
import type { Fault, Written } from "../fault.ts";
import { faultsOfLot } from "../stock/ledger.ts";
import type { Tx } from "./client.ts";
import { actThatUndid, actWithin, eventsOfIds, type StoredAct } from "./stock-act-rows.ts";
import { liveEventsOf, type StoredEvent } from "./stock-event-rows.ts";
import { lockedLots } from "./stock-lock.ts";
import { accepted, fault, NOT_THERE, refused, repeated } from "./written.ts";

/** Events that are not as the act left them: something else took one back since; that is undone first. */
async function heldFaults(tx: Tx, events: readonly StoredEvent[], undone: boolean): Promise<Fault[]> {
  const changed = events.find((event) => (event.undoneAt !== null) !== undone);
  if (changed === undefined) return [];
  const by = undone ? null : await actThatUndid(tx, changed.id);
  return [fault("", "held-by-an-act", { event: changed.id, ...(by === null ? {} : { act: by }) })];
}

/**
 * Takes an act back, all of it, or brings it back: what it made is undone and what it undid stands again, in one statement.
 * Faults: held-by-an-act (something of it was undone by another act since), event-in-the-way.
 */
export async function setActUndone(tx: Tx, id: string, undone: boolean): Promise<Written<StoredAct>> {
  const named = await actWithin(tx, id);
  if (named === null) return NOT_THERE;
  const concerned = [...named.events, ...(await eventsOfIds(tx, named.undoes))];
  const lots = await lockedLots(
    tx,
    concerned.map(({ lotId }) => lotId),
  );
  // Read again: another writer may have been before.
  const there = await actWithin(tx, id);
  if (there === null) return NOT_THERE;
  if ((there.undoneAt !== null) === undone) return repeated(there);
  const undoes = await eventsOfIds(tx, there.undoes);
  const held = [...(await heldFaults(tx, there.events, !undone)), ...(await heldFaults(tx, undoes, undone))];
  if (held.length > 0) return refused(held.slice(0, 1));
  const [goes, comes] = undone ? [there.events, undoes] : [undoes, there.events];
  const gone = new Set(goes.map((event) => event.id));
  for (const lot of lots.values()) {
    const live = (await liveEventsOf(tx, lot.id)).filter((event) => !gone.has(event.id));
    const faults = faultsOfLot(lot, [...live, ...comes.filter((event) => event.lotId === lot.id)]);
    if (faults.length > 0) return refused(faults);
  }
  const coming = comes.map((event) => event.id);
  const ids = [...gone, ...coming];
  await tx.$executeRaw`UPDATE stock_event SET undone_at = CASE WHEN id = ANY(${coming}::text[]::uuid[]) THEN NULL
    ELSE clock_timestamp() END WHERE id = ANY(${ids}::text[]::uuid[])`;
  await tx.stockAct.updateMany({ where: { id }, data: { undoneAt: undone ? new Date() : null } });
  const after = await actWithin(tx, id);
  return after === null ? NOT_THERE : accepted(after);
}
