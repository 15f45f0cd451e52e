import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { dateOf, row, rows, storedDay } from "./rows.ts";

/**
 * One mail of a day. sending: claimed, and not heard of since (while it is on its way, or because the program ended just then);
 * failed: refused or not reached, trouble says why. at: the moment of that, ISO 8601.
 */
export type Digest = Readonly<{
  day: LocalDate;
  state: "sending" | "sent" | "failed";
  trouble: string | null;
  at: string;
}>;
type DigestRow = Omit<Digest, "day"> & Readonly<{ day: string }>;

const DIGEST = Prisma.sql`SELECT d.day, d.state, d.trouble, d.at FROM reminder_digest d`;
const LONGEST_TROUBLE = 300;

/** The newest mail, or null. */
export function lastDigest(scope: Scope): Promise<Digest | null> {
  return inWorkspace(scope, async (tx) => {
    const found = await row<DigestRow>(tx, Prisma.sql`${DIGEST} ORDER BY d.day DESC LIMIT 1`);
    return found === null ? null : { ...found, day: storedDay(found.day) };
  });
}

async function mailedWithin(tx: Tx): Promise<ReadonlySet<string>> {
  const found = await rows<{ key: string }>(
    tx,
    Prisma.sql`SELECT DISTINCT k.key FROM reminder_digest d, unnest(d.keys) AS k (key) WHERE d.state <> 'failed'`,
  );
  return new Set(found.map(({ key }) => key));
}

/**
 * Takes the mail of a day, with what of these reminders no mail has said yet. The answer is those keys; empty: nothing is to be
 * sent, because nothing is new or the day has had its mail. It is written down before anything is sent: whatever happens then,
 * nothing is sent twice. One that failed is taken again.
 */
export function claimDigest(scope: Scope, day: LocalDate, keys: readonly string[]): Promise<string[]> {
  return inWorkspace(scope, async (tx) => {
    await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtext(${`digest ${scope.workspaceId}`}))`;
    const there = await row<DigestRow>(tx, Prisma.sql`${DIGEST} WHERE d.day = ${dateOf(day)}::date`);
    if (there !== null && there.state !== "failed") return [];
    const mailed = await mailedWithin(tx);
    const fresh = keys.filter((key) => !mailed.has(key));
    if (fresh.length === 0) return [];
    const data = { keys: fresh, state: "sending", trouble: null, at: new Date() };
    const where = { workspaceId_day: { workspaceId: scope.workspaceId, day: dateOf(day) } };
    const create = { ...data, day: dateOf(day) };
    await tx.reminderDigest.upsert({ where, create, update: data, select: { id: true } });
    return fresh;
  });
}

/** Says how the claimed mail of a day ended. trouble: why it could not be sent; null: it was. */
export async function settleDigest(scope: Scope, day: LocalDate, trouble: string | null): Promise<void> {
  const state = trouble === null ? "sent" : "failed";
  const data = { state, trouble: trouble?.slice(0, LONGEST_TROUBLE) ?? null, at: new Date() };
  await inWorkspace(scope, (tx) =>
    tx.reminderDigest.updateMany({ where: { day: dateOf(day), state: "sending" }, data }),
  );
}
