import ical, { ICalCalendarMethod, ICalEventTransparency } from "ical-generator";
import { type LocalDate, plusDays } from "../../../lib/calendar/local-date.ts";
import type { Placed } from "../../../lib/reminders/marks.ts";

/** So many seconds a calendar may wait before it asks again. */
const ASK_AGAIN = 3600;

/** What the file says of its reminders. timeZone: whose days they are. */
export type FeedSays = Readonly<{
  name: string;
  timeZone: string;
  sentence: (placed: Placed) => string;
  /** Where it is dealt with; null: not said. */
  address: (placed: Placed) => string | null;
}>;

// A whole day has no hour: its date is read off the clock of UTC here, whatever zone the computer is in.
function midnight(day: LocalDate): Date {
  return new Date(`${day}T00:00:00Z`);
}

/**
 * Reminders as an iCalendar file (RFC 5545): one whole-day event each, its UID the reminder's key. The same reminders make the
 * same file to the last character: DTSTAMP is when a person last put it off, else the beginning of the reminder's own day.
 */
export function feedFile(all: readonly Placed[], { name, timeZone, sentence, address }: FeedSays): string {
  const calendar = ical({ name, prodId: { company: "Dunnage", product: "Reminders", language: "EN" } });
  calendar.method(ICalCalendarMethod.PUBLISH);
  calendar.ttl(ASK_AGAIN);
  calendar.x([["X-WR-TIMEZONE", timeZone]]);
  for (const placed of all) {
    const url = address(placed);
    calendar.createEvent({
      id: placed.reminder.key,
      stamp: placed.at === null ? midnight(placed.reminder.on) : new Date(placed.at),
      start: midnight(placed.on),
      end: midnight(plusDays(placed.on, 1)),
      allDay: true,
      summary: sentence(placed),
      transparency: ICalEventTransparency.TRANSPARENT,
      ...(url === null ? {} : { url }),
    });
  }
  return calendar.toString();
}
