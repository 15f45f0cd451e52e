import "server-only";
import { v7 } from "uuid";
import { type LocalDate, todayIn } from "../calendar/local-date.ts";
import type { Written } from "../fault.ts";
import type { WorkspaceEntry } from "../tax/workspace-entry.ts";
import { findingWorkspaces, inWorkspace, type Scope, type Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { dateOrNull, digits, row } from "./rows.ts";
import { isRegionKnown } from "./tax-regions.ts";
import { WORKSPACE, type Workspace, type WorkspaceRow, workspaceOfRow } from "./workspace-rows.ts";
import { accepted, fault, NOT_THERE, refused } from "./written.ts";

export type { Workspace } from "./workspace-rows.ts";
export type WorkspacePatch = WorkspaceEntry;
type Kind = Workspace["kind"];

const FIRST = {
  owner: { name: "My workspace", homeCurrency: "CAD", taxRegion: "CA-NS", timeZone: "America/Halifax" },
  demo: { name: "Demo", homeCurrency: "CAD", taxRegion: "CA-NS", timeZone: "America/Halifax" },
} as const;

/** The workspace of a transaction. Throws: Error when the scope names none. */
export async function workspaceWithin(tx: Tx): Promise<Workspace> {
  const found = await row<WorkspaceRow>(tx, WORKSPACE);
  if (found === null)
    throw new Error("no workspace of this id: take the scope from ownerWorkspace or demoWorkspace");
  return workspaceOfRow(found);
}

async function newestId(kind: Kind): Promise<string | null> {
  return findingWorkspaces(async (tx) => {
    const found = await row<{ id: string }>(
      tx,
      Prisma.sql`SELECT id FROM workspace WHERE kind = ${kind} ORDER BY created_at DESC LIMIT 1`,
    );
    return found?.id ?? null;
  });
}

/** Makes the workspace of a kind unless another writer just did; one of each kind. */
async function make(kind: Kind): Promise<Workspace> {
  const id = v7();
  return inWorkspace({ workspaceId: id, actor: "system" }, async (tx) => {
    await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtext(${`dunnage workspace ${kind}`}))`;
    await tx.$executeRaw`SELECT set_config('app.finding', 'on', true)`;
    const there = await row<{ id: string }>(
      tx,
      Prisma.sql`SELECT id FROM workspace WHERE kind = ${kind} LIMIT 1`,
    );
    await tx.$executeRaw`SELECT set_config('app.finding', 'off', true), set_config('app.workspace', ${there?.id ?? id}, true)`;
    if (there === null)
      await tx.workspace.create({ data: { id, kind, ...FIRST[kind] }, select: { id: true } });
    return workspaceWithin(tx);
  });
}

/** The owner's workspace; made at the first call of all (CAD, Nova Scotia until Settings say otherwise). */
export async function ownerWorkspace(): Promise<Workspace> {
  const id = await newestId("owner");
  return id === null ? make("owner") : workspaceOf({ workspaceId: id, actor: "system" });
}

/** The demo's workspace, or null when there is none. */
export async function demoWorkspace(): Promise<Workspace | null> {
  const id = await newestId("demo");
  return id === null ? null : workspaceOf({ workspaceId: id, actor: "system" });
}

/** An empty workspace for the demo, or the one that is there. */
export function makeDemoWorkspace(): Promise<Workspace> {
  return make("demo");
}

/** Throws the demo away with everything in it, its change log too. Anything but the demo is refused by the database. */
export async function discardWorkspace(id: string): Promise<void> {
  await inWorkspace({ workspaceId: id, actor: "system" }, (tx) => tx.workspace.deleteMany({ where: { id } }));
}

/** The workspace of a scope. Throws: Error when the scope names none. */
export function workspaceOf(scope: Scope): Promise<Workspace> {
  return inWorkspace(scope, workspaceWithin);
}

/** Today in the workspace of a transaction: lib/data is the only place with a clock. */
export function todayOf(workspace: Pick<Workspace, "timeZone">): LocalDate {
  return todayIn(workspace.timeZone, new Date());
}

async function replaceMoneyRate(
  tx: Tx,
  workspace: Workspace,
  rate: WorkspaceEntry["moneyRate"],
): Promise<void> {
  if (rate === undefined) return;
  if (rate === null) {
    await tx.moneyRate.deleteMany({});
    return;
  }
  const from = rate.from ?? (workspace.moneyRates.length === 0 ? null : todayOf(workspace));
  await tx.moneyRate.deleteMany({ where: { fromDay: dateOrNull(from) } });
  await tx.moneyRate.create({
    data: { percent: digits(rate.percent), fromDay: dateOrNull(from) },
    select: { id: true },
  });
}

async function replaceLists(tx: Tx, patch: WorkspacePatch): Promise<void> {
  if (patch.registeredFor !== undefined) {
    await tx.registration.deleteMany({});
    await tx.registration.createMany({
      data: patch.registeredFor.map(({ tax, from, until }) => ({
        tax,
        fromDay: dateOrNull(from),
        untilDay: dateOrNull(until),
      })),
    });
  }
  if (patch.rateSources !== undefined) {
    await tx.rateSource.deleteMany({});
    const data = Object.entries(patch.rateSources).flatMap(([currency, source]) =>
      source === undefined ? [] : [{ currency, source }],
    );
    await tx.rateSource.createMany({ data });
  }
}

/**
 * Changes settings. A money rate without a day holds from the beginning when it is the first, else from today; one of
 * the same day is replaced. Faults: unknown-region.
 */
export function updateWorkspace(scope: Scope, patch: WorkspacePatch): Promise<Written<Workspace>> {
  return inWorkspace(scope, async (tx) => {
    const before = await row<WorkspaceRow>(tx, WORKSPACE);
    if (before === null) return NOT_THERE;
    if (patch.taxRegion !== undefined && !(await isRegionKnown(tx, patch.taxRegion)))
      return refused([fault("taxRegion", "unknown-region")]);
    const { name, homeCurrency, taxRegion, recheckDays, timeZone } = patch;
    const data = { name, homeCurrency, taxRegion, recheckDays, timeZone };
    if (Object.values(data).some((value) => value !== undefined))
      await tx.workspace.updateMany({ where: { id: scope.workspaceId }, data });
    await replaceMoneyRate(tx, workspaceOfRow(before), patch.moneyRate);
    await replaceLists(tx, patch);
    return accepted(await workspaceWithin(tx));
  });
}
