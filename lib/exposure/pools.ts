import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import type { Requirement } from "../projects/project.ts";
import { groupedBy } from "./exposure-facts.ts";

/** A requirement with something left to buy. open: purchase units, rounded up. */
export type OpenNeed = Readonly<{
  requirement: Requirement;
  material: Material;
  open: Decimal;
  neededBy: LocalDate;
  acceptsUsed: boolean;
  live: boolean;
}>;

/** The open needs of one project for one material: bought together (R6). neededBy: of the earliest. */
export type Pool = Readonly<{
  projectId: string;
  material: Material;
  needs: readonly OpenNeed[];
  neededBy: LocalDate;
  live: boolean;
}>;

/** The sum of what is open. Units: the material's purchase units. */
export function openOf(needs: readonly OpenNeed[]): Decimal {
  return needs.reduce((total, need) => total.plus(need.open), ZERO);
}

/**
 * Open needs pooled by project and material, in the order in which limited offers are given out: live projects first,
 * then by the earliest needed-by day, then as given. Source: rules.md R6.
 */
export function poolsOf(needs: readonly OpenNeed[]): Pool[] {
  const earliestFirst = [...needs].sort((a, b) =>
    a.neededBy < b.neededBy ? -1 : a.neededBy > b.neededBy ? 1 : 0,
  );
  const inTurn = [
    ...earliestFirst.filter((need) => need.live),
    ...earliestFirst.filter((need) => !need.live),
  ];
  const groups = groupedBy(inTurn, ({ requirement, material }) => `${requirement.projectId} ${material.id}`);
  return [...groups.values()].flatMap((members): Pool[] => {
    const [first] = members;
    if (first === undefined) return [];
    const { requirement, material, neededBy, live } = first;
    return [{ projectId: requirement.projectId, material, needs: members, neededBy, live }];
  });
}
