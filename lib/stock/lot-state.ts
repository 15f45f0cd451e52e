import type { LocalDate } from "../calendar/local-date.ts";
import { Decimal, ZERO } from "../decimal.ts";
import { type Money, money, roundToMinorUnit, subtract } from "../money/money.ts";
import type { Lot, StockEvent } from "./lot.ts";
import { receivedBy } from "./lot-dates.ts";
import { type Balance, type Impossible, replay } from "./replay.ts";

/**
 * Where a lot's quantity is at the end of a day. Always:
 *     acquired + found = allocated + free + drawn + returned + sold + writtenOff + missing
 * allocated, drawn: by requirement; drawnForNone: drawn for no requirement. onOrder: acquired and not received yet.
 */
export type LotState = Readonly<
  Omit<Balance, "allocated" | "drawn"> & {
    acquired: Decimal;
    received: Decimal;
    onOrder: Decimal;
    allocated: ReadonlyMap<string, Decimal>;
    drawn: ReadonlyMap<string, Decimal>;
  }
>;

/** Stored events of a lot contradict each other: something wrote past `faultsOfEvent`. */
export class LotDisagrees extends Error {
  constructor({ event, code }: Impossible) {
    super(
      `the ${event.kind} event ${event.id} on ${event.on} cannot have happened (${code}): undo it, and ask faultsOfEvent before recording`,
    );
    this.name = "LotDisagrees";
  }
}

/**
 * A lot's quantities at the end of a day (R9). Before it was ordered everything is zero.
 * Units: the material's purchase units. Rounds: never. events: any list; the lot's own count, by day, then by the order
 * of recording. @throws {LotDisagrees} when the events contradict each other.
 */
export function lotState(lot: Lot, events: readonly StockEvent[], day: LocalDate): LotState {
  const { balance, impossible } = replay(lot, events, day);
  if (impossible) throw new LotDisagrees(impossible);
  return stateOf(lot, balance, day);
}

/** A balance with what was acquired and received by a day beside it. */
export function stateOf(lot: Lot, balance: Balance, day: LocalDate): LotState {
  const acquired = lot.orderedOn <= day ? lot.quantity : ZERO;
  const received = receivedBy(lot, day);
  return { ...balance, acquired, received, onOrder: Decimal.max(ZERO, acquired.minus(received)) };
}

/**
 * How much of a lot's cost its first `taken` units bear.
 *     round(lotCost x taken / lotQuantity)
 * taken is cut at lotQuantity: what was found over and above was never paid for.
 * Units: lotCost in home currency; quantities in purchase units. Rounds: once, half up, to the minor unit. Source: rules.md R9.
 */
export function chargedBy(lotCost: Money, lotQuantity: Decimal, taken: Decimal): Money {
  if (taken.greaterThanOrEqualTo(lotQuantity)) return roundToMinorUnit(lotCost);
  // Multiplied before divided: a third of 3.015 is 1.005, which a rounded third would miss.
  return roundToMinorUnit(money(lotCost.amount.times(taken).dividedBy(lotQuantity), lotCost.currency));
}

/**
 * What a withdrawal takes of a lot's cost, so that all withdrawals add up to it:
 *     `chargedBy`(before + quantity) - `chargedBy`(before)
 * Units: lotCost in home currency; quantities in purchase units. Rounds: each term half up to the minor unit. Source: rules.md R9.
 */
export function withdrawalCost(
  lotCost: Money,
  lotQuantity: Decimal,
  before: Decimal,
  quantity: Decimal,
): Money {
  return subtract(
    chargedBy(lotCost, lotQuantity, before.plus(quantity)),
    chargedBy(lotCost, lotQuantity, before),
  );
}
