import { type LocalDate, localDate } from "./local-date.ts";

/** Months counted from January of year 0. */
function monthOf(day: LocalDate): number {
  const [year = 0, month = 1] = day.split("-").map(Number);
  return year * 12 + month - 1;
}

function firstOf(month: number): LocalDate {
  const year = String(Math.floor(month / 12)).padStart(4, "0");
  return localDate(`${year}-${String((month % 12) + 1).padStart(2, "0")}-01`);
}

/**
 * First days of months after one day and before another: every month, or every so many that there are at most `most`;
 * counted back from the later day, so that the recent ones stay. The two days themselves are not among them.
 * Units: calendar months. Throws: {RangeError} when most is below 1.
 */
export function monthStartsBetween(from: LocalDate, until: LocalDate, most: number): LocalDate[] {
  if (most < 1) throw new RangeError("at least one month must be asked for");
  const all: LocalDate[] = [];
  for (let month = monthOf(until); month > monthOf(from); month -= 1) {
    const day = firstOf(month);
    if (day < until) all.push(day);
  }
  const every = Math.max(1, Math.ceil(all.length / most));
  return all.filter((_, index) => index % every === 0).reverse();
}
