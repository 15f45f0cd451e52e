import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Fault, Written } from "../fault.ts";
import type { Observation } from "../prices/observation.ts";
import { corrected, type ObservationCorrection, type ObservationEntry } from "../prices/observation-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { countedDay } from "./day-faults.ts";
import { Prisma } from "./generated/client.ts";
import { observationFaults, surroundingsOf } from "./observation-checks.ts";
import { type ObservationSent, placeObservations } from "./observation-insert.ts";
import {
  correctableColumns,
  OBSERVATION,
  type ObservationRow,
  observationOfRow,
} from "./observation-rows.ts";
import { manyRows, row, rows, selected } from "./rows.ts";
import { accepted, conflict, NOT_THERE, refused, repeated } from "./written.ts";

/** A stored sighting, with what the list of a material shows beside it. */
export type StoredObservation = Observation & Readonly<{ deletedAt: string | null; corrections: number }>;
type StoredRow = ObservationRow & { deleted_at: string | null; corrections: number };

const STORED = Prisma.sql`SELECT ${selected(OBSERVATION)}, o.deleted_at,
  (SELECT count(*)::int FROM observation_correction c WHERE c.workspace_id = o.workspace_id AND c.observation_id = o.id)
    AS corrections
  FROM observation o`;

function storedOfRow(stored: StoredRow): StoredObservation {
  return { ...observationOfRow(stored), deletedAt: stored.deleted_at, corrections: stored.corrections };
}

/** One sighting inside a transaction, a deleted one too. */
export async function storedObservation(tx: Tx, id: string): Promise<StoredObservation | null> {
  const found = await row<StoredRow>(tx, Prisma.sql`${STORED} WHERE o.id = ${id}::uuid`);
  return found === null ? null : storedOfRow(found);
}

/** One sighting, a deleted one too (deletedAt says so). */
export function observation(scope: Scope, id: string): Promise<StoredObservation | null> {
  return inWorkspace(scope, (tx) => storedObservation(tx, id));
}

/** addObservation inside a transaction that does more. */
export async function addObservationWithin(tx: Tx, sent: ObservationSent): Promise<Written<Observation>> {
  const [placed] = await placeObservations(tx, [sent]);
  if (placed?.now === "added") return accepted(placed.value);
  if (placed?.now === "faults") return refused(placed.faults);
  const stored = await storedObservation(tx, sent.id);
  if (stored === null) throw new Error(`observation ${sent.id} vanished while it was read`);
  return placed?.now === "repeated" ? repeated(stored) : conflict(stored);
}

/** One price as seen. Faults: those of `observationFaults`. */
export function addObservation(
  scope: Scope,
  id: string,
  entry: ObservationEntry,
): Promise<Written<Observation>> {
  return inWorkspace(scope, (tx) => addObservationWithin(tx, { id, entry }));
}

/** Ids that are stored now, by this call or an earlier one of the same content; and the others, each with its place and its reason. */
export type ObservationsAdded = Readonly<{
  accepted: readonly string[];
  rejected: readonly Readonly<{
    index: number;
    id: string;
    why: "faults" | "conflict";
    faults: readonly Fault[];
  }>[];
}>;

/** Many prices in one statement; each entry stands alone. */
export function addObservations(
  scope: Scope,
  entries: readonly ObservationSent[],
): Promise<ObservationsAdded> {
  return inWorkspace(scope, async (tx) => {
    const placed = await placeObservations(tx, entries);
    return {
      accepted: placed.filter(({ now }) => now === "added" || now === "repeated").map(({ id }) => id),
      rejected: placed.flatMap((one, index): ObservationsAdded["rejected"] => {
        if (one.now === "faults") return [{ index, id: one.id, why: "faults", faults: one.faults }];
        return one.now === "conflict" ? [{ index, id: one.id, why: "conflict", faults: [] }] : [];
      }),
    };
  });
}

/**
 * Corrects figures of a sighting; what it said before stays readable (correctionsOf). Lots that copied its figures are
 * not changed (R9). Faults: those of observationEntry's rules and of `observationFaults`; a correction that changes
 * nothing is repeated.
 */
export function correctObservation(
  scope: Scope,
  id: string,
  patch: Omit<ObservationCorrection, "reason">,
  reason: string,
): Promise<Written<Observation>> {
  return inWorkspace(scope, async (tx) => {
    await tx.$queryRaw`SELECT 1 AS one FROM observation WHERE id = ${id}::uuid FOR NO KEY UPDATE`;
    const seen = await storedObservation(tx, id);
    if (seen === null || seen.deletedAt !== null) return NOT_THERE;
    const { deletedAt: _, corrections: __, ...before } = seen;
    const after = corrected(before, { ...patch, reason });
    if (!after.ok) return refused(after.faults);
    const around = await surroundingsOf(tx, [after.value]);
    // An archived store or material is no obstacle to putting its history right.
    const faults = observationFaults(after.value, around).filter(({ code }) => code !== "archived");
    if (faults.length > 0) return refused(faults);
    const value = { ...after.value, seenOn: countedDay(after.value.seenOn, around.today) };
    await tx.$executeRaw`SELECT set_config('app.reason', ${reason}, true)`;
    await tx.observation.updateMany({ where: { id }, data: correctableColumns(value) });
    await tx.$executeRaw`SELECT set_config('app.reason', '', true)`;
    const now = await storedObservation(tx, id);
    if (now === null) return NOT_THERE;
    return now.corrections === seen.corrections ? repeated(now) : accepted(now);
  });
}

/** What a sighting said before a correction. */
export type EarlierObservation = Readonly<{
  at: string;
  actor: string;
  reason: string;
  earlier: Observation;
}>;

/** The corrections of a sighting, the first one first. */
export function correctionsOf(scope: Scope, id: string): Promise<EarlierObservation[]> {
  return inWorkspace(scope, async (tx) => {
    const found = await rows<{ at: string; actor: string; reason: string; earlier: ObservationRow }>(
      tx,
      Prisma.sql`SELECT at, actor, reason, earlier FROM observation_correction
        WHERE observation_id = ${id}::uuid ORDER BY at, id`,
    );
    return found.map((correction) => ({ ...correction, earlier: observationOfRow(correction.earlier) }));
  });
}

async function setDeleted(scope: Scope, id: string, deleted: boolean): Promise<Written<Observation>> {
  return inWorkspace(scope, async (tx) => {
    const there = await storedObservation(tx, id);
    if (there === null) return NOT_THERE;
    if ((there.deletedAt !== null) === deleted) return repeated(there);
    await tx.observation.updateMany({ where: { id }, data: { deletedAt: deleted ? new Date() : null } });
    return accepted((await storedObservation(tx, id)) ?? there);
  });
}

/** Counts on no day from now on (R11); can be taken back. */
export function deleteObservation(scope: Scope, id: string): Promise<Written<Observation>> {
  return setDeleted(scope, id, true);
}

/** Takes a deletion back; the change log keeps both. Not there: no observation of this id. */
export function undeleteObservation(scope: Scope, id: string): Promise<Written<Observation>> {
  return setDeleted(scope, id, false);
}

/** Which part of a list: at most `limit`, after the thing `cursor` names. */
export type Page<T> = Readonly<{ items: readonly T[]; next: string | null }>;

/** A material's sightings, the newest first; `next` is the cursor of the following page. */
export function observationsOf(
  scope: Scope,
  materialId: string,
  {
    limit = 100,
    cursor = null,
    includeDeleted = false,
  }: { limit?: number; cursor?: string | null; includeDeleted?: boolean } = {},
): Promise<Page<StoredObservation>> {
  return inWorkspace(scope, async (tx) => {
    const live = includeDeleted ? Prisma.empty : Prisma.sql`AND o.deleted_at IS NULL`;
    const after =
      cursor === null
        ? Prisma.empty
        : Prisma.sql`AND (o.seen_on, o.sequence) <
            (SELECT c.seen_on, c.sequence FROM observation c WHERE c.id = ${cursor}::uuid)`;
    const found = await rows<StoredRow>(
      tx,
      Prisma.sql`${STORED} WHERE o.material_id = ${materialId}::uuid ${live} ${after}
        ORDER BY o.seen_on DESC, o.sequence DESC LIMIT ${limit + 1}`,
    );
    const items = found.slice(0, limit).map(storedOfRow);
    return { items, next: found.length > limit ? (items.at(-1)?.id ?? null) : null };
  });
}

/** historyOf inside a transaction. */
export async function historyWithin(tx: Tx, materialId: string, until: LocalDate): Promise<Observation[]> {
  const found = await manyRows(
    tx,
    OBSERVATION,
    Prisma.sql`FROM observation o WHERE o.material_id = ${materialId}::uuid AND o.deleted_at IS NULL AND o.seen_on <= ${until}::date
      ORDER BY o.seen_on, o.sequence`,
  );
  return found.map(observationOfRow);
}

/** Every live sighting of a material up to a day, the oldest first: for trends. */
export function historyOf(scope: Scope, materialId: string, until: LocalDate): Promise<Observation[]> {
  return inWorkspace(scope, (tx) => historyWithin(tx, materialId, until));
}
