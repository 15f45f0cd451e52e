import { type Decimal, ZERO } from "../decimal.ts";
import type { IndexLevel } from "./index-levels.ts";
import { type BasketLine, basketCost, loweIndex } from "./index-numbers.ts";

/** A material of a basket; null: not known. key: names it. */
export type BasketItem = Readonly<{
  key: string;
  quantity: Decimal | null;
  basePrice: Decimal | null;
  price: Decimal | null;
}>;
/** An item of which all is known. */
export type KnownItem = BasketLine & Readonly<{ key: string }>;

export const MISSING_FROM_BASKET = ["quantity", "both-prices", "base-price", "price"] as const;
/** What keeps an item out of the index. */
export type MissingFromBasket = (typeof MISSING_FROM_BASKET)[number];

/** What an index rests on. shareOfBaseCost: of the cost at the base of all that has a price there; null: nothing has. */
export type Coverage = Readonly<{
  known: readonly KnownItem[];
  missing: readonly Readonly<{ key: string; missing: MissingFromBasket }>[];
  whole: boolean;
  shareOfBaseCost: Decimal | null;
}>;

/** costs: of the part known, at the base and on the day, in the prices' currency, unrounded. */
export type BasketIndex = Readonly<{ coverage: Coverage }> &
  Readonly<{ known: true; level: IndexLevel; baseCost: Decimal; cost: Decimal } | { known: false }>;

function missingOf({ quantity, basePrice, price }: BasketItem): MissingFromBasket | null {
  if (quantity === null) return "quantity";
  if (basePrice === null) return price === null ? "both-prices" : "base-price";
  return price === null ? "price" : null;
}

/**
 * The Lowe index of a basket over the part of it whose quantity and both prices are known, with what that part is. An
 * unknown price is never taken as 0 and never carried over. Items of which nothing is wanted do not count.
 *     share of base cost = cost at the base of the part known / cost at the base of all with a quantity and a base price
 * Units: index, base = 100; a share of 1. Rounds: never. Not known: no item is known on both sides.
 * Errors, source: as `loweIndex`.
 */
export function basketIndex(items: readonly BasketItem[]): BasketIndex {
  const known: KnownItem[] = [];
  const missing: Coverage["missing"][number][] = [];
  let priced = ZERO;
  for (const item of items) {
    const { key, quantity, basePrice, price } = item;
    if (quantity?.isZero()) continue;
    if (quantity !== null && basePrice !== null) priced = priced.plus(quantity.times(basePrice));
    const why = missingOf(item);
    if (why !== null) missing.push({ key, missing: why });
    else if (quantity !== null && basePrice !== null && price !== null)
      known.push({ key, quantity, basePrice, price });
  }
  const baseCost = basketCost(known, "basePrice");
  const coverage = {
    known,
    missing,
    whole: missing.length === 0 && known.length > 0,
    shareOfBaseCost: priced.isZero() ? null : baseCost.dividedBy(priced),
  };
  const level = loweIndex(known);
  return level === null
    ? { known: false, coverage }
    : { known: true, coverage, level, baseCost, cost: basketCost(known, "price") };
}
