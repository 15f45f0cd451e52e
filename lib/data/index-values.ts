import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Reading } from "../files/reading.ts";
import { type IndexFated, indexFates } from "../indices/index-fates.ts";
import type { IndexRead } from "../indices/index-read.ts";
import type { IndexValue } from "../indices/index-value.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { countedDay } from "./day-faults.ts";
import { Prisma } from "./generated/client.ts";
import { digits, rows, storedDay, storedDecimal } from "./rows.ts";
import { noteTakenFile, STANDS, takenFileWithin } from "./taken-files.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";

type ValueRow = Readonly<{ month: string; published_on: string; value: string; preliminary: boolean | null }>;

/** Every value of an index, revisions too: by month, then by the day published. */
export async function indexValuesWithin(tx: Tx, indexId: string): Promise<IndexValue[]> {
  const found = await rows<ValueRow>(
    tx,
    Prisma.sql`SELECT month, published_on, value::text, preliminary FROM index_value
      WHERE index_id = ${indexId}::uuid AND ${STANDS} ORDER BY month, published_on`,
  );
  return found.map(({ month, published_on, value, preliminary }) => ({
    month: storedDay(month),
    publishedOn: storedDay(published_on),
    value: storedDecimal(value),
    preliminary,
  }));
}

/** Every value of an index, revisions too. */
export function indexValues(scope: Scope, indexId: string): Promise<IndexValue[]> {
  return inWorkspace(scope, (tx) => indexValuesWithin(tx, indexId));
}

// A value that was taken back with its file makes room; one that stands is never rewritten (the database refuses it).
async function insertValues(
  tx: Tx,
  indexId: string,
  values: readonly IndexValue[],
  takenFileId: string,
): Promise<void> {
  await tx.$executeRaw`INSERT INTO index_value (index_id, month, published_on, value, preliminary, taken_file_id)
    SELECT ${indexId}::uuid, g.month, g.published_on, g.value, g.preliminary, ${takenFileId}::uuid
    FROM unnest(${values.map(({ month }) => month)}::text[]::date[],
      ${values.map(({ publishedOn }) => publishedOn)}::text[]::date[],
      ${values.map(({ value }) => digits(value))}::text[]::numeric[],
      ${values.map(({ preliminary }) => (preliminary === null ? null : String(preliminary)))}::text[]::boolean[])
      AS g(month, published_on, value, preliminary)
    ON CONFLICT (workspace_id, index_id, month, published_on) DO UPDATE
      SET value = EXCLUDED.value, preliminary = EXCLUDED.preliminary, taken_file_id = EXCLUDED.taken_file_id`;
}

/** A file of an index's values, read. publishedOn: the day they were published; ahead of today it counts as today. */
export type ValuesToTake = Readonly<{
  name: string;
  source: string;
  publishedOn: LocalDate;
  readings: readonly Reading<IndexRead>[];
}>;

type Fated = Readonly<{ publishedOn: LocalDate; fates: IndexFated[] }>;

async function fatesWithin(tx: Tx, indexId: string, file: ValuesToTake): Promise<Fated> {
  const today = todayOf(await workspaceWithin(tx));
  const publishedOn = countedDay(file.publishedOn, today);
  const stored = await indexValuesWithin(tx, indexId);
  return { publishedOn, fates: indexFates(file.readings, stored, publishedOn) };
}

/** What taking a file in would do, row by row; nothing is written. */
export function valuesFated(scope: Scope, indexId: string, file: ValuesToTake): Promise<IndexFated[]> {
  return inWorkspace(scope, async (tx) => (await fatesWithin(tx, indexId, file)).fates);
}

/** How many values were added: months not known before, and revisions of known ones. */
export type ValuesTaken = Readonly<{ added: number; fates: readonly IndexFated[] }>;

/**
 * Takes a file in: new months and revisions are added with their day of publication, nothing there is changed, all in one
 * transaction. The same id again, and the same file again, add nothing.
 */
export function takeIndexValues(
  scope: Scope,
  id: string,
  indexId: string,
  file: ValuesToTake,
): Promise<ValuesTaken> {
  return inWorkspace(scope, async (tx) => {
    await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtext(${`index ${indexId}`}))`;
    const { publishedOn, fates } = await fatesWithin(tx, indexId, file);
    const values = fates.flatMap(({ reading, fate }): IndexValue[] =>
      (fate === "new" || fate === "revision") && reading.fate === "accepted"
        ? [{ ...reading.value, publishedOn }]
        : [],
    );
    if (values.length === 0 || (await takenFileWithin(tx, id)) !== null) return { added: 0, fates };
    await noteTakenFile(
      tx,
      { id, kind: "index", name: file.name, source: file.source, indexId },
      values.length,
    );
    await insertValues(tx, indexId, values, id);
    return { added: values.length, fates };
  });
}
