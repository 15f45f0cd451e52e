import { type LocalDate, localDate, plusDays } from "../calendar/local-date.ts";
import type { Fault } from "../fault.ts";
import type { Lot, StockEvent } from "./lot.ts";
import { namesPlace, replayPlaces } from "./lying.ts";
import { type Impossible, replay } from "./replay.ts";
import { borneByNothing, isStorageMoney } from "./storage-shares.ts";

const LAST_DAY = localDate("9999-12-31");

function own({ code, has }: Impossible): Fault {
  if (code === "before-acquisition" || code === "nothing-on-hand") return { path: "on", code };
  if (code === "already-there") return { path: "placeId", code };
  return { path: "quantity", code, values: { has: has.toString() } };
}

/** The event that stands in the way, named so that a screen can say what to undo first. */
function inTheWay({ event }: Impossible, path: string): Fault {
  return {
    path,
    code: "event-in-the-way",
    values: { event: event.id, kind: event.kind, on: event.on, quantity: event.quantity.toString() },
  };
}

/** The first thing in a lot's life that cannot have happened: too much of it, in one place, or a cost nothing bears. */
function impossibleOf(lot: Lot, events: readonly StockEvent[]): Impossible | null {
  const { impossible } = replay(lot, events, LAST_DAY);
  if (impossible !== null) return impossible;
  const inPlace = events.some(namesPlace) ? replayPlaces(lot, events, LAST_DAY).impossible : null;
  return inPlace ?? (events.some(isStorageMoney) ? borneByNothing(lot, events) : null);
}

/** Taken back after the last day the store does so: only with a reason. */
function afterReturnDay({ agreed }: Lot, { kind, on, reason }: StockEvent): Fault[] {
  const until = agreed.returnableUntil;
  if (kind !== "returned" || until === null || on <= until || reason !== null) return [];
  return [{ path: "reason", code: "after-return-day", values: { until } }];
}

const FOR_MONEY: ReadonlySet<StockEvent["kind"]> = new Set(["returned", "sold", "stored"]);

/** What is wrong with an event by itself, whatever the lot holds. */
function faultsAlone(lot: Lot, event: StockEvent, today: LocalDate): Fault[] {
  const faults: Fault[] = afterReturnDay(lot, event);
  const ofTheWhole = event.kind === "stored";
  if (!ofTheWhole && !event.quantity.greaterThan(0)) faults.push({ path: "quantity", code: "not-positive" });
  if (event.on > plusDays(today, 1)) faults.push({ path: "on", code: "day-ahead" });
  const forRequirement = event.kind === "allocated" || event.kind === "released";
  if (forRequirement && event.requirementId === null) faults.push({ path: "requirementId", code: "missing" });
  const withMoney = FOR_MONEY.has(event.kind);
  if (withMoney && event.amount === null) faults.push({ path: "amount", code: "missing" });
  if (!withMoney && event.kind !== "moved" && event.amount !== null)
    faults.push({ path: "amount", code: "amount-not-expected" });
  return faults;
}

/**
 * Why an event cannot be recorded; empty when it can. The lot must hold together on every day of its life, also on the
 * days after a back-dated event: else the later event in the way is named.
 * Faults: not-positive, day-ahead (one day ahead is accepted: late evening, another zone), missing, amount-not-expected,
 * before-acquisition, more-than-free, more-than-allocated, not-received-yet, more-than-in-place, each with `has`;
 * already-there, nothing-on-hand (storage money nothing could bear), after-return-day (a return without a reason, with the
 * last day `until`); event-in-the-way.
 * Throws: {RangeError} for an event of another lot. Source: rules.md R8, R9, R11.
 */
export function faultsOfEvent(
  lot: Lot,
  events: readonly StockEvent[],
  event: StockEvent,
  today: LocalDate,
): Fault[] {
  if (event.lotId !== lot.id)
    throw new RangeError(`the event ${event.id} is of lot ${event.lotId}, not ${lot.id}`);
  const alone = faultsAlone(lot, event, today);
  if (alone.length > 0) return alone;
  const impossible = impossibleOf(lot, [...events, event]);
  if (impossible === null) return [];
  return [impossible.event.id === event.id ? own(impossible) : inTheWay(impossible, "on")];
}

/**
 * Why an event cannot be undone: without it a later one could not have happened, and that one is named. Empty when it can.
 * Source: rules.md R9.
 */
export function faultsOfUndo(lot: Lot, events: readonly StockEvent[], eventId: string): Fault[] {
  return faultsOfLot(
    lot,
    events.filter((event) => event.id !== eventId),
  );
}

/**
 * Why a lot cannot be as given (a corrected quantity, day or receipt): an event of it would then be impossible, and is
 * named. Empty when it can. Source: rules.md R9.
 */
export function faultsOfLot(lot: Lot, events: readonly StockEvent[]): Fault[] {
  const impossible = impossibleOf(lot, events);
  return impossible === null ? [] : [inTheWay(impossible, "")];
}
