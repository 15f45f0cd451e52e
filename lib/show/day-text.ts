import type { LocalDate } from "../calendar/local-date.ts";

/** A day for reading: "14 Mar 2026" in the order of the language. Units: calendar day, no zone. */
export function dayText(day: LocalDate, locale: string): string {
  return new Intl.DateTimeFormat(locale, { dateStyle: "medium", timeZone: "UTC" }).format(
    new Date(`${day}T00:00:00Z`),
  );
}

/** A day of this year without the year: "Mar 14". */
export function shortDayText(day: LocalDate, locale: string): string {
  return new Intl.DateTimeFormat(locale, { month: "short", day: "numeric", timeZone: "UTC" }).format(
    new Date(`${day}T00:00:00Z`),
  );
}

/** A month for reading, short: "Mar 26". */
export function monthText(day: LocalDate, locale: string): string {
  return new Intl.DateTimeFormat(locale, { month: "short", year: "2-digit", timeZone: "UTC" }).format(
    new Date(`${day}T00:00:00Z`),
  );
}

/** An instant for reading, to the minute, in a time zone: "Mar 14, 2026, 4:05 p.m.". at: ISO 8601, or as PostgreSQL writes it. */
export function momentText(at: string, locale: string, timeZone: string): string {
  return new Intl.DateTimeFormat(locale, { dateStyle: "medium", timeStyle: "short", timeZone }).format(
    new Date(at),
  );
}
