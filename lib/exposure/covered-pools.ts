import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { Offer } from "../prices/offer.ts";
import type { PoolToBuy } from "./exposure-figures.ts";
import { coverOfNeeds, coverPool, type Market, takenAfter, together } from "./pool-cover.ts";
import type { Pool } from "./pools.ts";
import { type NeedCost, sharedCover } from "./shares.ts";

/** Offers of a market that still hold on a day. */
function holding(market: Market, neededBy: LocalDate): Market {
  const holds = (offer: Offer) => offer.lapsesOn === null || offer.lapsesOn >= neededBy;
  return { ...market, offersOf: (id) => market.offersOf(id).filter(holds) };
}

/** What covering every pool costs, by requirement, and what each project would buy. */
export type CoveredPools = Readonly<{
  costs: ReadonlyMap<string, NeedCost>;
  pools: ReadonlyMap<string, readonly PoolToBuy[]>;
}>;

/**
 * Every pool covered in turn, what one takes of a limited offer being gone for the next, and shared back to its needs.
 * Rounds: each cover once; shares to the cent. Source: rules.md R6.
 */
export function coveredPools(pools: readonly Pool[], open: Omit<Market, "taken">): CoveredPools {
  const costs = new Map<string, NeedCost>();
  const toBuy = new Map<string, PoolToBuy[]>();
  let taken: ReadonlyMap<string, Decimal> = new Map();
  for (const { projectId, material, needs } of pools) {
    const market: Market = { ...open, taken };
    const groups = coverPool(market, material, needs);
    for (const group of groups) {
      const shares = sharedCover(group.needs, group.cover, (neededBy) =>
        coverOfNeeds(holding(market, neededBy), material, group.needs),
      );
      group.needs.forEach(({ requirement }, index) => {
        const share = shares[index];
        if (share !== undefined) costs.set(requirement.id, share);
      });
      taken = takenAfter(taken, group.cover.takes);
    }
    const cover = groups.map((group) => group.cover).reduce(together);
    const pool = {
      materialId: material.id,
      unit: material.purchaseUnit,
      requirementIds: needs.map(({ requirement }) => requirement.id),
      quantity: cover.quantity,
      takes: cover.takes,
      cost: cover.cost,
      over: cover.over,
      uncovered: cover.uncovered,
    };
    toBuy.set(projectId, [...(toBuy.get(projectId) ?? []), pool]);
  }
  return { costs, pools: toBuy };
}
