import { type Decimal, decimal, ONE } from "../decimal.ts";
import type { Offer } from "./offer.ts";

/** Prices nearer to each other than this may be one price and the dust of a division: those are left to the search. */
const APART = decimal("0.000000000000001");

function isWhole(quantity: Decimal, pack: Decimal): boolean {
  return pack.equals(ONE) ? quantity.isInteger() : quantity.modulo(pack).isZero();
}

/**
 * The fresh offer that gives all of a quantity, no more, at a price under every other's: no cover costs less, and none
 * needs to be searched for (R6). null: there is no such offer, or another asks nearly the same.
 * offers: those that may be used at all. used: so much of the quantity may be used ones. Units: purchase units.
 */
export function plainlyBest(offers: readonly Offer[], quantity: Decimal, used: Decimal): Offer | null {
  let best: Offer | null = null;
  let next: Decimal | null = null;
  for (const offer of offers) {
    if (offer.stale || (offer.terms === "used" && used.isZero())) continue;
    const { amount } = offer.price;
    if (best === null || amount.lessThan(best.price.amount)) {
      next = best?.price.amount ?? null;
      best = offer;
    } else if (next === null || amount.lessThan(next)) next = amount;
  }
  if (best === null || next?.minus(best.price.amount).lessThan(APART)) return null;
  const { minQuantity, maxQuantity, packSize, terms } = best;
  const fits =
    quantity.greaterThanOrEqualTo(minQuantity) &&
    !maxQuantity?.lessThan(quantity) &&
    isWhole(quantity, packSize) &&
    !(terms === "used" && used.lessThan(quantity));
  return fits ? best : null;
}
