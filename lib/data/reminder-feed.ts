import "server-only";
import { createHash, randomBytes } from "node:crypto";
import { findingWorkspaces, inWorkspace, type Scope } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { row } from "./rows.ts";
import { type Workspace, workspaceOf } from "./workspaces.ts";

// 256 bits of chance: nobody guesses it, so nothing slow is needed to keep it.
const BYTES = 32;
const TOKEN = /^[A-Za-z0-9_-]{43}$/;

function hashOf(token: string): string {
  return createHash("sha256").update(token).digest("hex");
}

/** Makes a new word for the calendar's address, in place of the one before, which opens nothing from now on. It is told only here. */
export function makeFeed(scope: Scope): Promise<string> {
  const token = randomBytes(BYTES).toString("base64url");
  const data = { feedHash: hashOf(token), feedMadeAt: new Date() };
  return inWorkspace(scope, async (tx) => {
    await tx.reminderSetting.upsert({
      where: { workspaceId: scope.workspaceId },
      create: data,
      update: data,
      select: { id: true },
    });
    return token;
  });
}

/** No calendar from now on. */
export async function revokeFeed(scope: Scope): Promise<void> {
  const none = { feedHash: null, feedMadeAt: null };
  await inWorkspace(scope, (tx) => tx.reminderSetting.updateMany({ data: none }));
}

/** When the calendar's address was made, ISO 8601; null: there is none. */
export function feedMadeAt(scope: Scope): Promise<string | null> {
  return inWorkspace(scope, async (tx) => {
    const stored = await row<{ at: string | null }>(
      tx,
      Prisma.sql`SELECT s.feed_made_at AS at FROM reminder_setting s`,
    );
    return stored?.at ?? null;
  });
}

/** The workspace whose calendar a word opens, or null. */
export async function workspaceOfFeed(token: string): Promise<Workspace | null> {
  if (!TOKEN.test(token)) return null;
  const feedHash = hashOf(token);
  const all = await findingWorkspaces((tx) => tx.workspace.findMany({ select: { id: true } }));
  for (const { id: workspaceId } of all) {
    const scope = { workspaceId, actor: "calendar", readOnly: true };
    const found = await inWorkspace(scope, (tx) => tx.reminderSetting.count({ where: { feedHash } }));
    if (found > 0) return workspaceOf(scope);
  }
  return null;
}
