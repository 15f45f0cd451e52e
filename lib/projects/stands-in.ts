import { type Decimal, ONE } from "../decimal.ts";
import type { Requirement } from "./project.ts";

/**
 * How much of a material does the work of one purchase unit of the required one: 1 for the material itself, the factor of
 * an accepted alternative, null for anything else. Only the user adds alternatives. Source: rules.md R8.
 */
export function standInFactor(requirement: Requirement, materialId: string): Decimal | null {
  if (materialId === requirement.materialId) return ONE;
  return requirement.alternatives.find((other) => other.materialId === materialId)?.factor ?? null;
}
