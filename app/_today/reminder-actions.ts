"use server";

import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { markReminder, undoReminderMark } from "../../lib/data/reminder-marks.ts";
import { markEntry } from "../../lib/reminders/reminder-entry.ts";
import { answer, writeChecked } from "../_forms/answer.ts";
import { fieldNames } from "../_forms/field-names.ts";
import { typed, typedOrNull } from "../_forms/typed.ts";
import { allowed, heldBack } from "../_gate/allowed.ts";
import type { FormState } from "../_ui/form-state.ts";
import { isId } from "../_workspace/id-asked.ts";
import { scopeSeen } from "../_workspace/workspace-seen.ts";

/** A reminder is done, or put off until a day. */
export async function markReminderForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("markReminderForm", previous, form);
  if (held !== null) return held;
  const t = await getTranslations("reminders");
  const kind = typed(form, "kind");
  const until = kind === "snoozed" ? typedOrNull(form, "until") : null;
  return answer(
    previous,
    form,
    fieldNames({ until: t("until") }),
    () =>
      writeChecked(markEntry, { key: typed(form, "key"), kind, until }, async (entry) =>
        markReminder(await scopeSeen(), typed(form, "id") ?? "", entry),
      ),
    (mark) => `/?reminder=${mark.kind}&mark=${mark.id}#reminders`,
  );
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
