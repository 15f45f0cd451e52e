import type { LocalDate } from "../calendar/local-date.ts";
import type { Reading } from "../files/reading.ts";
import type { IndexRead } from "./index-read.ts";
import { differs, type IndexValue, valuesAsOf } from "./index-value.ts";

/** What taking in a value does: a month not known yet, a revision of one that is, nothing, or it contradicts one of the same day. */
export type IndexFate = "new" | "revision" | "same" | "conflict";
export type IndexFated = Readonly<{
  reading: Reading<IndexRead>;
  fate: IndexFate | "skipped" | "refused";
  /** The value a revision or a conflict stands against. */
  known: IndexValue | null;
}>;

/**
 * The fate of every reading of a file published on a day, against the values there are: compared with what was known of its
 * month at the end of that day. The first of two rows of one month counts. Order: as in the file.
 */
export function indexFates(
  readings: readonly Reading<IndexRead>[],
  stored: readonly IndexValue[],
  publishedOn: LocalDate,
): IndexFated[] {
  const known = new Map(valuesAsOf(stored, publishedOn).map((value) => [value.month, value]));
  return readings.map((reading): IndexFated => {
    if (reading.fate !== "accepted") return { reading, fate: reading.fate, known: null };
    const { month, value, preliminary } = reading.value;
    const there = known.get(month) ?? null;
    if (there !== null && !differs({ value, preliminary }, there))
      return { reading, fate: "same", known: there };
    if (there?.publishedOn === publishedOn) return { reading, fate: "conflict", known: there };
    known.set(month, { month, publishedOn, value, preliminary });
    return { reading, fate: there === null ? "new" : "revision", known: there };
  });
}
