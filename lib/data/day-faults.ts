import "server-only";
import { type LocalDate, plusDays } from "../calendar/local-date.ts";
import { FIRST_DAY } from "../entry-fields.ts";
import type { Fault } from "../fault.ts";
import { fault } from "./written.ts";

/** The day of a fact must have come: one day ahead of the workspace is accepted (late evening, another zone), more is refused (R11). */
export function dayFaults(path: string, day: LocalDate, today: LocalDate): Fault[] {
  if (day < FIRST_DAY) return [fault(path, "day-too-early")];
  return day > plusDays(today, 1) ? [fault(path, "day-ahead")] : [];
}

/** A day ahead counts as today (R11), so that a figure of today knows the fact. */
export function countedDay(day: LocalDate, today: LocalDate): LocalDate {
  return day > today ? today : day;
}
