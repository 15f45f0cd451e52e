import type { LocalDate } from "./local-date.ts";

/**
 * The newest of dated facts on or before a day, or null.
 * Ties (two facts of one day): the one standing later in the list. Source: rule R11.
 */
export function latestOnOrBefore<T>(
  facts: readonly T[],
  day: LocalDate,
  dayOf: (fact: T) => LocalDate,
): T | null {
  let latest: T | null = null;
  for (const fact of facts) {
    const on = dayOf(fact);
    if (on <= day && (latest === null || on >= dayOf(latest))) latest = fact;
  }
  return latest;
}
