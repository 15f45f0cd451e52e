import { Decimal, ZERO } from "../decimal.ts";
import { purchaseStep, roundUpToPurchase } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { add } from "../money/money.ts";
import { cheapestCover } from "../prices/cheapest-cover.ts";
import type { Cover, Offer, Take } from "../prices/offer.ts";
import { withTaken } from "../prices/with-taken.ts";
import { type OpenNeed, openOf } from "./pools.ts";

/** Offers as they stand for the next buyer. taken: what earlier buyers took of each limited offer. */
export type Market = Readonly<{
  currency: CurrencyCode;
  offersOf: (materialId: string) => readonly Offer[];
  materials: ReadonlyMap<string, Material>;
  taken: ReadonlyMap<string, Decimal>;
}>;

/** Needs covered together, and how. Quantities of the cover in the required material's purchase units; takes in their own. */
export type GroupCover = Readonly<{ needs: readonly OpenNeed[]; cover: Cover }>;

/** What is taken of limited offers, added to what was taken before. */
export function takenAfter(
  taken: ReadonlyMap<string, Decimal>,
  takes: readonly Take[],
): ReadonlyMap<string, Decimal> {
  const limited = takes.filter((take) => take.offer.maxQuantity !== null);
  if (limited.length === 0) return taken;
  const after = new Map(taken);
  for (const { offer, quantity } of limited)
    after.set(offer.observationId, (after.get(offer.observationId) ?? ZERO).plus(quantity));
  return after;
}

function coverOf(market: Market, material: Material, quantity: Decimal, used: Decimal): Cover {
  const offers = withTaken(market.offersOf(material.id), market.taken);
  return cheapestCover(offers, quantity, {
    step: purchaseStep(material.purchaseUnit),
    used: Decimal.min(used, quantity),
    currency: market.currency,
  });
}

function usedOf(needs: readonly OpenNeed[]): Decimal {
  return openOf(needs.filter((need) => need.acceptsUsed));
}

function usedIn(cover: Cover): Decimal {
  return cover.takes.reduce(
    (total, take) => (take.offer.terms === "used" ? total.plus(take.quantity) : total),
    ZERO,
  );
}

/** Two covers of different needs as one. Rounds: never. @throws {CurrencyMismatch}. */
export function together(first: Cover, second: Cover): Cover {
  return {
    quantity: first.quantity.plus(second.quantity),
    takes: [...first.takes, ...second.takes],
    cost: add(first.cost, second.cost),
    over: first.over.plus(second.over),
    uncovered: first.uncovered.plus(second.uncovered),
    restsOnStale: add(first.restsOnStale, second.restsOnStale),
  };
}

/** Less uncovered wins, then less resting on stale prices, then less money (R5, R6). */
function better(candidate: Cover, best: Cover): boolean {
  const order =
    candidate.uncovered.comparedTo(best.uncovered) ||
    candidate.restsOnStale.amount.comparedTo(best.restsOnStale.amount) ||
    candidate.cost.amount.comparedTo(best.cost.amount);
  return order < 0;
}

/** A cover of an alternative, its quantities read in the required material's units. */
function inRequiredUnits(cover: Cover, quantity: Decimal, factor: Decimal): Cover {
  const got = cover.quantity.minus(cover.uncovered);
  const reaches = Decimal.min(quantity, got.dividedBy(factor));
  const over = Decimal.max(ZERO, got.plus(cover.over).dividedBy(factor).minus(reaches));
  return { ...cover, quantity, uncovered: quantity.minus(reaches), over };
}

/** How much of the alternative is worth trying: all, and what its limited offers hold. Required units, whole steps. */
function tries(offers: readonly Offer[], quantity: Decimal, factor: Decimal, step: Decimal): Decimal[] {
  let held = ZERO;
  const limits: Decimal[] = [];
  for (const offer of [...offers].sort((a, b) => a.price.amount.comparedTo(b.price.amount))) {
    if (offer.maxQuantity === null) continue;
    held = held.plus(offer.maxQuantity);
    const part = held.dividedBy(factor).dividedBy(step).floor().times(step);
    if (part.isPositive() && !part.isZero() && part.lessThan(quantity)) limits.push(part);
  }
  return [quantity, ...limits];
}

/** The best of: the material alone, one accepted alternative alone, and the alternative's limited offers first. */
function coverWithAlternatives(market: Market, material: Material, needs: readonly OpenNeed[]): Cover {
  const quantity = openOf(needs);
  const used = usedOf(needs);
  let best = coverOf(market, material, quantity, used);
  const step = purchaseStep(material.purchaseUnit);
  for (const { materialId, factor } of needs[0]?.requirement.alternatives ?? []) {
    const other = market.materials.get(materialId);
    if (other === undefined || other.id === material.id) continue;
    const offers = withTaken(market.offersOf(other.id), market.taken);
    for (const part of offers.length === 0 ? [] : tries(offers, quantity, factor, step)) {
      const asked = roundUpToPurchase(part.times(factor), other.purchaseUnit);
      const ofOther = coverOf(market, other, asked, used.times(factor));
      const usedLeft = Decimal.max(ZERO, used.minus(usedIn(ofOther).dividedBy(factor)));
      const first = inRequiredUnits(ofOther, part, factor);
      const rest = quantity.minus(part);
      const whole = rest.isZero() ? first : together(first, coverOf(market, material, rest, usedLeft));
      if (better(whole, best)) best = whole;
    }
  }
  return best;
}

function alternativesKey(need: OpenNeed): string {
  return need.requirement.alternatives.map(({ materialId, factor }) => `${materialId}:${factor}`).join(" ");
}

/**
 * The cheapest way found to cover the needs of one pool. All together from offers of the material; where requirements
 * accept alternatives, those that accept the same ones may be covered apart when that is better. An alternative's offer
 * costs price x factor per required unit, bought in whole units and packs of its own.
 * Rounds: each cover once, to the minor unit; alternatives up to their purchase unit. Source: rules.md R6, R8.
 */
export function coverPool(market: Market, material: Material, needs: readonly OpenNeed[]): GroupCover[] {
  const groups = new Map<string, OpenNeed[]>();
  for (const need of needs) {
    const key = alternativesKey(need);
    groups.set(key, [...(groups.get(key) ?? []), need]);
  }
  if (groups.size === 1) return [{ needs, cover: coverWithAlternatives(market, material, needs) }];
  let apart: GroupCover[] = [];
  let rest = needs;
  let best = coverOf(market, material, openOf(rest), usedOf(rest));
  let { taken } = market;
  for (const [key, group] of groups) {
    if (key === "") continue;
    const others = rest.filter((need) => !group.includes(need));
    const cover = coverWithAlternatives({ ...market, taken }, material, group);
    const after = takenAfter(taken, cover.takes);
    const ofOthers =
      others.length === 0
        ? null
        : coverOf({ ...market, taken: after }, material, openOf(others), usedOf(others));
    const split = ofOthers === null ? cover : together(cover, ofOthers);
    if (!better(split, best)) continue;
    apart = [...apart, { needs: group, cover }];
    rest = others;
    taken = after;
    if (ofOthers === null) return apart;
    best = ofOthers;
  }
  return [...apart, { needs: rest, cover: best }];
}

/** `coverPool` as one cover. Rounds: as there. */
export function coverOfNeeds(market: Market, material: Material, needs: readonly OpenNeed[]): Cover {
  return coverPool(market, material, needs)
    .map(({ cover }) => cover)
    .reduce(together);
}
