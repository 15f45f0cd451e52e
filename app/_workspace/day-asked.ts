import { isLocalDate, type LocalDate } from "../../lib/calendar/local-date.ts";
import { today } from "./workspace-seen.ts";

/** The query of a page, as Next gives it. */
export type Query = Promise<Readonly<Record<string, string | string[] | undefined>>>;

/** One value of the query; of several the first; undefined when empty or not there. */
export async function asked(query: Query, name: string): Promise<string | undefined> {
  const value = (await query)[name];
  const first = Array.isArray(value) ? value[0] : value;
  return first === "" ? undefined : first;
}

/** The day a page is asked for (?asOf=), today when none is given, when it is no day, or when it is still to come. */
export async function dayAsked(query: Query): Promise<Readonly<{ day: LocalDate; today: LocalDate }>> {
  const now = await today();
  const day = await asked(query, "asOf");
  return { day: isLocalDate(day) && day <= now ? day : now, today: now };
}
