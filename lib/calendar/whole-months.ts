import type { LocalDate } from "./local-date.ts";

/** Whole calendar months from one day to a later one: a month is full when its day of the month is reached. Rounds: down; never below 0. */
export function wholeMonths(from: LocalDate, to: LocalDate): number {
  const [fromYear = 0, fromMonth = 0, fromDay = 0] = from.split("-").map(Number);
  const [toYear = 0, toMonth = 0, toDay = 0] = to.split("-").map(Number);
  return Math.max(0, (toYear - fromYear) * 12 + toMonth - fromMonth - (toDay < fromDay ? 1 : 0));
}
