import { decimal } from "../decimal.ts";
import type { Money } from "../money/money.ts";
import type { AisleMaterial } from "./aisle-facts.ts";

/** A price beside another: how far under or over it, as decimal text in the same currency. */
export type Beside = Readonly<{ storeId: string; side: "under" | "over" | "same"; by: string }>;

/**
 * A price in hand beside the cheapest known at another store: by = |price - other|. null: no other store has one in force.
 * Rounds: never.
 */
export function againstOthers(
  price: Money,
  material: AisleMaterial,
  storeId: string,
): Readonly<{ elsewhere: Beside | null }> {
  const other = material.best.find((offer) => offer.storeId !== storeId);
  if (other === undefined) return { elsewhere: null };
  const difference = price.amount.minus(decimal(other.each));
  const side = difference.isZero() ? "same" : difference.isNegative() ? "under" : "over";
  return { elsewhere: { storeId: other.storeId, side, by: difference.abs().toFixed() } };
}
