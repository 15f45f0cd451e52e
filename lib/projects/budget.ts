import type { Decimal } from "../decimal.ts";
import { type Money, roundToMinorUnit, sum, times } from "../money/money.ts";
import type { Project, RequirementRevision } from "./project.ts";

/**
 * What a line may cost: required x budgeted unit price, all in; null when no price is budgeted.
 * Units: required in the material's purchase units, home currency. Rounds: once, half up, to the minor unit. Source: rules.md R8.
 */
export function lineBudget(revision: RequirementRevision, required: Decimal): Money | null {
  return revision.budgetUnitPrice === null
    ? null
    : roundToMinorUnit(times(revision.budgetUnitPrice, required));
}

/**
 * A project's budget: its own, else the sum of its lines' budgets; null when it has none of its own and no lines, or a
 * line without one (part of a budget against the whole cost would be no comparison).
 * Units: home currency. Rounds: never. @throws {CurrencyMismatch} when lines differ in currency. Source: rules.md R8.
 */
export function projectBudget(project: Project, lines: readonly (Money | null)[]): Money | null {
  if (project.budget !== null) return project.budget;
  const given = lines.filter((line) => line !== null);
  const [first] = given;
  return first === undefined || given.length < lines.length ? null : sum(given, first.currency);
}
