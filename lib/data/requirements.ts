import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Fault, Written } from "../fault.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { money } from "../money/money.ts";
import type { Alternative, Requirement, RequirementRevision } from "../projects/project.ts";
import type { RequirementEntry, RequirementPatch } from "../projects/requirement-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import { projectWithin } from "./project-rows.ts";
import { requirementFaults } from "./requirement-checks.ts";
import { requirementsWithin, requirementWithin } from "./requirement-rows.ts";
import { dateOf, dateOrNull, digits, digitsOrNull } from "./rows.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { accepted, fault, NOT_THERE, refused, repeated } from "./written.ts";

/** Requirements in the order they were entered: all, or one project's. */
export function requirementsOf(scope: Scope, projectId?: string): Promise<Requirement[]> {
  return inWorkspace(scope, (tx) => requirementsWithin(tx, projectId));
}

/** The requirement of an id in the workspace, or null. */
export function requirement(scope: Scope, id: string): Promise<Requirement | null> {
  return inWorkspace(scope, (tx) => requirementWithin(tx, id));
}

/** A revision of the same day takes the earlier one's place; the change log keeps both. */
async function setRevision(tx: Tx, requirementId: string, revision: RequirementRevision): Promise<void> {
  const where = { requirementId, validFrom: dateOf(revision.validFrom) };
  const data = {
    quantity: digits(revision.quantity),
    unit: revision.unit,
    wastePercent: digits(revision.wastePercent),
    neededBy: dateOf(revision.neededBy),
    budgetUnitPrice: digitsOrNull(revision.budgetUnitPrice?.amount ?? null),
    budgetCurrency: revision.budgetUnitPrice?.currency ?? null,
    acceptsUsed: revision.acceptsUsed,
  };
  const { count } = await tx.requirementRevision.updateMany({ where, data });
  if (count === 0) await tx.requirementRevision.create({ data: { ...where, ...data }, select: { id: true } });
}

async function replaceAlternatives(
  tx: Tx,
  requirementId: string,
  alternatives: readonly Alternative[],
): Promise<void> {
  await tx.requirementAlternative.deleteMany({ where: { requirementId } });
  await tx.requirementAlternative.createMany({
    data: alternatives.map(({ materialId, factor }) => ({
      requirementId,
      materialId,
      factor: digits(factor),
    })),
  });
}

async function stored(tx: Tx, id: string): Promise<Written<Requirement>> {
  const value = await requirementWithin(tx, id);
  return value === null ? NOT_THERE : accepted(value);
}

/** A new line of a project; not-there when the project is not. Faults: those of `requirementFaults`. validFrom: today when not given. */
export function addRequirement(
  scope: Scope,
  projectId: string,
  id: string,
  entry: RequirementEntry,
): Promise<Written<Requirement>> {
  const hash = entryHash({ projectId, ...entry });
  return inWorkspace(scope, (tx) =>
    createdOnce(tx, { table: "requirement", id, hash, stored: () => requirementWithin(tx, id) }, async () => {
      if ((await projectWithin(tx, projectId)) === null) return NOT_THERE;
      const faults = await requirementFaults(tx, { ...entry, fresh: true });
      if (faults.length > 0) return refused(faults);
      return addRequirementWithin(tx, { projectId, id, hash, takeoffId: null, takeoffLine: null }, entry);
    }),
  );
}

type Placed = Readonly<{
  projectId: string;
  id: string;
  hash: string;
  /** The takeoff it came of, and which line of it. */
  takeoffId: string | null;
  takeoffLine: string | null;
}>;

/** A requirement that has been checked, in a transaction. */
export async function addRequirementWithin(
  tx: Tx,
  { id, hash, ...placed }: Placed,
  entry: RequirementEntry,
): Promise<Written<Requirement>> {
  const workspace = await workspaceWithin(tx);
  const { materialId, alternatives, validFrom, budgetUnitPrice, ...revision } = entry;
  await tx.requirement.create({ data: { id, ...placed, materialId, entryHash: hash }, select: { id: true } });
  await setRevision(tx, id, {
    ...revision,
    validFrom: validFrom ?? todayOf(workspace),
    budgetUnitPrice: budgetUnitPrice === null ? null : money(budgetUnitPrice, workspace.homeCurrency),
  });
  await replaceAlternatives(tx, id, alternatives);
  return stored(tx, id);
}

/** The figures in force on a day with a patch put over them; before the first revision, the first one's. */
function revised(
  there: Requirement,
  { budgetUnitPrice, quantity, unit, wastePercent, neededBy, acceptsUsed }: RequirementPatch,
  validFrom: LocalDate,
  currency: CurrencyCode,
): RequirementRevision | null {
  const given = { quantity, unit, wastePercent, neededBy, acceptsUsed };
  const changes = Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined));
  const before =
    there.revisions.findLast((revision) => revision.validFrom <= validFrom) ?? there.revisions[0];
  if (before === undefined) throw new Error(`requirement ${there.id} has no revision`);
  if (budgetUnitPrice === undefined && Object.keys(changes).length === 0) return null;
  const budget = budgetUnitPrice === undefined ? before.budgetUnitPrice : budgetUnitPrice;
  return {
    ...before,
    ...changes,
    validFrom,
    budgetUnitPrice: budget === null ? null : "amount" in budget ? budget : money(budget, currency),
  };
}

/**
 * A dated revision: what the patch does not name stays as it was on that day. Alternatives and closedOn are not dated
 * figures: they are replaced. Faults: those of `requirementFaults`.
 */
export function reviseRequirement(
  scope: Scope,
  id: string,
  patch: RequirementPatch,
): Promise<Written<Requirement>> {
  return inWorkspace(scope, (tx) => reviseRequirementWithin(tx, id, patch));
}

/** The same in a transaction. */
export async function reviseRequirementWithin(
  tx: Tx,
  id: string,
  patch: RequirementPatch,
): Promise<Written<Requirement>> {
  await tx.$queryRaw`SELECT 1 AS one FROM requirement WHERE id = ${id}::uuid FOR NO KEY UPDATE`;
  const there = await requirementWithin(tx, id);
  if (there === null) return NOT_THERE;
  const { unit, alternatives, closedOn } = patch;
  const faults = await requirementFaults(tx, {
    materialId: there.materialId,
    unit,
    alternatives,
    fresh: false,
  });
  if (faults.length > 0) return refused(faults);
  const workspace = await workspaceWithin(tx);
  const validFrom = patch.validFrom ?? todayOf(workspace);
  const revision = revised(there, patch, validFrom, workspace.homeCurrency);
  if (revision !== null) await setRevision(tx, id, revision);
  if (alternatives !== undefined) await replaceAlternatives(tx, id, alternatives);
  if (closedOn !== undefined)
    await tx.requirement.updateMany({ where: { id }, data: { closedOn: dateOrNull(closedOn) } });
  return stored(tx, id);
}

async function setClosed(
  scope: Scope,
  id: string,
  closedOn: LocalDate | null,
  faultsFor: (there: Requirement) => Fault[],
): Promise<Written<Requirement>> {
  return inWorkspace(scope, async (tx) => {
    const there = await requirementWithin(tx, id);
    if (there === null) return NOT_THERE;
    if (there.closedOn === closedOn) return repeated(there);
    const faults = faultsFor(there);
    if (faults.length > 0) return refused(faults);
    await tx.requirement.updateMany({ where: { id }, data: { closedOn: dateOrNull(closedOn) } });
    return stored(tx, id);
  });
}

/** Nothing is open from that day on. Faults: already-closed, with the day. */
export function closeRequirement(scope: Scope, id: string, on: LocalDate): Promise<Written<Requirement>> {
  return setClosed(scope, id, on, ({ closedOn }) =>
    closedOn === null ? [] : [fault("on", "already-closed", { on: closedOn })],
  );
}

/** Takes a closing back: what was open is open again. Not there: no requirement of this id. */
export function reopenRequirement(scope: Scope, id: string): Promise<Written<Requirement>> {
  return setClosed(scope, id, null, () => []);
}
