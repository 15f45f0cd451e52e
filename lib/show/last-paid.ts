import type { LocalDate } from "../calendar/local-date.ts";
import { ONE } from "../decimal.ts";
import type { ExposureFacts } from "../exposure/exposure.ts";
import type { Material } from "../materials/material.ts";
import { type Money, times } from "../money/money.ts";
import { lotCost } from "../stock/lot-cost.ts";

/** What was last paid for a material: a lot's cost per purchase unit, unrounded, and the projects it went to. */
export type LastPaid = Readonly<{
  lotId: string;
  each: Money;
  on: LocalDate;
  storeId: string | null;
  projectIds: readonly string[];
}>;

/**
 * The newest lot bought (not salvaged, not left over) on or before a day, at its cost per purchase unit: lot cost /
 * quantity (R9). null: nothing bought yet, or its cost is not known. Rounds: never.
 */
export function lastPaid(facts: ExposureFacts, material: Material, day: LocalDate): LastPaid | null {
  const lot = facts.lots
    .filter((held) => held.materialId === material.id && held.orderedOn <= day)
    .filter((held) => held.origin === "bought" || held.origin === "special-order")
    .reduce<ExposureFacts["lots"][number] | null>(
      (last, held) => (last === null || held.orderedOn >= last.orderedOn ? held : last),
      null,
    );
  if (lot === null) return null;
  const cost = lotCost(lot, material, facts.valuation);
  if (!cost.known) return null;
  const requirementIds = facts.events
    .filter((event) => event.lotId === lot.id && event.requirementId !== null && event.on <= day)
    .map((event) => event.requirementId);
  const projectIds = facts.requirements
    .filter((requirement) => requirementIds.includes(requirement.id))
    .map((requirement) => requirement.projectId);
  return {
    lotId: lot.id,
    each: times(cost.cost, ONE.dividedBy(lot.quantity)),
    on: lot.orderedOn,
    storeId: lot.storeId,
    projectIds: [...new Set(projectIds)],
  };
}
