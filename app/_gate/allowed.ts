import "server-only";
import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { isDatabaseDown } from "../_forms/database-down.ts";
import { valuesOf } from "../_forms/values-of.ts";
import type { FormState } from "../_ui/form-state.ts";
import { mayDo } from "./access.ts";
import type { ActionName } from "./actions-table.ts";
import { caller } from "./caller.ts";

/** The first line of every server action without a form's answer: goes no further for whom the table does not let. */
export async function allowed(action: ActionName): Promise<void> {
  const who = await caller();
  if (who !== null && mayDo(who.role, action)) return;
  redirect(who === null || who.role === "nobody" ? "/sign-in" : "/sign-in/not-yours");
}

/**
 * The first line of every form's action: null where the table lets, else the form again with what was typed, so that it
 * can be sent once more after signing in in another tab, or when the database is there again.
 */
export async function heldBack(
  action: ActionName,
  previous: FormState,
  form: FormData,
): Promise<FormState | null> {
  const held = (trouble: string): FormState => ({
    values: valuesOf(form),
    faults: [],
    trouble,
    attempt: previous.attempt + 1,
  });
  try {
    const who = await caller();
    if (who !== null && mayDo(who.role, action)) return null;
    const t = await getTranslations("signIn");
    return held(who === null || who.role === "nobody" ? t("signedOut") : t("notYours"));
  } catch (error) {
    if (isDatabaseDown(error)) return held((await getTranslations("ui"))("databaseDown"));
    throw error;
  }
}
