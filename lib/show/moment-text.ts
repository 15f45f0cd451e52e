/** A moment for reading in a time zone: "25 Nov 2026, 14:03" in the order of the language. at: ISO 8601 with its offset, or as PostgreSQL writes it. */
export function momentText(at: string, locale: string, timeZone: string): string {
  return new Intl.DateTimeFormat(locale, { dateStyle: "medium", timeStyle: "short", timeZone }).format(
    new Date(at.replace(" ", "T").replace(/([+-]\d\d)$/, "$1:00")),
  );
}
