import { type Decimal, decimal, ONE, roundHalfUp, roundUpToStep } from "../decimal.ts";
import { type Choice, lesser, upTo } from "./least-weight.ts";
import type { Offer } from "./offer.ts";
import { wholePacks } from "./whole-packs.ts";

/** An offer as whole numbers: `choice` for the search, quantities in 1/scale purchase units. */
export type OfferChoice = Readonly<{ offer: Offer; choice: Choice }>;

/** Prices are compared to this many places; what differs beyond is the dust of a division. */
const PRICE_PLACES = 20;
/** Kilometres count in tenths up to this many; a store whose distance nobody stated is farther than any. */
const FARTHEST = 1_000_000n;

/** A whole number of so many digits is a floating-point number without loss: a short way for most quantities. */
const EXACT_DIGITS = 15;

/** The power of ten that makes every quantity a whole number. */
export function scaleOf(quantities: readonly Decimal[]): Decimal {
  return decimal(10).pow(quantities.reduce((most, value) => Math.max(most, value.decimalPlaces()), 0));
}

/** The whole number value x scale; what the scale leaves behind the point is rounded half up. */
export function whole(value: Decimal, scale: Decimal): bigint {
  if (value.isInteger() && value.e < EXACT_DIGITS && scale.equals(ONE)) return BigInt(value.toNumber());
  return BigInt(value.times(scale).toFixed(0));
}

/** Every quantity an offer states. */
export function quantitiesOf(offer: Offer): Decimal[] {
  const { minQuantity, maxQuantity, packSize } = offer;
  return maxQuantity === null ? [minQuantity, packSize] : [minQuantity, packSize, maxQuantity];
}

function tenthsOfKm(distance: Decimal | null): bigint {
  if (distance === null) return FARTHEST;
  return lesser(BigInt(roundHalfUp(distance.times(10), 0).toFixed()), FARTHEST - 1n);
}

/**
 * Offers as choices, the cheapest first. One whole number per unit carries the whole order of R6: total price, then
 * quantity (more is taken only where it is cheaper), then age (the fresher), then distance (the nearer); each part is
 * scaled above all that the parts after it can add up to for `need`. Offers that can give nothing are left out.
 */
export function offerChoices(offers: readonly Offer[], need: bigint, scale: Decimal): OfferChoice[] {
  const sized = offers.flatMap((offer) => {
    const pack = whole(offer.packSize, scale);
    const min = whole(roundUpToStep(offer.minQuantity, offer.packSize), scale);
    const enough = upTo(need > min ? need : min, pack);
    const most =
      offer.maxQuantity === null ? null : whole(wholePacks(offer.maxQuantity, offer.packSize), scale);
    const max = most === null || most > enough ? enough : most;
    return max < min || max <= 0n ? [] : [{ offer, pack, min, max }];
  });
  const total = sized.reduce((sum, { max }) => sum + max, 1n);
  const places = decimal(10).pow(PRICE_PLACES);
  const choices = sized.map(({ offer, pack, min, max }) => {
    const price = BigInt(roundHalfUp(offer.price.amount.times(places), 0).toFixed());
    const age = BigInt(Math.max(0, offer.ageDays));
    const byQuantity = price * total + 1n;
    const byAge = byQuantity * total * 1000n + age;
    const weight = byAge * total * FARTHEST * 10n + tenthsOfKm(offer.distanceKm);
    return { offer, choice: { weight, pack, min, max } };
  });
  return choices.sort((a, b) =>
    a.choice.weight === b.choice.weight
      ? a.offer.observationId < b.offer.observationId
        ? -1
        : 1
      : a.choice.weight < b.choice.weight
        ? -1
        : 1,
  );
}
