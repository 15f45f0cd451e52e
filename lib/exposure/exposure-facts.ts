import type { Material } from "../materials/material.ts";
import type { Observation } from "../prices/observation.ts";
import type { Valuation } from "../prices/valuation.ts";
import type { Project, Requirement } from "../projects/project.ts";
import type { MoneyRate } from "../stock/carrying.ts";
import type { Lot, StockEvent } from "../stock/lot.ts";

/** All that exposure is computed from. observations: at least those that count on the day; more do no harm. */
export type ExposureFacts = Readonly<{
  valuation: Valuation;
  materials: ReadonlyMap<string, Material>;
  projects: readonly Project[];
  requirements: readonly Requirement[];
  observations: readonly Observation[];
  lots: readonly Lot[];
  events: readonly StockEvent[];
  moneyRates: readonly MoneyRate[];
}>;

/** Things by one of their fields, in their own order. */
export function groupedBy<T>(things: readonly T[], keyOf: (thing: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const thing of things) {
    const key = keyOf(thing);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [thing]);
    else group.push(thing);
  }
  return groups;
}

/** A material of the facts. @throws {RangeError} when it is not there: facts must name every material they use. */
export function materialOf(facts: Pick<ExposureFacts, "materials">, id: string): Material {
  const material = facts.materials.get(id);
  if (material === undefined)
    throw new RangeError(`the material ${id} is used and not among the facts: load it with them`);
  return material;
}
