import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import type { IndexLevel } from "../prices/index-levels.ts";
import { fisherIndex, jevonsIndex, type TwoBasketsLine } from "../prices/index-numbers.ts";
import type { Offer } from "../prices/offer.ts";
import { offersOn } from "../prices/offers.ts";
import { requiredOn } from "../projects/required.ts";
import { isBuying, isClosedOn, statusOn } from "../projects/revisions.ts";
import { type ExposureFacts, groupedBy, materialOf } from "./exposure-facts.ts";

/** A store's price level where another store's is 100. fisher null: of nothing seen at both is anything required. */
export type StoreLevel = Readonly<{
  againstStoreId: string;
  /** Materials seen fresh at both, and how many of them are required. */
  materials: number;
  required: number;
  fisher: IndexLevel | null;
  jevons: IndexLevel | null;
}>;

type LevelFacts = Pick<
  ExposureFacts,
  "valuation" | "materials" | "requirements" | "observations" | "projects"
>;

/** Required of each material by every project that may still buy; what cannot be read in purchase units is left out. */
function requiredByMaterial(day: LocalDate, facts: LevelFacts): Map<string, Decimal> {
  const buying = new Set(
    facts.projects.filter((project) => isBuying(statusOn(project, day))).map(({ id }) => id),
  );
  const quantities = new Map<string, Decimal>();
  for (const requirement of facts.requirements) {
    if (!buying.has(requirement.projectId) || isClosedOn(requirement, day)) continue;
    const required = requiredOn(requirement, day, materialOf(facts, requirement.materialId));
    if (!required.known) continue;
    const before = quantities.get(requirement.materialId) ?? ZERO;
    quantities.set(requirement.materialId, before.plus(required.quantity));
  }
  return quantities;
}

/** Each store's fresh shelf price for its smallest quantity, per purchase unit, all in, without charges per order. */
function freshShelf(offers: readonly Offer[]): Map<string, Decimal> {
  const least = new Map<string, Offer>();
  for (const offer of offers) {
    if (offer.terms !== "shelf" || offer.stale || offer.beforeImportCharges) continue;
    if (!offer.price.amount.greaterThan(0)) continue;
    const held = least.get(offer.storeId);
    if (held === undefined || offer.minQuantity.lessThan(held.minQuantity)) least.set(offer.storeId, offer);
  }
  return new Map([...least].map(([storeId, offer]) => [storeId, offer.price.amount]));
}

/**
 * A store's price level against each other store, over the materials with a fresh shelf price at both on a day.
 *     Jevons: every such material alike, no quantities. Fisher: those that are required, with the required quantities of
 *     live and planned projects at both stores; the quantities being the same there, Laspeyres, Paasche and Lowe agree with it.
 * Prices: shelf terms, smallest quantity, all in as of the day. Units: index, the other store = 100. Rounds: never.
 * Stores with nothing in common are left out; most in common first. Source: `fisherIndex`, `jevonsIndex`; rules.md R5, R7, R8.
 */
export function storeLevels(storeId: string, day: LocalDate, facts: LevelFacts): StoreLevel[] {
  const required = requiredByMaterial(day, facts);
  const seen = groupedBy(facts.observations, ({ materialId }) => materialId);
  const lines = new Map<string, TwoBasketsLine[]>();
  for (const [materialId, observations] of seen) {
    const { offers } = offersOn(day, observations, materialOf(facts, materialId), facts.valuation);
    const prices = freshShelf(offers);
    const price = prices.get(storeId);
    if (price === undefined) continue;
    const quantity = required.get(materialId) ?? ZERO;
    for (const [other, basePrice] of prices) {
      if (other === storeId) continue;
      const line = { basePrice, price, quantity, baseQuantity: quantity };
      lines.set(other, [...(lines.get(other) ?? []), line]);
    }
  }
  return [...lines]
    .map(([againstStoreId, both]) => {
      const wanted = both.filter(({ quantity }) => quantity.greaterThan(0));
      return {
        againstStoreId,
        materials: both.length,
        required: wanted.length,
        fisher: fisherIndex(wanted),
        jevons: jevonsIndex(both),
      };
    })
    .sort((a, b) => b.materials - a.materials || (a.againstStoreId < b.againstStoreId ? -1 : 1));
}
