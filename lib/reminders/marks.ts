import type { LocalDate } from "../calendar/local-date.ts";
import type { Reminder } from "./reminder.ts";

export const MARK_KINDS = ["done", "snoozed"] as const;

/** What a person did with a reminder. until: the day a snoozed one comes back; null for done. at: the moment, ISO 8601. */
export type ReminderMark = Readonly<{
  id: string;
  key: string;
  kind: (typeof MARK_KINDS)[number];
  until: LocalDate | null;
  at: string;
}>;

function byKey(marks: readonly ReminderMark[]): ReadonlyMap<string, ReminderMark> {
  return new Map(marks.map((mark) => [mark.key, mark]));
}

/**
 * The reminders that still ask for something on a day: not done, and not put off beyond it. One that is done stays away as
 * long as it is the same thing. marks: those not undone, one for each key.
 */
export function standing(
  all: readonly Reminder[],
  marks: readonly ReminderMark[],
  day: LocalDate,
): Reminder[] {
  const marked = byKey(marks);
  return all.filter(({ key }) => {
    const mark = marked.get(key);
    return mark === undefined || (mark.kind === "snoozed" && (mark.until ?? day) <= day);
  });
}

/** A reminder's place in a calendar. at: when that was last changed by a person; null: never. */
export type Placed = Readonly<{ reminder: Reminder; on: LocalDate; at: string | null }>;

/** What is not done, each on its own day, or on the day it was put off to where that is later. */
export function placed(all: readonly Reminder[], marks: readonly ReminderMark[]): Placed[] {
  const marked = byKey(marks);
  return all.flatMap((reminder) => {
    const mark = marked.get(reminder.key);
    if (mark?.kind === "done") return [];
    const until = mark?.until ?? null;
    const on = until !== null && until > reminder.on ? until : reminder.on;
    return [{ reminder, on, at: mark?.at ?? null }];
  });
}
