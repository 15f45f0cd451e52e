"use server";

import { redirect } from "next/navigation";
import { demoWorkspace, discardWorkspace, makeDemoWorkspace } from "../../lib/data/workspaces.ts";
import { lookAtDemo, lookAtOwn } from "./cookie.ts";

/** Looks at the demo, making it first when there is none. */
export async function openDemo(): Promise<void> {
  if ((await demoWorkspace()) === null) await makeDemoWorkspace();
  await lookAtDemo();
  redirect("/");
}

/** Back to the owner's own workspace; the demo stays as it is. */
export async function leaveDemo(): Promise<void> {
  await lookAtOwn();
  redirect("/");
}

/** Throws the demo away, with everything entered into it, and goes back to the owner's own workspace. */
export async function discardDemo(): Promise<void> {
  const demo = await demoWorkspace();
  if (demo !== null) await discardWorkspace(demo.id);
  await lookAtOwn();
  redirect("/settings?done=demo-discarded");
}
