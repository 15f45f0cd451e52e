import { type LocalDate, localDate, plusDays } from "../calendar/local-date.ts";
import type { Fault } from "../fault.ts";
import type { Lot, StockEvent } from "./lot.ts";
import { type Impossible, replay } from "./replay.ts";

const LAST_DAY = localDate("9999-12-31");

function own({ code, has }: Impossible): Fault {
  if (code === "before-acquisition") return { path: "on", code };
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

/** What is wrong with an event by itself, whatever the lot holds. */
function faultsAlone(event: StockEvent, today: LocalDate): Fault[] {
  const faults: Fault[] = [];
  if (!event.quantity.greaterThan(0)) faults.push({ path: "quantity", code: "not-positive" });
  if (event.on > plusDays(today, 1)) faults.push({ path: "on", code: "day-ahead" });
  const forRequirement = event.kind === "allocated" || event.kind === "released";
  if (forRequirement && event.requirementId === null) faults.push({ path: "requirementId", code: "missing" });
  const withMoney = event.kind === "returned" || event.kind === "sold";
  if (withMoney && event.amount === null) faults.push({ path: "amount", code: "missing" });
  if (!withMoney && event.amount !== null) faults.push({ path: "amount", code: "amount-not-expected" });
  return faults;
}

/**
 * Why an event cannot be recorded; empty when it can. The lot must hold together on every day of its life, also on the
 * days after a back-dated event: else the later event in the way is named.
 * Faults: not-positive, day-ahead (one day ahead is accepted: late evening, another zone), missing, amount-not-expected,
 * before-acquisition, more-than-free, more-than-allocated, not-received-yet, each with `has`; event-in-the-way.
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
  const alone = faultsAlone(event, today);
  if (alone.length > 0) return alone;
  const { impossible } = replay(lot, [...events, event], LAST_DAY);
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
  const { impossible } = replay(lot, events, LAST_DAY);
  return impossible === null ? [] : [inTheWay(impossible, "")];
}
