import * as z from "zod";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Project, Requirement, RequirementRevision } from "../projects/project.ts";
import { revisionOn, statusOn } from "../projects/revisions.ts";
import { dayShape, decimalShape, enteredMoney, exactText, moneyShape } from "./api-fields.ts";

export const projectShape = z.strictObject({
  id: z.string(),
  name: z.string(),
  status: z.string().nullable().describe("on the day asked for"),
  statuses: z.array(z.strictObject({ status: z.string(), from: dayShape })),
  budget: moneyShape.nullable(),
  note: z.string().nullable(),
});

/** A project and its status on a day. */
export function apiProject(project: Project, day: LocalDate): z.output<typeof projectShape> {
  const { id, name, budget, note } = project;
  return {
    id,
    name,
    status: statusOn(project, day),
    statuses: project.statuses.map(({ status, from }) => ({ status, from })),
    budget: budget === null ? null : enteredMoney(budget),
    note,
  };
}

const revisionShape = z.strictObject({
  validFrom: dayShape,
  quantity: decimalShape,
  unit: z.string(),
  wastePercent: decimalShape,
  neededBy: dayShape,
  budgetUnitPrice: moneyShape.nullable(),
  acceptsUsed: z.boolean(),
});

export const requirementShape = z.strictObject({
  id: z.string(),
  projectId: z.string(),
  materialId: z.string(),
  current: revisionShape.nullable().describe("what it asks for on the day asked for"),
  revisions: z.array(revisionShape),
  alternatives: z.array(z.strictObject({ materialId: z.string(), factor: decimalShape })),
  closedOn: dayShape.nullable(),
});

function apiRevision(revision: RequirementRevision): z.output<typeof revisionShape> {
  const { validFrom, quantity, unit, wastePercent, neededBy, budgetUnitPrice, acceptsUsed } = revision;
  return {
    validFrom,
    quantity: exactText(quantity),
    unit,
    wastePercent: exactText(wastePercent),
    neededBy,
    budgetUnitPrice: budgetUnitPrice === null ? null : enteredMoney(budgetUnitPrice),
    acceptsUsed,
  };
}

/** A requirement, its revisions, and the one that holds on a day. */
export function apiRequirement(requirement: Requirement, day: LocalDate): z.output<typeof requirementShape> {
  const { id, projectId, materialId, closedOn } = requirement;
  const current = revisionOn(requirement, day);
  return {
    id,
    projectId,
    materialId,
    current: current === null ? null : apiRevision(current),
    revisions: requirement.revisions.map(apiRevision),
    alternatives: requirement.alternatives.map((one) => ({
      materialId: one.materialId,
      factor: exactText(one.factor),
    })),
    closedOn,
  };
}
