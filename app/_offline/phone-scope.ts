import "server-only";
import type { Scope } from "../../lib/data/client.ts";
import { demoWorkspace, ownerWorkspace, type Workspace } from "../../lib/data/workspaces.ts";
import { callerInside } from "../_gate/caller.ts";
import { scopeSeen, workspaceSeen } from "../_workspace/workspace-seen.ts";

/**
 * The workspace a phone means: the one it names, because what was logged while looking at one never goes into the other; the
 * one this browser looks at when it names none. null: it is not there (a demo thrown away since), or not for whom is asking.
 */
export async function phoneWorkspace(
  named: string | undefined,
): Promise<Readonly<{ workspace: Workspace; scope: Scope }> | null> {
  const seen = await workspaceSeen();
  const scope = await scopeSeen();
  const { role } = await callerInside();
  const known = named === undefined || named === seen.id ? seen : await otherOf(named);
  if (known === null || (role === "demo" && known.kind !== "demo")) return null;
  return { workspace: known, scope: { ...scope, workspaceId: known.id } };
}

async function otherOf(id: string): Promise<Workspace | null> {
  const owner = await ownerWorkspace();
  if (owner.id === id) return owner;
  const demo = await demoWorkspace();
  return demo?.id === id ? demo : null;
}
