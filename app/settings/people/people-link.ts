import { getTranslations } from "next-intl/server";
import { people } from "../../../lib/data/people.ts";
import { mayAsk } from "../../_gate/access.ts";
import { callerInside } from "../../_gate/caller.ts";
import type { ListedLink } from "../../_ui/links-list.tsx";

/** The way to the people, for who may go there. */
export async function peopleLink(): Promise<ListedLink[]> {
  const { role, asksSignIn } = await callerInside();
  const href = "/settings/people";
  if (!mayAsk(role, "GET", href)) return [];
  const t = await getTranslations("signIn.people");
  const text = t("text", { count: (await people()).length, asks: asksSignIn ? "true" : "false" });
  return [{ href, title: t("title"), text }];
}
