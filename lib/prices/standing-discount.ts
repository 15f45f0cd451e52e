import { type LocalDate, within } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import type { Category } from "../materials/material.ts";
import type { StandingDiscount, Store } from "./store.ts";

/** Of several, the larger. */
function largest(discounts: readonly StandingDiscount[]): Decimal {
  return discounts.reduce((most, { percent }) => (percent.greaterThan(most) ? percent : most), ZERO);
}

/**
 * The workspace's standing discount at a store for a category on a day. Units: percent of the price before tax.
 * One named for the category wins over one for all; of several, the larger; they never add up (R4). None: zero.
 */
export function standingDiscount(store: Store, category: Category, day: LocalDate): Decimal {
  if (store.discounts.length === 0) return ZERO;
  const inForce = store.discounts.filter(({ from, until }) => within(day, from, until));
  const own = inForce.filter((discount) => discount.category === category);
  return largest(own.length > 0 ? own : inForce.filter((discount) => discount.category === null));
}
