"use server";

import { redirect } from "next/navigation";
import { demoWorkspace, discardWorkspace } from "../../lib/data/workspaces.ts";
import { allowed } from "../_gate/allowed.ts";
import { lookAtDemo, lookAtOwn } from "./cookie.ts";
import { demoThere, freshDemo } from "./demo.ts";

/** Looks at the demo, loading it first when there is none. */
export async function openDemo(): Promise<void> {
  await allowed("openDemo");
  await demoThere();
  await lookAtDemo();
  redirect("/");
}

/** The demo from its beginning, ending today; what was entered into the earlier one is gone. */
export async function beginDemoAnew(): Promise<void> {
  await allowed("beginDemoAnew");
  await freshDemo();
  await lookAtDemo();
  redirect("/settings?done=demo-anew");
}

/** Back to the owner's own workspace; the demo stays as it is. */
export async function leaveDemo(): Promise<void> {
  await allowed("leaveDemo");
  await lookAtOwn();
  redirect("/");
}

/** Throws the demo away, with everything entered into it, and goes back to the owner's own workspace. */
export async function discardDemo(): Promise<void> {
  await allowed("discardDemo");
  const demo = await demoWorkspace();
  if (demo !== null) await discardWorkspace(demo.id);
  await lookAtOwn();
  redirect("/settings?done=demo-discarded");
}
