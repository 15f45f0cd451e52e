import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";

/** An index somebody publishes: its series' name there, what stands at 100, and who publishes it. */
export type ReferenceIndex = Readonly<{
  id: string;
  name: string;
  series: string;
  publisher: string;
  base: string | null;
}>;

/** One value of an index as it was published once. preliminary null: not said. */
export type IndexValue = Readonly<{
  /** The first day of the month it speaks of. */
  month: LocalDate;
  /** The day it was published; where nobody said, the day it was taken in. */
  publishedOn: LocalDate;
  value: Decimal;
  preliminary: boolean | null;
}>;

/**
 * The values of an index as they were known at the end of a day (R11): of each month the one published last, on or before
 * it. Oldest month first. Units: the index's own. Rounds: never.
 */
export function valuesAsOf(values: readonly IndexValue[], day: LocalDate): IndexValue[] {
  const known = new Map<LocalDate, IndexValue>();
  for (const value of values) {
    if (value.publishedOn > day) continue;
    const other = known.get(value.month);
    if (other === undefined || other.publishedOn < value.publishedOn) known.set(value.month, value);
  }
  return [...known.values()].sort((a, b) => (a.month < b.month ? -1 : 1));
}

/** Whether a value says something that another does not: another figure, or final where the other was preliminary. */
export function differs(
  one: Pick<IndexValue, "value" | "preliminary">,
  other: Pick<IndexValue, "value" | "preliminary">,
): boolean {
  if (!one.value.equals(other.value)) return true;
  return one.preliminary !== null && other.preliminary !== null && one.preliminary !== other.preliminary;
}
