import { type LocalDate, plusDays } from "../../../../lib/calendar/local-date.ts";
import { faulty, type Problem } from "./problem.ts";

/**
 * The day an answer is asked as of: today when none is named. Tomorrow counts as today (another zone's late evening);
 * what lies further ahead cannot be known.
 */
export function asOfDay(asked: LocalDate | undefined, today: LocalDate): LocalDate | Problem {
  if (asked === undefined) return today;
  if (asked > plusDays(today, 1)) return faulty([{ path: "asOf", code: "day-ahead" }]);
  return asked > today ? today : asked;
}
