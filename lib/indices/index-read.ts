import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import { type Reading, read, refused, skipped } from "../files/reading.ts";

/** One value of an index as a file has it. month: the first day of the month it speaks of. preliminary null: the file does not say. */
export type IndexRead = Readonly<{
  series: string;
  month: LocalDate;
  value: Decimal;
  preliminary: boolean | null;
}>;

/** series: the one to take where a file has several. */
export type IndexAsked = Readonly<{ series: string | null }>;

const LARGEST = 1_000_000;

/** A figure as a value of the index asked for; errors: not-a-month, not-positive (nothing can be measured against it), too-large, too-many-places. */
export function indexRead(
  at: Readonly<{ row: number; column: string; text: string }>,
  value: IndexRead,
  { series }: IndexAsked,
): Reading<IndexRead> {
  if (series !== null && value.series !== series) return skipped(at, "not-asked-for");
  if (!value.month.endsWith("-01")) return refused(at, "not-a-month");
  if (!value.value.greaterThan(0)) return refused(at, "not-positive");
  if (value.value.greaterThan(LARGEST)) return refused(at, "too-large");
  if (value.value.decimalPlaces() > 12) return refused(at, "too-many-places");
  return read(at, value);
}
