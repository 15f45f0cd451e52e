import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import type { FaultCode } from "../fault.ts";
import type { Lot, StockEvent } from "./lot.ts";
import { inOrder, receivedBy } from "./lot-dates.ts";

/** Where the quantities of a lot stand while its events pass. */
export type Balance = {
  free: Decimal;
  found: Decimal;
  readonly allocated: Map<string, Decimal>;
  readonly drawn: Map<string, Decimal>;
  drawnForNone: Decimal;
  returned: Decimal;
  sold: Decimal;
  writtenOff: Decimal;
  missing: Decimal;
  /** All that has left: drawn, returned, sold, written off, missing. */
  gone: Decimal;
};

/** The first event that cannot have happened, and how much there was for it. */
export type Impossible = Readonly<{
  event: StockEvent;
  code: Extract<
    FaultCode,
    | "more-than-free"
    | "more-than-allocated"
    | "not-received-yet"
    | "before-acquisition"
    | "more-than-in-place"
    | "already-there"
    | "nothing-on-hand"
  >;
  has: Decimal;
}>;

function emptyBalance(lot: Lot, day: LocalDate): Balance {
  return {
    free: lot.orderedOn <= day ? lot.quantity : ZERO,
    found: ZERO,
    allocated: new Map(),
    drawn: new Map(),
    drawnForNone: ZERO,
    returned: ZERO,
    sold: ZERO,
    writtenOff: ZERO,
    missing: ZERO,
    gone: ZERO,
  };
}

function allocatedTo(balance: Balance, requirementId: string | null): Decimal {
  return requirementId === null ? ZERO : (balance.allocated.get(requirementId) ?? ZERO);
}

function setAllocated(balance: Balance, requirementId: string, quantity: Decimal): void {
  if (quantity.isZero()) balance.allocated.delete(requirementId);
  else balance.allocated.set(requirementId, quantity);
}

/** Own allocation first, then free stock, never another's (R8). */
function takeOut(balance: Balance, event: StockEvent): void {
  const own = allocatedTo(balance, event.requirementId);
  const fromOwn = own.lessThan(event.quantity) ? own : event.quantity;
  if (event.requirementId !== null) setAllocated(balance, event.requirementId, own.minus(fromOwn));
  balance.free = balance.free.minus(event.quantity.minus(fromOwn));
  balance.gone = balance.gone.plus(event.quantity);
}

function obstacle(lot: Lot, balance: Balance, event: StockEvent): Impossible | null {
  const { kind, quantity } = event;
  const refused = (code: Impossible["code"], has: Decimal): Impossible => ({ event, code, has });
  if (event.on < lot.orderedOn) return refused("before-acquisition", ZERO);
  // Whether there is so much where it is moved from, or anything to bear a cost, `lying` and `storageShares` say.
  if (kind === "found" || kind === "moved" || kind === "stored") return null;
  const own = allocatedTo(balance, event.requirementId);
  if (kind === "released") return own.lessThan(quantity) ? refused("more-than-allocated", own) : null;
  if (kind === "allocated")
    return balance.free.lessThan(quantity) ? refused("more-than-free", balance.free) : null;
  const within = own.plus(balance.free);
  if (within.lessThan(quantity)) return refused("more-than-free", within);
  const received = receivedBy(lot, event.on);
  // All of it has come in: what is free or allocated is there.
  if (received.equals(lot.quantity)) return null;
  const onHand = received.plus(balance.found).minus(balance.gone);
  return onHand.lessThan(quantity) ? refused("not-received-yet", onHand) : null;
}

function apply(balance: Balance, event: StockEvent): void {
  const { kind, quantity, requirementId } = event;
  switch (kind) {
    case "allocated":
    case "released": {
      if (requirementId === null) throw new RangeError(`the ${kind} event ${event.id} names no requirement`);
      const change = kind === "allocated" ? quantity : quantity.negated();
      balance.free = balance.free.minus(change);
      setAllocated(balance, requirementId, allocatedTo(balance, requirementId).plus(change));
      return;
    }
    case "found":
      balance.found = balance.found.plus(quantity);
      balance.free = balance.free.plus(quantity);
      return;
    case "moved":
    case "stored":
      return;
    case "drawn":
      takeOut(balance, event);
      if (requirementId === null) balance.drawnForNone = balance.drawnForNone.plus(quantity);
      else balance.drawn.set(requirementId, (balance.drawn.get(requirementId) ?? ZERO).plus(quantity));
      return;
    case "returned":
      takeOut(balance, event);
      balance.returned = balance.returned.plus(quantity);
      return;
    case "sold":
      takeOut(balance, event);
      balance.sold = balance.sold.plus(quantity);
      return;
    case "written-off":
      takeOut(balance, event);
      balance.writtenOff = balance.writtenOff.plus(quantity);
      return;
    case "missing":
      takeOut(balance, event);
      balance.missing = balance.missing.plus(quantity);
  }
}

/**
 * A lot's events up to the end of a day put one after the other, stopping before the first that cannot have happened.
 * passed: the events put through, in order. Units: purchase units. Rounds: never. Source: rules.md R8, R9.
 */
export function replay(
  lot: Lot,
  events: readonly StockEvent[],
  day: LocalDate,
): { balance: Balance; passed: readonly StockEvent[]; impossible: Impossible | null } {
  const balance = emptyBalance(lot, day);
  const passed: StockEvent[] = [];
  for (const event of inOrder(lot, events)) {
    if (event.on > day) break;
    const impossible = obstacle(lot, balance, event);
    if (impossible) return { balance, passed, impossible };
    apply(balance, event);
    passed.push(event);
  }
  return { balance, passed, impossible: null };
}
