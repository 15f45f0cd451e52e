import type { Decimal } from "../decimal.ts";
import type { Offer } from "./offer.ts";
import { wholePacks } from "./whole-packs.ts";

/**
 * Offers with what others have already been given taken off their maximum: a limited offer is given out once (R6).
 * taken: purchase units by observation id. An offer whose rest is under its minimum is gone; one without a maximum stays
 * as it is. Rounds: the rest down to whole packs.
 */
export function withTaken(offers: readonly Offer[], taken: ReadonlyMap<string, Decimal>): Offer[] {
  return offers.flatMap((offer) => {
    const gone = taken.get(offer.observationId);
    if (gone === undefined || offer.maxQuantity === null) return [offer];
    const maxQuantity = wholePacks(offer.maxQuantity.minus(gone), offer.packSize);
    return maxQuantity.lessThan(offer.minQuantity) || !maxQuantity.isPositive() || maxQuantity.isZero()
      ? []
      : [{ ...offer, maxQuantity }];
  });
}
