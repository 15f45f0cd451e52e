import { Decimal, roundUpToStep, ZERO } from "../decimal.ts";
import { add, type Money, sum } from "../money/money.ts";
import { type CoverTerms, cheapestCover } from "./cheapest-cover.ts";
import type { Cover, Offer } from "./offer.ts";
import { orderCharges, type StoreCharge } from "./order-charges.ts";

/** The cheapest way to buy one material by itself, delivery and other order charges counted. total = cover.cost + charges. */
export type BoughtAlone = Readonly<{ cover: Cover; charges: readonly StoreCharge[]; total: Money }>;

function priced(offers: readonly Offer[], quantity: Decimal, terms: CoverTerms): BoughtAlone {
  const cover = cheapestCover(offers, quantity, terms);
  const charges = orderCharges(cover.takes, terms.currency);
  const charged = sum(
    charges.map(({ amount }) => amount),
    terms.currency,
  );
  return { cover, charges, total: add(cover.cost, charged) };
}

/** How much of the quantity fresh offers cover; used ones no more than may be used. */
function freshly({ quantity, takes }: Cover, used: Decimal): Decimal {
  let plain = ZERO;
  let secondHand = ZERO;
  for (const take of takes) {
    if (take.offer.stale) continue;
    if (take.offer.terms === "used") secondHand = secondHand.plus(take.quantity);
    else plain = plain.plus(take.quantity);
  }
  return Decimal.min(quantity, plain.plus(Decimal.min(secondHand, used)));
}

/** True when a way covers less than another, or leans more on stale offers: never better, however cheap. */
function coversLess(one: Cover, other: Cover, used: Decimal): boolean {
  return one.uncovered.greaterThan(other.uncovered) || freshly(one, used).lessThan(freshly(other, used));
}

/** What a store charges whatever the order: the part of its charges that nothing waives. */
function neverWaived(offers: readonly Offer[], { storeId, name }: StoreCharge): boolean {
  return offers
    .filter((offer) => offer.storeId === storeId)
    .every((offer) => offer.orderCharges.some((charge) => charge.name === name && charge.freeFrom === null));
}

/** An offer of the store with its minimum raised to where the store's charges fall away, for each that can reach it. */
function raised(offers: readonly Offer[], storeId: string): Offer[][] {
  return offers.flatMap((offer, index) => {
    if (offer.storeId !== storeId || offer.beforeTax.amount.isZero()) return [];
    const frees = offer.orderCharges.flatMap(({ freeFrom }) => (freeFrom === null ? [] : [freeFrom.amount]));
    return frees.flatMap((free) => {
      const minQuantity = roundUpToStep(free.dividedBy(offer.beforeTax.amount), offer.packSize);
      if (minQuantity.lessThanOrEqualTo(offer.minQuantity) || offer.maxQuantity?.lessThan(minQuantity))
        return [];
      return [offers.map((other, at) => (at === index ? { ...offer, minQuantity } : other))];
    });
  });
}

/** Stores beyond which a way of doing without one to reach another's free amount is no longer looked for. */
const MOST_STORES = 6;

/** Stores bought from besides one, when leaving them out may bring its order up to where its charge is waived. */
function besides(storeId: string, { cover, charges }: BoughtAlone, offers: readonly Offer[]): string[] {
  const waivable = charges.some((charge) => charge.storeId === storeId && !neverWaived(offers, charge));
  if (!waivable || new Set(offers.map((offer) => offer.storeId)).size > MOST_STORES) return [];
  const others = cover.takes.map(({ offer }) => offer.storeId).filter((other) => other !== storeId);
  return [...new Set(others)];
}

/**
 * The cheapest way to buy a quantity of one material by itself: the cover plus each store's order charges once (R4).
 *     total = cover.cost + sum of charges, least over which stores are bought from
 * A charge with `freeFrom` falls away when the order reaches it; buying one offer up to that amount is tried too. It never
 * covers less, nor leans more on stale offers, than `cheapestCover`. Units: home currency. Rounds: cover.cost and each
 * charge once, half up.
 * Method: the cover without charges bounds every way from below; a store whose charges are due is left out, paid for,
 * bought up to free, or brought there by leaving out another; what cannot be cheaper than the best found is dropped.
 */
export function boughtAlone(offers: readonly Offer[], quantity: Decimal, terms: CoverTerms): BoughtAlone {
  const first = priced(offers, quantity, terms);
  let best = first;
  const tried = new Set<string>();
  const attempt = (
    found: BoughtAlone,
    some: readonly Offer[],
    decided: ReadonlySet<string>,
    sure: Money,
  ): void => {
    if (coversLess(found.cover, first.cover, terms.used)) return;
    if (found.total.amount.lessThan(best.total.amount)) best = found;
    const next = found.charges.find(({ storeId }) => !decided.has(storeId))?.storeId;
    if (next === undefined) return;
    if (add(found.cover.cost, sure).amount.greaterThanOrEqualTo(best.total.amount)) return;
    const asked = some.map(({ observationId, minQuantity }) => `${observationId} ${minQuantity}`);
    const key = [...asked, ...[...decided].sort()].join("|");
    if (tried.has(key)) return;
    tried.add(key);
    const now = new Set([...decided, next]);
    const leaveOut = (storeId: string, then: ReadonlySet<string>) => {
      const without = some.filter((offer) => offer.storeId !== storeId);
      attempt(priced(without, quantity, terms), without, then, sure);
    };
    leaveOut(next, now);
    for (const other of besides(next, found, some)) leaveOut(other, decided);
    for (const more of raised(some, next)) attempt(priced(more, quantity, terms), more, now, sure);
    const due = found.charges.filter((charge) => charge.storeId === next && neverWaived(some, charge));
    attempt(found, some, now, sum([sure, ...due.map(({ amount }) => amount)], terms.currency));
  };
  attempt(first, offers, new Set(), sum([], terms.currency));
  return best;
}
