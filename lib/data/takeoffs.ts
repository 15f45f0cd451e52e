import "server-only";
import type { Fault, Written } from "../fault.ts";
import { requirementEntry } from "../projects/requirement-entry.ts";
import { type NeedOfLine, needsOfLines, type TakeoffNeedsEntry } from "../projects/takeoff-needs.ts";
import { type Takeoff, takeoffOf } from "../takeoff/takeoff-entry.ts";
import { yieldText } from "../takeoff/yield.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import type { Prisma } from "./generated/client.ts";
import { materialsWithin } from "./material-rows.ts";
import { projectWithin } from "./project-rows.ts";
import { addRequirementWithin, reviseRequirementWithin } from "./requirements.ts";
import { dateOf, dateOrNull } from "./rows.ts";
import { type StoredTakeoff, takeoffIdOf, takeoffWithin } from "./takeoff-rows.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { accepted, fault, NOT_THERE, refused } from "./written.ts";

export type { StoredTakeoff } from "./takeoff-rows.ts";

/** The takeoff of an id in the workspace, or null. */
export function takeoff(scope: Scope, id: string): Promise<StoredTakeoff | null> {
  return inWorkspace(scope, (tx) => takeoffWithin(tx, id));
}

/** The takeoff a requirement came of, or null. */
export function takeoffOfRequirement(scope: Scope, requirementId: string): Promise<StoredTakeoff | null> {
  return inWorkspace(scope, async (tx) => {
    const id = await takeoffIdOf(tx, requirementId);
    return id === null ? null : takeoffWithin(tx, id);
  });
}

type Checked = Readonly<{ takeoff: Takeoff; needs: readonly NeedOfLine[] }>;

/** known: requirements there are already; an archived material is refused for new ones only. */
async function checked(
  tx: Tx,
  entry: TakeoffNeedsEntry,
  known: ReadonlySet<string>,
): Promise<Checked | readonly Fault[]> {
  const read = takeoffOf(entry.takeoff);
  if (!read.ok) return read.faults;
  const named = entry.needs.map(({ materialId }) => materialId).filter((id) => id !== null);
  const materials = new Map((await materialsWithin(tx, named)).map((one) => [one.id, one]));
  const { needs, faults } = needsOfLines(entry.needs, read.value.result.lines, materials);
  const archived = entry.needs.flatMap((need, at) =>
    known.has(need.line) || !materials.get(need.materialId ?? "")?.archivedOn
      ? []
      : [fault(`needs.${at}.materialId`, "archived")],
  );
  const all = [...faults, ...archived];
  return all.length > 0 ? all : { takeoff: read.value, needs };
}

function inputsOf(taken: Takeoff): Prisma.InputJsonObject {
  const stored: { inputs: Prisma.InputJsonObject } = JSON.parse(taken.stored);
  return stored.inputs;
}

/** What was typed of the lines that are bought, by their keys. */
function yieldsOf(needs: readonly NeedOfLine[]): Prisma.InputJsonObject {
  return Object.fromEntries(
    needs.flatMap(({ need: { line, holds } }) => (holds === undefined ? [] : [[line, yieldText(holds)]])),
  );
}

type Under = Readonly<{ id: string; projectId: string; neededBy: TakeoffNeedsEntry["neededBy"] }>;

async function addNeed(tx: Tx, { id, projectId, neededBy }: Under, line: NeedOfLine): Promise<void> {
  const { need, materialId, quantity } = line;
  const entry = requirementEntry.parse({
    materialId,
    quantity: quantity.value.toFixed(),
    unit: quantity.unit,
    wastePercent: need.wastePercent.toFixed(),
    neededBy,
  });
  const placed = { projectId, id: need.id, takeoffId: id, takeoffLine: need.line };
  const made = await addRequirementWithin(
    tx,
    { ...placed, hash: entryHash({ takeoff: id, ...entry }) },
    entry,
  );
  if (!made.ok) throw new Error(`a checked line of takeoff ${id} was not taken: ${JSON.stringify(made)}`);
}

/**
 * A takeoff kept with its inputs, and its chosen lines as requirements of the project, all in one transaction.
 * Faults: those of takeoffOf and of needsOfLines, archived; not-there when the project is not.
 */
export function addTakeoff(
  scope: Scope,
  projectId: string,
  id: string,
  entry: TakeoffNeedsEntry,
): Promise<Written<StoredTakeoff>> {
  const hash = entryHash({ projectId, ...entry });
  return inWorkspace(scope, (tx) =>
    createdOnce(tx, { table: "takeoff", id, hash, stored: () => takeoffWithin(tx, id) }, async () => {
      if ((await projectWithin(tx, projectId)) === null) return NOT_THERE;
      const read = await checked(tx, entry, new Set());
      if (!("needs" in read)) return refused(read);
      const { calculator, system } = read.takeoff;
      const inputs = inputsOf(read.takeoff);
      await tx.takeoff.create({
        data: {
          id,
          projectId,
          calculator,
          unitSystem: system,
          inputs,
          yields: yieldsOf(read.needs),
          entryHash: hash,
        },
        select: { id: true },
      });
      for (const line of read.needs) await addNeed(tx, { id, projectId, neededBy: entry.neededBy }, line);
      return stored(tx, id);
    }),
  );
}

async function stored(tx: Tx, id: string): Promise<Written<StoredTakeoff>> {
  const value = await takeoffWithin(tx, id);
  return value === null ? NOT_THERE : accepted(value);
}

/**
 * The same takeoff with other inputs: requirements made of it get a revision dated today, lines chosen anew become
 * requirements, and what is no longer chosen is closed today. Faults: those of addTakeoff; unknown-choice (calculator)
 * for another calculator, wrong-material for a line that is bought as something else already.
 */
export function reviseTakeoff(
  scope: Scope,
  id: string,
  entry: TakeoffNeedsEntry,
): Promise<Written<StoredTakeoff>> {
  return inWorkspace(scope, async (tx) => {
    await tx.$queryRaw`SELECT 1 AS one FROM takeoff WHERE id = ${id}::uuid FOR NO KEY UPDATE`;
    const there = await takeoffWithin(tx, id);
    if (there === null) return NOT_THERE;
    const known = new Map(there.needs.map(({ line, requirementId }) => [line, requirementId]));
    const read = await checked(tx, entry, new Set(known.keys()));
    if (!("needs" in read)) return refused(read);
    if (read.takeoff.calculator !== there.calculator) return refused([fault("calculator", "unknown-choice")]);
    const materialOf = await materialsOfNeeds(tx, id);
    const other = entry.needs.flatMap(({ line, materialId }, at) =>
      materialId !== null && (materialOf.get(line) ?? materialId) !== materialId
        ? [fault(`needs.${at}.materialId`, "wrong-material")]
        : [],
    );
    if (other.length > 0) return refused(other);
    const inputs = inputsOf(read.takeoff);
    const yields = yieldsOf(read.needs);
    await tx.takeoff.updateMany({ where: { id }, data: { inputs, yields, unitSystem: read.takeoff.system } });
    const { neededBy } = entry;
    const today = todayOf(await workspaceWithin(tx));
    for (const line of read.needs) {
      const requirementId = known.get(line.need.line);
      if (requirementId === undefined) await addNeed(tx, { id, projectId: there.projectId, neededBy }, line);
      else {
        const { wastePercent } = line.need;
        const { value: quantity, unit } = line.quantity;
        const patch = { quantity, unit, wastePercent, neededBy, closedOn: null };
        await reviseRequirementWithin(tx, requirementId, patch);
      }
    }
    const kept = new Set(read.needs.map(({ need }) => need.line));
    const gone = there.needs.filter(({ line }) => !kept.has(line)).map((one) => one.requirementId);
    const open = { id: { in: gone }, closedOn: null };
    await tx.requirement.updateMany({ where: open, data: { closedOn: dateOf(today) } });
    return stored(tx, id);
  });
}

async function materialsOfNeeds(tx: Tx, takeoffId: string): Promise<ReadonlyMap<string, string>> {
  const select = { takeoffLine: true, materialId: true };
  const found = await tx.requirement.findMany({ where: { takeoffId }, select });
  return new Map(found.map(({ takeoffLine, materialId }) => [takeoffLine ?? "", materialId]));
}

/** Closes every requirement of a takeoff today (`undone`), or opens them all again. Not there: no takeoff of this id. */
export function undoTakeoff(scope: Scope, id: string, undone: boolean): Promise<Written<StoredTakeoff>> {
  return inWorkspace(scope, async (tx) => {
    const there = await takeoffWithin(tx, id);
    if (there === null) return NOT_THERE;
    const closedOn = undone ? todayOf(await workspaceWithin(tx)) : null;
    const others = undone ? { closedOn: null } : {};
    await tx.requirement.updateMany({
      where: { takeoffId: id, ...others },
      data: { closedOn: dateOrNull(closedOn) },
    });
    return accepted(there);
  });
}
