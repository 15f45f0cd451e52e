"use server";

import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { join, pair } from "../../lib/data/people.ts";
import { personEntry } from "../../lib/data/person-entry.ts";
import { revokeSession } from "../../lib/data/sessions.ts";
import { enter } from "../../lib/data/sign-in.ts";
import type { Written } from "../../lib/fault.ts";
import { answer, refused, writeChecked } from "../_forms/answer.ts";
import { fieldNames } from "../_forms/field-names.ts";
import { allowed, heldBack } from "../_gate/allowed.ts";
import { caller } from "../_gate/caller.ts";
import type { Caller } from "../_gate/caller-of.ts";
import type { FormState } from "../_ui/form-state.ts";
import { deviceOf, dropSession, keepCookies, keepSession } from "./session-cookies.ts";
import { wayBack } from "./way-back.ts";

async function names() {
  const t = await getTranslations("signIn");
  return fieldNames({ name: t("name"), password: t("password"), code: t("code") });
}

/** What was typed, untrimmed: a password may begin with a space. */
const raw = (form: FormData, name: string) => {
  const value = form.get(name);
  return typeof value === "string" ? value : "";
};

async function whoAsks(): Promise<Caller> {
  const who = await caller();
  if (who === null) redirect("/sign-in");
  return who;
}

/** In by name and password. */
export async function enterForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("enterForm", previous, form);
  if (held !== null) return held;
  const write = async (): Promise<Written<null>> => {
    const who = await whoAsks();
    const entered = await enter(
      who.from.origin,
      await deviceOf(who),
      raw(form, "name"),
      raw(form, "password"),
    );
    if (!entered.ok) {
      const code = entered.why === "too-many" ? "too-many-tries" : "wrong-name-or-password";
      return refused({ path: "name", code });
    }
    await keepCookies(entered.cookies, who);
    return { ok: true, value: null, repeated: false };
  };
  return answer(previous, form, await names(), write, () => wayBack(raw(form, "to")));
}

// A place open to every role: where "/" is not, a redirect within a redirect would leave the wrong address in the bar.
const LANDING = "/sign-in/you";

async function joinBy(kind: "first" | "invite", previous: FormState, form: FormData) {
  const input = { code: raw(form, "code"), name: raw(form, "name"), password: raw(form, "password") };
  const write = () =>
    writeChecked(personEntry, input, async (entry) => {
      const who = await whoAsks();
      const joined = await join(kind, await deviceOf(who), entry);
      if (joined.ok) await keepSession(joined.value, who);
      return joined;
    });
  return answer(previous, form, await names(), write, () => LANDING);
}

/** The first owner, by the code on the terminal. */
export async function firstForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("firstForm", previous, form);
  return held ?? joinBy("first", previous, form);
}

/** Somebody invited. */
export async function joinForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("joinForm", previous, form);
  return held ?? joinBy("invite", previous, form);
}

/** One more device of somebody. */
export async function pairForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("pairForm", previous, form);
  if (held !== null) return held;
  const write = async () => {
    const who = await whoAsks();
    const paired = await pair(await deviceOf(who), raw(form, "code"));
    if (paired.ok) await keepSession(paired.value, who);
    return paired;
  };
  return answer(previous, form, await names(), write, () => LANDING);
}

/** Out: this session is over, not only forgotten. */
export async function signOut(): Promise<void> {
  await allowed("signOut");
  const who = await caller();
  if (who?.person != null) await revokeSession(who.person.sessionId, who.person.id);
  await dropSession();
  redirect("/sign-in");
}
