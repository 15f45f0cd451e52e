import type { LocalDate } from "../calendar/local-date.ts";
import { Decimal, ZERO } from "../decimal.ts";
import { roundUpToPurchase } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import { type Money, money } from "../money/money.ts";
import { lineBudget } from "../projects/budget.ts";
import type { ProjectStatus, Requirement, RequirementRevision } from "../projects/project.ts";
import { type Required, requiredOn } from "../projects/required.ts";
import { isBuying, isClosedOn, revisionOn } from "../projects/revisions.ts";
import type { RequirementExposure } from "./exposure-figures.ts";
import type { LockedIn } from "./locked-in.ts";
import type { OpenNeed } from "./pools.ts";
import type { NeedCost } from "./shares.ts";

/** A requirement on a day before anything is priced: what is asked, what is locked in, what is left open. */
export type RequirementLine = Readonly<{
  requirement: Requirement;
  material: Material;
  revision: RequirementRevision;
  required: Required;
  locked: LockedIn;
  lockedIn: Decimal;
  open: Decimal;
  /** Something is to be bought, and how much cannot be said. */
  openUnknown: boolean;
  live: boolean;
}>;

/**
 * A requirement against what is locked in, on a day; null before its first revision.
 *     open = max(0, required - locked in), rounded up once to what can be bought; 0 once closed, or the job is over
 * Units: the material's purchase units. Source: rules.md R8.
 */
export function requirementLine(
  day: LocalDate,
  requirement: Requirement,
  material: Material,
  status: ProjectStatus,
  locked: LockedIn,
): RequirementLine | null {
  const revision = revisionOn(requirement, day);
  if (revision === null) return null;
  const required = requiredOn(requirement, day, material);
  const lockedIn = locked.allocated.plus(locked.drawn);
  const buying = isBuying(status) && !isClosedOn(requirement, day);
  const left = required.known && buying ? Decimal.max(ZERO, required.quantity.minus(lockedIn)) : ZERO;
  const open = roundUpToPurchase(left, material.purchaseUnit);
  return {
    requirement,
    material,
    revision,
    required,
    locked,
    lockedIn,
    open,
    openUnknown: buying && !required.known,
    live: status === "live",
  };
}

/** The need of a line that has something open. */
export function openNeed({ requirement, material, revision, open, live }: RequirementLine): OpenNeed | null {
  if (open.isZero()) return null;
  return {
    requirement,
    material,
    open,
    neededBy: revision.neededBy,
    acceptsUsed: revision.acceptsUsed,
    live,
  };
}

function unitPrice(cost: Money | null, covered: Decimal): Money | null {
  return cost === null || !covered.isPositive() || covered.isZero()
    ? null
    : money(cost.amount.dividedBy(covered), cost.currency);
}

/** A line's figures, with what covering its need costs beside them (none: nothing is open). Rounds: the budget once. */
export function requirementExposure(
  line: RequirementLine,
  need: NeedCost | null,
  zero: Money,
): RequirementExposure {
  const { requirement, material, revision, required, locked, lockedIn, open } = line;
  const quantity = required.known ? required.quantity : ZERO;
  const { reason } = required.known ? { reason: null } : required;
  const uncovered = need?.uncovered ?? ZERO;
  const cost = need === null ? zero : need.cost;
  return {
    requirementId: requirement.id,
    projectId: requirement.projectId,
    materialId: material.id,
    unit: material.purchaseUnit,
    neededBy: revision.neededBy,
    required: quantity,
    allocated: locked.allocated,
    drawn: locked.drawn,
    lockedIn,
    onOrder: locked.onOrder,
    open,
    surplus: required.known ? Decimal.max(ZERO, lockedIn.minus(quantity)) : ZERO,
    lockedCost: locked.cost,
    costToFinish: cost,
    bestUnitPrice: need === null ? null : unitPrice(cost, open.minus(uncovered)),
    takes: need?.takes ?? [],
    uncovered,
    unpriced: !uncovered.isZero() || line.openUnknown,
    restsOnStale: need?.restsOnStale ?? zero,
    restsOnLapsing: need?.restsOnLapsing ?? zero,
    costWithoutLapsing: need === null ? zero : need.costWithoutLapsing,
    unrealisedSaving: locked.unrealisedSaving,
    budget: required.known ? lineBudget(revision, quantity) : null,
    remarks: reason === null || reason === "not-yet" ? locked.remarks : [reason, ...locked.remarks],
  };
}
