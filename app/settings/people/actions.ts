"use server";

import { redirect } from "next/navigation";
import { invite } from "../../../lib/data/one-time-codes.ts";
import { changeRole, hasOwner, removePerson } from "../../../lib/data/people.ts";
import { roleEntry } from "../../../lib/data/person-entry.ts";
import { askForSignIn as ask } from "../../../lib/data/sessions.ts";
import { typed } from "../../_forms/typed.ts";
import { allowed } from "../../_gate/allowed.ts";
import { shownCode } from "../../sign-in/make-shown-code.ts";
import type { ShownCode } from "../../sign-in/shown-code.ts";

/** Asks for sign-in on this computer too, or no longer. Not before somebody could come in. */
export async function askForSignIn(form: FormData): Promise<void> {
  await allowed("askForSignIn");
  const asks = typed(form, "asks") === "yes";
  if (!asks || (await hasOwner())) await ask(asks);
  redirect("/settings/people");
}

/** A code for somebody new, with the role chosen. */
export async function inviteForm(_previous: ShownCode | null, form: FormData): Promise<ShownCode | null> {
  await allowed("inviteForm");
  const read = roleEntry.safeParse({ role: typed(form, "role") });
  return read.success ? shownCode(await invite(read.data.role), "/sign-in/join") : null;
}

/** Gives somebody another role. */
export async function changeRoleForm(form: FormData): Promise<void> {
  await allowed("changeRoleForm");
  const read = roleEntry.safeParse({ role: typed(form, "role") });
  const changed = read.success ? await changeRole(typed(form, "personId") ?? "", read.data.role) : null;
  redirect(`/settings/people?done=${changed?.ok ? "changed" : "lastOwner"}`);
}

/** Takes somebody out. */
export async function removePersonForm(form: FormData): Promise<void> {
  await allowed("removePersonForm");
  const removed = await removePerson(typed(form, "personId") ?? "");
  redirect(`/settings/people?done=${removed.ok || removed.why === "not-there" ? "gone" : "lastOwner"}`);
}
