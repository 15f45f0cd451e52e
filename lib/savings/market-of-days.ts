import { DAY_LIMITS } from "../calendar/day-limits.ts";
import { type LocalDate, plusDays } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import { type ExposureFacts, groupedBy, materialOf } from "../exposure/exposure-facts.ts";
import { purchaseStep, roundUpToPurchase } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import { type Money, money, roundToMinorUnit } from "../money/money.ts";
import { cheapestCover } from "../prices/cheapest-cover.ts";
import { type SourcedGoingPrice, sourcedGoingPriceOn } from "../prices/going-price.ts";
import type { Cover, GoingPrice, Offer } from "../prices/offer.ts";
import { offersOn } from "../prices/offers.ts";
import type { Requirement } from "../projects/project.ts";
import { requiredOn } from "../projects/required.ts";
import { revisionOn } from "../projects/revisions.ts";
import { standInFactor } from "../projects/stands-in.ts";
import type { Lot } from "../stock/lot.ts";

/** What the market said on any day, as known on `knownOn`; each answer worked out once. */
export type MarketOfDays = Readonly<{
  goingPrice: (material: Material, on: LocalDate) => GoingPrice;
  /** The same, with the sightings it rests on. */
  sourcedGoingPrice: (material: Material, on: LocalDate) => SourcedGoingPrice;
  /** How a requirement's whole quantity would have been bought of a material on a day; null: not to be said. */
  bestCover: (material: Material, requirement: Requirement, on: LocalDate) => Cover | null;
  /** So much of a lot at the best offers of a day for a requirement's quantity, rounded; null: not wholly covered. */
  bestValue: (lot: Lot, quantity: Decimal, requirement: Requirement, on: LocalDate) => Money | null;
}>;

/** What a requirement asks for of a lot's material on a day, and how much of it may be used; null: not to be said. */
function asked(facts: ExposureFacts, requirement: Requirement, material: Material, on: LocalDate) {
  const required = requiredOn(requirement, on, materialOf(facts, requirement.materialId));
  const factor = standInFactor(requirement, material.id);
  const revision = revisionOn(requirement, on);
  if (!required.known || factor === null || revision === null) return null;
  const quantity = roundUpToPurchase(required.quantity.times(factor), material.purchaseUnit);
  return quantity.isZero() ? null : { quantity, used: revision.acceptsUsed ? quantity : ZERO };
}

/**
 * The market of past days. Best value, the strict figure's measure:
 *     cost of the requirement's whole quantity at the best offers in force x quantity / that quantity x condition
 * Units: home currency. Rounds: best value once, half up. Source: rules.md R7, R10.
 */
export function marketOfDays(knownOn: LocalDate, facts: ExposureFacts): MarketOfDays {
  const { valuation } = facts;
  const seen = groupedBy(facts.observations, (observation) => observation.materialId);
  const going = new Map<string, SourcedGoingPrice>();
  const offers = new Map<string, readonly Offer[]>();
  // Of a long history only what can still be a price on the day is looked at.
  const offersOf = (material: Material, on: LocalDate): readonly Offer[] => {
    const key = `${on} ${material.id}`;
    const known = offers.get(key);
    if (known !== undefined) return known;
    const oldest = plusDays(on, -DAY_LIMITS.price);
    const latest = plusDays(on, 1);
    const near = (seen.get(material.id) ?? []).filter(({ seenOn }) => seenOn >= oldest && seenOn <= latest);
    const found = offersOn(on, near, material, valuation).offers;
    offers.set(key, found);
    return found;
  };
  const sourced = (material: Material, on: LocalDate): SourcedGoingPrice => {
    const key = `${on} ${material.id}`;
    const known =
      going.get(key) ?? sourcedGoingPriceOn(on, seen.get(material.id) ?? [], material, valuation, knownOn);
    going.set(key, known);
    return known;
  };
  const bestCover = (material: Material, requirement: Requirement, on: LocalDate): Cover | null => {
    const want = asked(facts, requirement, material, on);
    if (want === null) return null;
    const step = purchaseStep(material.purchaseUnit);
    const terms = { step, used: want.used, currency: valuation.homeCurrency };
    return cheapestCover(offersOf(material, on), want.quantity, terms);
  };
  return {
    goingPrice: (material, on) => sourced(material, on).going,
    sourcedGoingPrice: sourced,
    bestCover,
    bestValue(lot, quantity, requirement, on) {
      const cover = bestCover(materialOf(facts, lot.materialId), requirement, on);
      if (cover === null || !cover.uncovered.isZero()) return null;
      const value = cover.cost.amount.times(quantity).times(lot.condition).dividedBy(cover.quantity);
      return roundToMinorUnit(money(value, valuation.homeCurrency));
    },
  };
}
