import { getTranslations } from "next-intl/server";
import { mayAsk } from "../_gate/access.ts";
import { caller } from "../_gate/caller.ts";
import { type Place, placesOf } from "./places.ts";

/** The screens whoever asks may go to, with their own sign-in. When nobody can say who asks, all: each says itself. */
export async function placesOpen(): Promise<Place[]> {
  const all = placesOf(await getTranslations("shell"));
  const who = await caller().catch(() => null);
  if (who === null) return all;
  const open = all.filter(({ href }) => mayAsk(who.role, "GET", href));
  if (who.person === null) return open;
  const label = (await getTranslations("signIn"))("you");
  return [...open, { href: "/sign-in/you", label, bar: false, main: false }];
}
