"use server";

import { redirect } from "next/navigation";
import { markReminder, undoReminderMark } from "../../lib/data/reminder-marks.ts";
import { markEntry } from "../../lib/reminders/reminder-entry.ts";
import { typed, typedOrNull } from "../_forms/typed.ts";
import { allowed } from "../_gate/allowed.ts";
import { isId } from "../_workspace/id-asked.ts";
import { scopeSeen } from "../_workspace/workspace-seen.ts";

/** A reminder is done, or put off until a day. */
export async function markReminderForm(form: FormData): Promise<void> {
  await allowed("markReminderForm");
  const id = typed(form, "id");
  const kind = typed(form, "kind");
  const until = kind === "snoozed" ? typedOrNull(form, "until") : null;
  const read = markEntry.safeParse({ key: typed(form, "key"), kind, until });
  if (!read.success || !isId(id)) redirect("/");
  const written = await markReminder(await scopeSeen(), id, read.data);
  redirect(written.ok ? `/?reminder=${read.data.kind}&mark=${id}#reminders` : "/");
}

async function undone(form: FormData, back: boolean): Promise<never> {
  const id = typed(form, "id");
  const written = isId(id) ? await undoReminderMark(await scopeSeen(), id, back) : null;
  if (written?.ok !== true) redirect("/");
  redirect(`/?reminder=${back ? "undone" : written.value.kind}&mark=${id}#reminders`);
}

/** Takes back what was done with a reminder. */
export async function undoReminderForm(form: FormData): Promise<void> {
  await allowed("undoReminderForm");
  await undone(form, true);
}

/** Does it again. */
export async function redoReminderForm(form: FormData): Promise<void> {
  await allowed("redoReminderForm");
  await undone(form, false);
}
