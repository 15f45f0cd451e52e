"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { makeFeed, revokeFeed } from "../../../lib/data/reminder-feed.ts";
import { changeReminderSetting, reminderWishes } from "../../../lib/data/reminder-wishes.ts";
import { reminderSettingEntry } from "../../../lib/reminders/reminder-entry.ts";
import { answer, writeChecked } from "../../_forms/answer.ts";
import { fieldNames } from "../../_forms/field-names.ts";
import { typed } from "../../_forms/typed.ts";
import { allowed, heldBack } from "../../_gate/allowed.ts";
import type { FormState } from "../../_ui/form-state.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";
import { addressElsewhere } from "../../sign-in/make-shown-code.ts";
import { qrPath } from "../../sign-in/qr-path.ts";
import type { ShownAddress } from "./shown-address.ts";

/** Changes how long before an offer lapses it is reminded of. */
export async function saveReminders(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("saveReminders", previous, form);
  if (held !== null) return held;
  const t = await getTranslations("reminders.settings");
  return answer(
    previous,
    form,
    fieldNames({ lapseDays: t("lapseDays") }),
    () =>
      writeChecked(reminderSettingEntry, { lapseDays: typed(form, "lapseDays") ?? "" }, async (entry) =>
        changeReminderSetting(await scopeSeen(), entry),
      ),
    () => "/settings/reminders?done=saved",
    { now: async () => (await reminderWishes(await scopeSeen())).lapseDays },
  );
}

/** Makes a calendar's address, and voids the one before. It is told only in this answer. */
export async function makeFeedForm(
  _previous: ShownAddress | null,
  _form: FormData,
): Promise<ShownAddress | null> {
  await allowed("makeFeedForm");
  const address = `${await addressElsewhere()}/calendar/${await makeFeed(await scopeSeen())}.ics`;
  revalidatePath("/settings/reminders");
  return { address, ...qrPath(address) };
}

/** Voids the calendar's address. */
export async function revokeFeedForm(): Promise<void> {
  await allowed("revokeFeedForm");
  await revokeFeed(await scopeSeen());
  redirect("/settings/reminders?done=revoked");
}
