import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Fault, Written } from "../fault.ts";
import type { DisposalEntry } from "../projects/disposal-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { countedDay, dayFaults } from "./day-faults.ts";
import { disposalsWithin, disposalWithin, type StoredDisposal } from "./disposal-rows.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import { Prisma } from "./generated/client.ts";
import { materialWithin } from "./material-rows.ts";
import { projectWithin } from "./project-rows.ts";
import { dateOf, digits, digitsOrNull } from "./rows.ts";
import { isRegionKnown } from "./tax-regions.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { accepted, fault, NOT_THERE, refused, repeated } from "./written.ts";

export type { StoredDisposal } from "./disposal-rows.ts";

/** What a project got rid of, the newest first; undone ones only when asked for. */
export function disposalsOf(
  scope: Scope,
  projectId: string,
  { undone = false }: { undone?: boolean } = {},
): Promise<StoredDisposal[]> {
  const live = undone ? Prisma.empty : Prisma.sql`AND d.undone_at IS NULL`;
  return inWorkspace(scope, (tx) =>
    disposalsWithin(tx, Prisma.sql`d.project_id = ${projectId}::uuid ${live}`),
  );
}

/** One of them, an undone one too. */
export function disposal(scope: Scope, id: string): Promise<StoredDisposal | null> {
  return inWorkspace(scope, (tx) => disposalWithin(tx, id));
}

async function faultsOf(tx: Tx, entry: DisposalEntry, today: LocalDate): Promise<Fault[]> {
  const { taxRegion, materialId } = entry;
  return [
    ...dayFaults("on", entry.on, today),
    ...(taxRegion !== null && !(await isRegionKnown(tx, taxRegion))
      ? [fault("taxRegion", "unknown-region")]
      : []),
    ...(materialId !== null && (await materialWithin(tx, materialId)) === null
      ? [fault("materialId", "not-there")]
      : []),
  ];
}

function columns(entry: DisposalEntry, today: LocalDate) {
  return {
    kind: entry.kind,
    onDay: dateOf(countedDay(entry.on, today)),
    feeBasis: entry.feeBasis,
    fee: digits(entry.fee),
    least: digitsOrNull(entry.least),
    loads: digitsOrNull(entry.loads),
    hauling: digits(entry.hauling),
    currency: entry.currency,
    taxIncluded: entry.taxIncluded,
    taxRegion: entry.taxRegion,
    weight: digitsOrNull(entry.weight?.value ?? null),
    weightUnit: entry.weight?.unit ?? null,
    materialId: entry.materialId,
    quantity: digitsOrNull(entry.quantity),
    note: entry.note,
  };
}

async function stored(tx: Tx, id: string): Promise<Written<StoredDisposal>> {
  const value = await disposalWithin(tx, id);
  return value === null ? NOT_THERE : accepted(value);
}

/**
 * Waste gotten rid of, and what a project paid for it; not-there when the project is not. A day ahead counts as today.
 * Faults: day-ahead and day-too-early (on), unknown-region (taxRegion), not-there (materialId).
 */
export function addDisposal(
  scope: Scope,
  projectId: string,
  id: string,
  entry: DisposalEntry,
): Promise<Written<StoredDisposal>> {
  const hash = entryHash({ projectId, ...entry });
  return inWorkspace(scope, (tx) =>
    createdOnce(tx, { table: "disposal", id, hash, stored: () => disposalWithin(tx, id) }, async () => {
      if ((await projectWithin(tx, projectId)) === null) return NOT_THERE;
      const today = todayOf(await workspaceWithin(tx));
      const faults = await faultsOf(tx, entry, today);
      if (faults.length > 0) return refused(faults);
      const data = { id, projectId, ...columns(entry, today), entryHash: hash };
      await tx.disposal.create({ data, select: { id: true } });
      return stored(tx, id);
    }),
  );
}

/** All of it as the entry says it now; the change log keeps what was. Not there: undone, too. Faults: those of `addDisposal`. */
export function correctDisposal(
  scope: Scope,
  id: string,
  entry: DisposalEntry,
): Promise<Written<StoredDisposal>> {
  return inWorkspace(scope, async (tx) => {
    const there = await disposalWithin(tx, id);
    if (there === null || there.undoneAt !== null) return NOT_THERE;
    const today = todayOf(await workspaceWithin(tx));
    const faults = await faultsOf(tx, entry, today);
    if (faults.length > 0) return refused(faults);
    await tx.disposal.updateMany({ where: { id }, data: columns(entry, today) });
    return stored(tx, id);
  });
}

async function setUndone(scope: Scope, id: string, undone: boolean): Promise<Written<StoredDisposal>> {
  return inWorkspace(scope, async (tx) => {
    const there = await disposalWithin(tx, id);
    if (there === null) return NOT_THERE;
    if ((there.undoneAt !== null) === undone) return repeated(there);
    await tx.disposal.updateMany({ where: { id }, data: { undoneAt: undone ? new Date() : null } });
    return stored(tx, id);
  });
}

/** As if it had not been paid for; can be redone. */
export function undoDisposal(scope: Scope, id: string): Promise<Written<StoredDisposal>> {
  return setUndone(scope, id, true);
}

/** Brings an undone one back. */
export function redoDisposal(scope: Scope, id: string): Promise<Written<StoredDisposal>> {
  return setUndone(scope, id, false);
}
