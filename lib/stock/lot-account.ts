import type { LocalDate } from "../calendar/local-date.ts";
import { Decimal, ZERO } from "../decimal.ts";
import { type Money, money, subtract } from "../money/money.ts";
import type { Lot, StockEvent } from "./lot.ts";
import { receivedBy } from "./lot-dates.ts";
import { chargedBy, LotDisagrees } from "./lot-state.ts";
import { replay } from "./replay.ts";

/** One withdrawal and what it takes of the lot's cost. charged: of its quantity, what was paid for (R9). */
export type Withdrawal = Readonly<{ event: StockEvent; quantity: Decimal; charged: Decimal; cost: Money }>;

/** What is still there: allocated to a requirement, or free (null). onOrder: of it, not received yet. */
export type Holding = Readonly<{
  requirementId: string | null;
  quantity: Decimal;
  onOrder: Decimal;
  charged: Decimal;
  cost: Money;
}>;

/** A lot's cost, shared without losing a cent between what has left and what is there. */
export type LotAccount = Readonly<{
  withdrawals: readonly Withdrawal[];
  holdings: readonly Holding[];
}>;

const LEAVES: ReadonlySet<StockEvent["kind"]> = new Set([
  "drawn",
  "returned",
  "sold",
  "written-off",
  "missing",
]);

/**
 * Where a lot's cost is at the end of a day: withdrawals in the order they happened, then the allocations, the first made
 * first, then what is free, each by the rule of `withdrawalCost`. All rows together are the lot's cost, rounded.
 * What has been received serves the allocations in the same order; the rest of them is on order.
 * Units: purchase units, home currency. @throws {LotDisagrees}. Source: rules.md R9.
 */
export function lotAccount(lot: Lot, cost: Money, events: readonly StockEvent[], day: LocalDate): LotAccount {
  const { balance, passed, impossible } = replay(lot, events, day);
  if (impossible) throw new LotDisagrees(impossible);
  let taken = ZERO;
  let chargedSoFar = money(ZERO, cost.currency);
  const take = (quantity: Decimal) => {
    const before = taken;
    taken = taken.plus(quantity);
    const charged = taken.lessThanOrEqualTo(lot.quantity)
      ? quantity
      : Decimal.max(ZERO, lot.quantity.minus(before));
    const chargedNow = chargedBy(cost, lot.quantity, taken);
    const own = subtract(chargedNow, chargedSoFar);
    chargedSoFar = chargedNow;
    return { quantity, charged, cost: own };
  };
  const withdrawals = passed
    .filter((event) => LEAVES.has(event.kind))
    .map((event) => ({ event, ...take(event.quantity) }));
  let onHand = receivedBy(lot, day).plus(balance.found).minus(balance.gone);
  const hold = (requirementId: string | null, quantity: Decimal): Holding => {
    const there = onHand.greaterThanOrEqualTo(quantity) ? quantity : Decimal.max(ZERO, onHand);
    onHand = onHand.minus(there);
    return { requirementId, onOrder: quantity.minus(there), ...take(quantity) };
  };
  const holdings = [...balance.allocated].map(([requirementId, quantity]) => hold(requirementId, quantity));
  if (!balance.free.isZero()) holdings.push(hold(null, balance.free));
  return { withdrawals, holdings };
}
