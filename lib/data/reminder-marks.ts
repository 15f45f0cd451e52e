import "server-only";
import type { Written } from "../fault.ts";
import type { ReminderMark } from "../reminders/marks.ts";
import type { MarkEntry } from "../reminders/reminder-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import { Prisma } from "./generated/client.ts";
import { dateOrNull, dayOrNull, rows } from "./rows.ts";
import { accepted, NOT_THERE, repeated } from "./written.ts";

type MarkRow = Readonly<{
  id: string;
  key: string;
  kind: ReminderMark["kind"];
  until: string | null;
  at: string;
  undone_at: string | null;
}>;
/** A mark as it is kept; undoneAt says when it was undone, or another was made in its place. */
export type StoredMark = ReminderMark & Readonly<{ undoneAt: string | null }>;

async function marksWithin(tx: Tx, only: Prisma.Sql): Promise<StoredMark[]> {
  const found = await rows<MarkRow>(
    tx,
    Prisma.sql`SELECT m.id, m.key, m.kind, m.until, m.made_at AS at, m.undone_at FROM reminder_mark m
      WHERE ${only} ORDER BY m.sequence`,
  );
  return found.map(({ until, undone_at: undoneAt, ...mark }) => ({
    ...mark,
    until: dayOrNull(until),
    undoneAt,
  }));
}

async function markWithin(tx: Tx, id: string): Promise<StoredMark | null> {
  return (await marksWithin(tx, Prisma.sql`m.id = ${id}::uuid`))[0] ?? null;
}

/** What was done with reminders and not undone; one for each. */
export function reminderMarks(scope: Scope): Promise<ReminderMark[]> {
  return inWorkspace(scope, (tx) => marksWithin(tx, Prisma.sql`m.undone_at IS NULL`));
}

// Two presses at once: the second waits, and then takes the place of the first.
async function inItsPlace(tx: Tx, key: string): Promise<void> {
  await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtext(${`reminder ${key}`}))`;
  await tx.reminderMark.updateMany({ where: { key, undoneAt: null }, data: { undoneAt: new Date() } });
}

/** A reminder done, or put off; in place of what was done with it before. Sent twice it is kept once. */
export function markReminder(scope: Scope, id: string, entry: MarkEntry): Promise<Written<StoredMark>> {
  const hash = entryHash(entry);
  return inWorkspace(scope, (tx) =>
    createdOnce(
      tx,
      { table: "reminder_mark", id, hash, stored: () => markWithin(tx, id) },
      async (): Promise<Written<StoredMark>> => {
        const { key, kind } = entry;
        await inItsPlace(tx, key);
        const until = kind === "snoozed" ? dateOrNull(entry.until) : null;
        await tx.reminderMark.create({
          data: { id, key, kind, until, entryHash: hash },
          select: { id: true },
        });
        const stored = await markWithin(tx, id);
        return stored === null ? NOT_THERE : accepted(stored);
      },
    ),
  );
}

/** Takes back what was done with a reminder, or does it again. Not there: no mark of this id. */
export function undoReminderMark(scope: Scope, id: string, undone: boolean): Promise<Written<StoredMark>> {
  return inWorkspace(scope, async (tx) => {
    const there = await markWithin(tx, id);
    if (there === null) return NOT_THERE;
    if ((there.undoneAt !== null) === undone) return repeated(there);
    if (!undone) await inItsPlace(tx, there.key);
    await tx.reminderMark.updateMany({ where: { id }, data: { undoneAt: undone ? new Date() : null } });
    const now = await markWithin(tx, id);
    return now === null ? NOT_THERE : accepted(now);
  });
}
