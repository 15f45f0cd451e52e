import "server-only";
import { cache } from "react";
import { type LocalDate, todayIn } from "../../lib/calendar/local-date.ts";
import type { Scope } from "../../lib/data/client.ts";
import { demoWorkspace, ownerWorkspace, type Workspace } from "../../lib/data/workspaces.ts";
import { looksAtDemo } from "./cookie.ts";

/** The workspace this browser is looking at: the demo when chosen and still there, else the owner's. Once per request. */
export const workspaceSeen = cache(async (): Promise<Workspace> => {
  const demo = (await looksAtDemo()) ? await demoWorkspace() : null;
  return demo ?? (await ownerWorkspace());
});

/** The scope every lib/data call of a screen takes. */
export async function scopeSeen(): Promise<Scope> {
  const workspace = await workspaceSeen();
  return { workspaceId: workspace.id, actor: "owner" };
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
