import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { ExposureFacts } from "../exposure/exposure-facts.ts";
import type { ReminderMark } from "../reminders/marks.ts";
import type { Reminder } from "../reminders/reminder.ts";
import { reminders } from "../reminders/reminders.ts";
import type { Scope } from "./client.ts";
import { offerFacts } from "./facts.ts";
import { reminderMarks } from "./reminder-marks.ts";
import { reminderWishes } from "./reminder-wishes.ts";

/** All reminders of a day, with what they were reckoned from and what was done with them. */
export type RemindersOfDay = Readonly<{
  all: readonly Reminder[];
  marks: readonly ReminderMark[];
  facts: ExposureFacts;
}>;

/** The workspace's reminders as of a day: reckoned anew each time, so a new price counts at once. */
export async function remindersOf(scope: Scope, day: LocalDate): Promise<RemindersOfDay> {
  const [facts, wishes, marks] = await Promise.all([
    offerFacts(scope, day),
    reminderWishes(scope),
    reminderMarks(scope),
  ]);
  return { all: reminders(day, facts, wishes), marks, facts };
}
