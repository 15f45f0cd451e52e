import { type Decimal, ZERO } from "../decimal.ts";
import { purchaseStep } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import { goesIntoOpening } from "../materials/substitution.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { add } from "../money/money.ts";
import type { Cover, Offer, Take } from "../prices/offer.ts";
import { withTaken } from "../prices/with-taken.ts";
import { coverWithAlternatives } from "./cover-with-alternatives.ts";
import { groupedBy } from "./exposure-facts.ts";
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

function coverOf(
  market: Market,
  material: Material,
  needs: readonly OpenNeed[],
  alternatives: boolean,
): Cover {
  const offersOf = (id: string) => withTaken(market.offersOf(id), market.taken);
  const accepted = alternatives ? (needs[0]?.requirement.alternatives ?? []) : [];
  const standIns = accepted.flatMap(({ materialId, factor }) => {
    const other = market.materials.get(materialId);
    const counts = materialId !== material.id && other !== undefined && goesIntoOpening(material, other);
    return counts ? [{ offers: offersOf(materialId), factor }] : [];
  });
  return coverWithAlternatives(offersOf(material.id), standIns, openOf(needs), {
    step: purchaseStep(material.purchaseUnit),
    used: openOf(needs.filter((need) => need.acceptsUsed)),
    currency: market.currency,
  });
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

function alternativesKey(need: OpenNeed): string {
  return need.requirement.alternatives.map(({ materialId, factor }) => `${materialId}:${factor}`).join(" ");
}

/**
 * How to cover the needs of one pool. All together where they accept the same alternatives (mostly none): then the cost is
 * the least there is. Needs that accept different ones are covered together from offers of the material, or apart where
 * that is better: a good way, the least where packs, minimums and limits leave nothing to share.
 * Rounds: each cover once, to the minor unit. Source: rules.md R6, R8.
 */
export function coverPool(market: Market, material: Material, needs: readonly OpenNeed[]): GroupCover[] {
  const groups = groupedBy(needs, alternativesKey);
  if (groups.size === 1) return [{ needs, cover: coverOf(market, material, needs, true) }];
  let apart: GroupCover[] = [];
  let rest = needs;
  let best = coverOf(market, material, rest, false);
  let { taken } = market;
  for (const [key, group] of groups) {
    if (key === "") continue;
    const others = rest.filter((need) => !group.includes(need));
    const cover = coverOf({ ...market, taken }, material, group, true);
    const after = takenAfter(taken, cover.takes);
    const ofOthers =
      others.length === 0 ? null : coverOf({ ...market, taken: after }, material, others, false);
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
