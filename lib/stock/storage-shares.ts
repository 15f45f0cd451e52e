import type { LocalDate } from "../calendar/local-date.ts";
import { Decimal, ZERO } from "../decimal.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { type Money, money, roundToMinorUnit, subtract } from "../money/money.ts";
import type { Lot, StockEvent } from "./lot.ts";
import type { Holding, LotAccount } from "./lot-account.ts";
import { inOrder, receivedBy } from "./lot-dates.ts";
import type { Impossible } from "./replay.ts";

/** Whether an event costs money for storing: what storing cost, or what moving cost. */
export function isStorageMoney({ kind, amount }: StockEvent): boolean {
  return kind === "stored" || (kind === "moved" && amount !== null);
}

const LEAVES: ReadonlySet<StockEvent["kind"]> = new Set([
  "drawn",
  "returned",
  "sold",
  "written-off",
  "missing",
]);

/** What a lot was charged for storing, shared to the cent between what has left and what is there. */
export type StorageShares = Readonly<{
  /** By the event that took a quantity out. */
  left: ReadonlyMap<string, Money>;
  /** What a holding on hand bears, by requirement (null: free). */
  held: ReadonlyMap<string | null, Money>;
  /** All of it: the sum of both, exactly. */
  total: Money;
}>;

/** On hand at some time of a day: there at its beginning, come in or found on it. */
function onHandOn(lot: Lot, events: readonly StockEvent[], day: LocalDate): Decimal {
  let quantity = receivedBy(lot, day);
  for (const event of events) {
    if (event.kind === "found" && event.on <= day) quantity = quantity.plus(event.quantity);
    else if (LEAVES.has(event.kind) && event.on < day) quantity = quantity.minus(event.quantity);
  }
  return quantity;
}

/** The first storage money that nothing on hand could bear. events: of the lot, in order. */
export function borneByNothing(lot: Lot, events: readonly StockEvent[]): Impossible | null {
  const own = inOrder(lot, events);
  for (const event of own)
    if (isStorageMoney(event) && !onHandOn(lot, own, event.on).greaterThan(0))
      return { event, code: "nothing-on-hand", has: ZERO };
  return null;
}

/**
 * What storing a lot cost until the end of a day, and who bears it. Money of a day is borne by every unit on hand on that
 * day, what leaves on it too, alike; a unit takes what it bears along when it leaves.
 *     pool = pool + money of the day;  a withdrawal takes pool x quantity / (on hand that day and not yet gone)
 * The order of entries within a day changes no unrounded share. atHome: an amount in home currency on a day, null: no rate.
 * null: a rate is not known. Units: home currency. Rounds: the running sum of what has left, half up to the minor unit, so
 * that shares add up to the rounded whole. What is on order bears nothing; what was found does. Source: rules.md R10.
 */
export function storageShares(
  lot: Lot,
  events: readonly StockEvent[],
  account: LotAccount,
  day: LocalDate,
  currency: CurrencyCode,
  atHome: (amount: Money, on: LocalDate) => Money | null,
): StorageShares | null {
  const own = inOrder(lot, events).filter((event) => event.on <= day);
  const left = new Map<string, Money>();
  let pool = ZERO;
  let charged = ZERO;
  let whole = ZERO;
  let lastOn: LocalDate | null = null;
  let onHand = ZERO;
  const enter = (on: LocalDate): boolean => {
    if (on === lastOn) return true;
    lastOn = on;
    onHand = onHandOn(lot, own, on);
    for (const event of own) {
      if (event.on !== on || event.amount === null || !isStorageMoney(event)) continue;
      const home = atHome(event.amount, on);
      if (home === null) return false;
      pool = pool.plus(home.amount);
      whole = whole.plus(home.amount);
    }
    return true;
  };
  const share = (quantity: Decimal): Money => {
    const taken = quantity.greaterThanOrEqualTo(onHand) ? pool : pool.times(quantity).dividedBy(onHand);
    pool = pool.minus(taken);
    onHand = onHand.minus(quantity);
    const before = roundToMinorUnit(money(charged, currency));
    charged = charged.plus(taken);
    return subtract(roundToMinorUnit(money(charged, currency)), before);
  };
  for (const event of own) {
    if (!enter(event.on)) return null;
    if (LEAVES.has(event.kind)) left.set(event.id, share(event.quantity));
  }
  if (!enter(day)) return null;
  const held = new Map<string | null, Money>();
  for (const holding of account.holdings) {
    const there = onHandOf(holding);
    if (there.greaterThan(0)) held.set(holding.requirementId, share(Decimal.min(there, onHand)));
  }
  return { left, held, total: roundToMinorUnit(money(whole, currency)) };
}

function onHandOf({ quantity, onOrder }: Holding): Decimal {
  return quantity.minus(onOrder);
}
