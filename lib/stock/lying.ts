import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import type { Lot, StockEvent } from "./lot.ts";
import { inOrder } from "./lot-dates.ts";
import { LotDisagrees } from "./lot-state.ts";
import type { Impossible } from "./replay.ts";

/** So much of a lot in one place; placeId null: on site, not stored. */
export type Lying = Readonly<{ placeId: string | null; quantity: Decimal }>;

/** What lies where, the place something was put first coming first. */
type Places = Map<string | null, Decimal>;

function put(places: Places, placeId: string | null, quantity: Decimal): void {
  places.set(placeId, (places.get(placeId) ?? ZERO).plus(quantity));
}

function takeFrom(places: Places, placeId: string | null, quantity: Decimal): void {
  const left = (places.get(placeId) ?? ZERO).minus(quantity);
  if (left.isZero()) places.delete(placeId);
  else places.set(placeId, left);
}

/** What is not put away first, then the places in the order in which something was put there; never the one given. */
function takeByRule(places: Places, quantity: Decimal, never?: string | null): void {
  let rest = quantity;
  const order = [...places.keys()].sort((a, b) => Number(a !== null) - Number(b !== null));
  for (const placeId of order) {
    if (placeId === never) continue;
    const there = places.get(placeId) ?? ZERO;
    const taken = there.lessThan(rest) ? there : rest;
    takeFrom(places, placeId, taken);
    rest = rest.minus(taken);
    if (rest.isZero()) return;
  }
}

function total(places: Places, never?: string | null): Decimal {
  let sum = ZERO;
  for (const [placeId, quantity] of places) if (placeId !== never) sum = sum.plus(quantity);
  return sum;
}

/** Where something found is taken to lie: where it was found, else with the rest when that is in one place, else the lot's. */
function foundAt(lot: Lot, places: Places, { placeId }: StockEvent): string | null {
  if (placeId !== null) return placeId;
  const [only] = places.keys();
  return places.size === 1 && only !== undefined ? only : lot.placeId;
}

function move(places: Places, event: StockEvent): Impossible | null {
  const { placeId: to, fromPlaceId: from, quantity } = event;
  if (from !== null && from === to) return { event, code: "already-there", has: ZERO };
  const has = from === null ? total(places, to) : (places.get(from) ?? ZERO);
  if (has.lessThan(quantity)) return { event, code: "more-than-in-place", has };
  if (from === null) takeByRule(places, quantity, to);
  else takeFrom(places, from, quantity);
  put(places, to, quantity);
  return null;
}

function leave(places: Places, event: StockEvent): Impossible | null {
  const { placeId, quantity } = event;
  const has = placeId === null ? total(places) : (places.get(placeId) ?? ZERO);
  if (has.lessThan(quantity)) return { event, code: "more-than-in-place", has };
  if (placeId === null) takeByRule(places, quantity);
  else takeFrom(places, placeId, quantity);
  return null;
}

/** One event applied to the places; an answer is why it cannot have happened. */
function pass(lot: Lot, places: Places, event: StockEvent): Impossible | null {
  switch (event.kind) {
    case "allocated":
    case "released":
    case "stored":
      return null;
    case "found":
      put(places, foundAt(lot, places, event), event.quantity);
      return null;
    case "moved":
      return move(places, event);
    default:
      return leave(places, event);
  }
}

/** Whether an event has anything to do with places: without one, `replay` alone says what is possible. */
export function namesPlace({ kind, placeId }: StockEvent): boolean {
  return kind === "moved" || placeId !== null;
}

/**
 * Where the units of a lot on hand lie at the end of a day, replayed: what comes in on a day is there before anything
 * happens on it. Stops before the first event that takes more from a place than lies there.
 * Units: purchase units. Rounds: never. Source: rules.md R9 (moves change place, never quantity).
 */
export function replayPlaces(
  lot: Lot,
  events: readonly StockEvent[],
  day: LocalDate,
): Readonly<{ places: ReadonlyMap<string | null, Decimal>; impossible: Impossible | null }> {
  const places: Places = new Map();
  const receipts = [...lot.receipts].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
  let next = 0;
  const receiveUntil = (until: LocalDate) => {
    for (let one = receipts[next]; one !== undefined && one.on <= until; one = receipts[next]) {
      put(places, one.placeId ?? lot.placeId, one.quantity);
      next += 1;
    }
  };
  for (const event of inOrder(lot, events)) {
    if (event.on > day) break;
    receiveUntil(event.on);
    const impossible = pass(lot, places, event);
    if (impossible !== null) return { places, impossible };
  }
  receiveUntil(day);
  return { places, impossible: null };
}

/**
 * Where a lot's units on hand lie at the end of a day. What leaves, or is moved, is taken from the place its event names;
 * where it names none: first what is not put away, then the places in the order in which something was put there.
 * Units: purchase units; together received + found - gone. Rounds: never. @throws {LotDisagrees} when the events contradict each other.
 */
export function lyingOn(lot: Lot, events: readonly StockEvent[], day: LocalDate): Lying[] {
  const { places, impossible } = replayPlaces(lot, events, day);
  if (impossible !== null) throw new LotDisagrees(impossible);
  return [...places].map(([placeId, quantity]) => ({ placeId, quantity }));
}

/** How much of a lot lies in one place (null: not stored) at the end of a day. See `lyingOn`. */
export function lyingIn(
  lot: Lot,
  events: readonly StockEvent[],
  day: LocalDate,
  placeId: string | null,
): Decimal {
  return lyingOn(lot, events, day).find((one) => one.placeId === placeId)?.quantity ?? ZERO;
}
