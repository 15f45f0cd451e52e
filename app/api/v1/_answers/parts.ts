import { idQuery } from "./page.ts";

/** The parts of a path as Next gives them. */
export type Parts = Readonly<Record<string, string | string[] | undefined>>;

/** The ids of a path ({id}, {eventId}) in small letters, or null when one of them is no id: then there is nothing under it. */
export function idsOf(parts: Parts): ReadonlyMap<string, string> | null {
  const ids = new Map<string, string>();
  for (const [name, given] of Object.entries(parts)) {
    if (!/(^id|Id)$/.test(name)) continue;
    const read = idQuery.safeParse(given);
    if (!read.success) return null;
    ids.set(name, read.data);
  }
  return ids;
}
