import "server-only";
import { redirect } from "next/navigation";
import { cache } from "react";
import { type LocalDate, todayIn } from "../../lib/calendar/local-date.ts";
import type { Scope } from "../../lib/data/client.ts";
import { demoWorkspace, ownerWorkspace, type Workspace } from "../../lib/data/workspaces.ts";
import { callerInside } from "../_gate/caller.ts";
import { looksAtDemo } from "./cookie.ts";

/**
 * The workspace this browser is looking at: the demo when chosen and still there, else the owner's. Once per request. Nobody
 * is sent to sign in, and so is who may see the demo alone when there is none.
 */
export const workspaceSeen = cache(async (): Promise<Workspace> => {
  const { role } = await callerInside();
  const demo = (await looksAtDemo()) ? await demoWorkspace() : null;
  if (demo === null && role === "demo") redirect("/sign-in");
  return demo ?? (await ownerWorkspace());
});

/** The scope every lib/data call of a screen takes: a reader's refuses every write in the database itself. */
export async function scopeSeen(): Promise<Scope> {
  const { role, person } = await callerInside();
  const workspace = await workspaceSeen();
  return { workspaceId: workspace.id, actor: person?.name ?? "owner", readOnly: role === "reader" };
}

/** Today in the workspace's time zone. */
export async function today(): Promise<LocalDate> {
  return todayIn((await workspaceSeen()).timeZone, new Date());
}

/** Whether the demo is what is being looked at. When the database cannot say, what the browser chose counts. */
export async function seesDemo(): Promise<boolean> {
  if (!(await looksAtDemo())) return false;
  return workspaceSeen().then(
    (workspace) => workspace.kind === "demo",
    () => true,
  );
}
