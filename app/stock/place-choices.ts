import { getTranslations } from "next-intl/server";
import type { Scope } from "../../lib/data/client.ts";
import { placesOf } from "../../lib/data/places.ts";
import { NOWHERE } from "../../lib/show/stock-filter.ts";
import type { Choice } from "../_ui/choice-field.client.tsx";

/** Places by name for a list: `choices` to narrow it by, `live` to put something in, `name` of any of them. */
export type Places = Readonly<{
  choices: readonly Choice[];
  live: readonly Choice[];
  name: (id: string) => string;
}>;

/** Every place of the workspace; what lies in an archived one is still found. */
export async function allPlaces(scope: Scope): Promise<Places> {
  const t = await getTranslations("lotLife");
  const [live, archived] = await Promise.all([placesOf(scope), placesOf(scope, { archived: true })]);
  const choice = ({ id, name }: (typeof live)[number]): Choice => ({ value: id, label: name });
  const names = new Map([...live, ...archived].map(({ id, name }) => [id, name]));
  return {
    choices: [...live.map(choice), { value: NOWHERE, label: t("notPutAway") }, ...archived.map(choice)],
    live: live.map(choice),
    name: (id) => names.get(id) ?? "–",
  };
}
