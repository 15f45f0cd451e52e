import * as z from "zod";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Money } from "../money/money.ts";
import type { Project, Requirement, RequirementRevision } from "../projects/project.ts";
import { revisionOn, statusOn } from "../projects/revisions.ts";
import { dayShape, decimalShape, enteredDigits, exactDigits } from "./api-fields.ts";

export const projectShape = z.strictObject({
  id: z.string(),
  name: z.string(),
  status: z.string().nullable().describe("on the day asked for"),
  statuses: z.array(z.strictObject({ status: z.string(), from: dayShape })),
  budget: decimalShape.nullable().describe("home currency, all in"),
  note: z.string().nullable(),
});

function entered(value: Money | null): string | null {
  return value === null ? null : enteredDigits(value.amount, value.currency);
}

/** A project and its status on a day. */
export function apiProject(project: Project, day: LocalDate): z.output<typeof projectShape> {
  const { id, name, budget, note } = project;
  return {
    id,
    name,
    status: statusOn(project, day),
    statuses: project.statuses.map(({ status, from }) => ({ status, from })),
    budget: entered(budget),
    note,
  };
}

const revisionShape = z.strictObject({
  validFrom: dayShape,
  quantity: decimalShape,
  unit: z.string(),
  wastePercent: decimalShape,
  neededBy: dayShape,
  budgetUnitPrice: decimalShape.nullable().describe("home currency, all in, per purchase unit"),
  acceptsUsed: z.boolean(),
});

export const requirementShape = z.strictObject({
  id: z.string(),
  projectId: z.string(),
  materialId: z.string(),
  ...revisionShape.partial().shape,
  revisions: z.array(revisionShape),
  alternatives: z.array(z.strictObject({ materialId: z.string(), factor: decimalShape })),
  closedOn: dayShape.nullable(),
});

function apiRevision(revision: RequirementRevision): z.output<typeof revisionShape> {
  const { validFrom, quantity, unit, wastePercent, neededBy, budgetUnitPrice, acceptsUsed } = revision;
  return {
    validFrom,
    quantity: exactDigits(quantity),
    unit,
    wastePercent: exactDigits(wastePercent),
    neededBy,
    budgetUnitPrice: entered(budgetUnitPrice),
    acceptsUsed,
  };
}

/** A requirement as it asks on a day (nothing of it before its first revision), and all its revisions. */
export function apiRequirement(requirement: Requirement, day: LocalDate): z.output<typeof requirementShape> {
  const { id, projectId, materialId, closedOn } = requirement;
  const current = revisionOn(requirement, day);
  return {
    id,
    projectId,
    materialId,
    ...(current === null ? {} : apiRevision(current)),
    revisions: requirement.revisions.map(apiRevision),
    alternatives: requirement.alternatives.map((one) => ({
      materialId: one.materialId,
      factor: exactDigits(one.factor),
    })),
    closedOn,
  };
}
