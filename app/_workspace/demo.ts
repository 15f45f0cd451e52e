import "server-only";
import { todayIn } from "../../lib/calendar/local-date.ts";
import { demoWorkspace } from "../../lib/data/workspaces.ts";
import { loadDemo } from "../../prisma/demo/load.ts";
import { DEMO_SETTINGS } from "../../prisma/demo/settings.ts";

let loading: Promise<unknown> | null = null;

/** Loads the demo, ending today, in place of an earlier one. Asked again while it loads, it is the same loading. */
export async function freshDemo(): Promise<void> {
  loading ??= loadDemo(todayIn(DEMO_SETTINGS.timeZone ?? "UTC", new Date())).finally(() => {
    loading = null;
  });
  await loading;
}

/** The demo as it stands; loaded first when there is none. */
export async function demoThere(): Promise<void> {
  if (loading !== null || (await demoWorkspace()) === null) await freshDemo();
}
