import type { Decimal } from "../decimal.ts";

/** What a tag asks for how much, as seen: amount in the tag's currency, per in its unit. */
export type TagPrice = Readonly<{ amount: Decimal; per: Decimal }>;

/** "Buy 2, get 1 free": so many are paid for, so many come with them. Purchase units, both above zero. */
export type FreeWithBought = Readonly<{ paid: Decimal; free: Decimal }>;

/** The same offer in the words every price has: so much for so many, in whole packs only. packSize: purchase units. */
export type PackPrice = TagPrice & Readonly<{ packSize: Decimal }>;

/**
 * "Buy a, get b free" as a price of full packs: a + b together at the price of a. Whoever takes fewer, or some beside
 * full packs, pays the price of one, which is a sighting of its own and is combined with this one by `cheapestCover`:
 * four of "buy 2, get 1" are a pack and one at full price, three paid for.
 *     amount = tag amount x paid;  per = tag per x (paid + free);  packSize = paid + free
 * Units: the tag's currency and unit; purchase units. Rounds: never. What is left of a pack is stock to come, no saving.
 * @throws {RangeError} unless both are above zero. Source: derived; rules.md R4-R6.
 */
export function packOfFree(tag: TagPrice, { paid, free }: FreeWithBought): PackPrice {
  if (!paid.greaterThan(0) || !free.greaterThan(0))
    throw new RangeError("buy a, get b free needs something paid for and something free");
  const packSize = paid.plus(free);
  return { amount: tag.amount.times(paid), per: tag.per.times(packSize), packSize };
}
