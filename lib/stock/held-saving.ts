import type { Decimal } from "../decimal.ts";
import { add, type Money, money, roundToMinorUnit, subtract, times } from "../money/money.ts";
import type { GoingPrice } from "../prices/offer.ts";
import type { Lot } from "./lot.ts";

/**
 * What a quantity of a lot is worth at a going price: price x quantity x the lot's condition; null when there is none.
 * Units: home currency. Rounds: once, half up, to the minor unit (one of the four amounts of a row). Source: rules.md R10.
 */
export function goingValue(lot: Lot, quantity: Decimal, going: GoingPrice): Money | null {
  return going.known ? roundToMinorUnit(times(going.price, quantity.times(lot.condition))) : null;
}

/**
 * A quantity's part of what its lot cost to hold (`whole`, of `carryingCost`): whole x charged / lot quantity.
 * charged: of the quantity, what was paid for. null: no money rate. Units: home currency. Rounds: once, half up. Source: rules.md R10.
 */
export function carryingShare(lot: Lot, charged: Decimal, whole: Money | null): Money | null {
  if (whole === null) return null;
  const share = whole.amount.times(charged).dividedBy(lot.quantity);
  return roundToMinorUnit(money(share, whole.currency));
}

/**
 * Carrying of a quantity: its part of the money tied up + its part of the storage money entered (R10).
 * interest null: no money rate; then what storing cost stands alone, and nothing at all is null ("before carrying cost").
 * storage null: it cannot be said in home currency, so carrying is not known. Units: home currency, both rounded already.
 * Rounds: never. Source: rules.md R10.
 */
export function carryingOf(interest: Money | null, storage: Money | null): Money | null {
  if (storage === null) return null;
  if (interest === null) return storage.amount.isZero() ? null : storage;
  return add(interest, storage);
}

/**
 * The saving on stock: value at the going price - cost - carrying; before carrying cost when that is null; null when the
 * going price is not known. Units: home currency, each part rounded already. Rounds: never. Source: rules.md R10.
 */
export function stockSaving(value: Money | null, cost: Money, carrying: Money | null): Money | null {
  if (value === null) return null;
  const before = subtract(value, cost);
  return carrying === null ? before : subtract(before, carrying);
}
