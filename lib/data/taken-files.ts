import "server-only";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { row, rows } from "./rows.ts";

/** A file that was taken in. added: how many rates or values it added. takenAt, undoneAt: moments, ISO 8601. */
export type TakenFile = Readonly<{
  id: string;
  kind: "rates" | "index";
  name: string;
  source: string;
  indexId: string | null;
  added: number;
  takenAt: string;
  undoneAt: string | null;
}>;
/** A file as it is being taken in. */
export type TakingFile = Pick<TakenFile, "id" | "kind" | "name" | "source" | "indexId">;

const COLUMNS = Prisma.sql`f.id, f.kind, f.name, f.source, f.index_id AS "indexId", f.added, f.taken_at AS "takenAt",
  f.undone_at AS "undoneAt"`;

/** Holds for a row of exchange_rate or index_value that was not taken back with its file. */
export const STANDS = Prisma.sql`(taken_file_id IS NULL
  OR taken_file_id NOT IN (SELECT f.id FROM taken_file f WHERE f.undone_at IS NOT NULL))`;

/** The file of an id, or null. */
export function takenFileWithin(tx: Tx, id: string): Promise<TakenFile | null> {
  return row<TakenFile>(tx, Prisma.sql`SELECT ${COLUMNS} FROM taken_file f WHERE f.id = ${id}::uuid`);
}

/** Notes a file before what it adds is written; `added` is known from its fates. */
export async function noteTakenFile(tx: Tx, file: TakingFile, added: number): Promise<void> {
  await tx.takenFile.create({ data: { ...file, added }, select: { id: true } });
}

/** The files taken in, the newest first. */
export function takenFiles(scope: Scope, kind: TakenFile["kind"], limit = 20): Promise<TakenFile[]> {
  return inWorkspace(scope, (tx) =>
    rows<TakenFile>(
      tx,
      Prisma.sql`SELECT ${COLUMNS} FROM taken_file f WHERE f.kind = ${kind} ORDER BY f.taken_at DESC LIMIT ${limit}`,
    ),
  );
}

/** Takes back all that a file added, or brings it back, as one. False: there is no such file. */
export function setFileUndone(scope: Scope, id: string, undone: boolean): Promise<boolean> {
  return inWorkspace(scope, async (tx) => {
    const { count } = await tx.takenFile.updateMany({
      where: { id },
      data: { undoneAt: undone ? new Date() : null },
    });
    return count > 0;
  });
}
