"use server";

import { redirect } from "next/navigation";
import { pairing } from "../../../lib/data/one-time-codes.ts";
import { removePasskey as remove } from "../../../lib/data/people.ts";
import { revokeSession as revoke } from "../../../lib/data/sessions.ts";
import { typed } from "../../_forms/typed.ts";
import { allowed } from "../../_gate/allowed.ts";
import { callerInside } from "../../_gate/caller.ts";
import { shownCode } from "../make-shown-code.ts";
import type { ShownCode } from "../shown-code.ts";

/** A code that lets one more device in as whoever asks. */
export async function pairAPhone(): Promise<ShownCode | null> {
  await allowed("pairAPhone");
  const { person } = await callerInside();
  return person === null ? null : shownCode(await pairing(person.id), "/sign-in/pair");
}

/** Ends a session at once: an owner anybody's, anyone else their own. */
export async function revokeSession(form: FormData): Promise<void> {
  await allowed("revokeSession");
  const { role, person } = await callerInside();
  await revoke(
    typed(form, "sessionId") ?? "",
    role === "owner" || role === "here" ? null : (person?.id ?? ""),
  );
  redirect(typed(form, "back") === "people" ? "/settings/people" : "/sign-in/you");
}

/** Takes one of one's own passkeys away. */
export async function removePasskey(form: FormData): Promise<void> {
  await allowed("removePasskey");
  const { person } = await callerInside();
  if (person !== null) await remove(typed(form, "passkeyId") ?? "", person.id);
  redirect("/sign-in/you");
}
