/** A day without a clock or a zone, written YYYY-MM-DD (ISO 8601 calendar date), so text order is day order. */
export type LocalDate = string & { readonly __day: unique symbol };

const DAY = 86_400_000;
const PATTERN = /^\d{4}-\d{2}-\d{2}$/;

/** True for a day that exists in the Gregorian calendar. */
export function isLocalDate(text: unknown): text is LocalDate {
  if (typeof text !== "string" || !PATTERN.test(text)) return false;
  const at = Date.parse(`${text}T00:00:00Z`);
  return !Number.isNaN(at) && new Date(at).toISOString().startsWith(text);
}

/** Text to a day. Throws: {RangeError} when there is no such day. */
export function localDate(text: string): LocalDate {
  if (!isLocalDate(text)) throw new RangeError(`"${text}" is not a day written as YYYY-MM-DD`);
  return text;
}

/** Read once each: a page compares the same few hundred days thousands of times. */
const numbers = new Map<LocalDate, number>();

/** The day counted in whole days from 1970-01-01. */
export function dayNumber(day: LocalDate): number {
  const known = numbers.get(day);
  if (known !== undefined) return known;
  const number = Date.parse(`${day}T00:00:00Z`) / DAY;
  numbers.set(day, number);
  return number;
}

/** A day a number of days later (earlier when negative). Units: calendar days. Throws: {RangeError} outside years 0 to 9999. */
export function plusDays(day: LocalDate, days: number): LocalDate {
  const text = new Date((dayNumber(day) + days) * DAY).toISOString().slice(0, -14);
  // The clock's own days are all real ones; only a year of more than four digits is none of ours.
  if (!PATTERN.test(text)) throw new RangeError(`"${text}" is not a day written as YYYY-MM-DD`);
  return text as LocalDate;
}

/** Whole days from one day to another; negative when `to` is earlier. */
export function daysBetween(from: LocalDate, to: LocalDate): number {
  return dayNumber(to) - dayNumber(from);
}

/** The day it is in a time zone at an instant. Source: IANA zone rules as shipped with the runtime. */
export function todayIn(timeZone: string, now: Date): LocalDate {
  return localDate(new Intl.DateTimeFormat("en-CA", { timeZone, dateStyle: "short" }).format(now));
}

/** True when from <= day <= until, both ends counted; a missing end is open. */
export function within(day: LocalDate, from: LocalDate | null, until: LocalDate | null): boolean {
  return (from === null || from <= day) && (until === null || day <= until);
}
