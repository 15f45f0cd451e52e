import type { LocalDate } from "../calendar/local-date.ts";

/** A month for reading, with its whole year, so that it is not taken for a day: "Feb 2026". */
export function monthOfYearText(day: LocalDate, locale: string): string {
  return new Intl.DateTimeFormat(locale, { month: "short", year: "numeric", timeZone: "UTC" }).format(
    new Date(`${day}T00:00:00Z`),
  );
}
