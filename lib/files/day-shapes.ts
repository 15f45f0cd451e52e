import { isLocalDate, type LocalDate } from "../calendar/local-date.ts";
import type { FaultCode } from "../fault.ts";

/** Whether 3/4/2025 is the fourth of March or the third of April. */
export type DayOrder = "month-first" | "day-first";

const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const SLASHED = /^(\d{1,2})[/.-](\d{1,2})[/.-](\d{4})$/;
const NAMED = /^(\d{1,2})[ -]([a-z]{3,9})\.?[ -](\d{4})$/i;
const MONTH = /^(\d{4})(?:-|M|m)(\d{2})$/;
const AT_MIDNIGHT = /^(\d{4}-\d{2}-\d{2})[T ]00:00(:00(\.0+)?)?Z?$/;

function dayOf(year: string, month: string | number, day: string): LocalDate | null {
  const text = `${year}-${String(month).padStart(2, "0")}-${day.padStart(2, "0")}`;
  return isLocalDate(text) ? text : null;
}

function slashed(text: string, order: DayOrder): LocalDate | null {
  const [, one, other, year] = SLASHED.exec(text) ?? [];
  if (one === undefined || other === undefined || year === undefined) return null;
  return order === "month-first" ? dayOf(year, one, other) : dayOf(year, other, one);
}

/**
 * Which way round the days of a file are written, from the days themselves; null: they can be read both ways. Only a day
 * that exists one way decides, and, where every row speaks of a month (monthly), that all fall on the first of one.
 */
export function dayOrderOf(texts: readonly string[], { monthly }: { monthly: boolean }): DayOrder | null {
  const written = texts.filter((text) => SLASHED.test(text));
  const possible = (["month-first", "day-first"] as const).filter((order) =>
    written.every((text) => slashed(text, order) !== null),
  );
  if (possible.length < 2) return possible[0] ?? null;
  const firsts = possible.filter((order) =>
    written.every((text) => slashed(text, order)?.endsWith("-01") ?? false),
  );
  if (monthly && firsts.length === 1) return firsts[0] ?? null;
  return written.every((text) => slashed(text, "month-first") === slashed(text, "day-first"))
    ? "month-first"
    : null;
}

/**
 * The day a cell says: 2025-03-01, 2025-03 and 2025M03 (the first of the month), 13 April 2026, 3/1/2025 where the order is
 * known. Errors: missing, not-a-day, day-unclear. Never guesses; never throws.
 */
export function dayIn(text: string, order: DayOrder | null): LocalDate | FaultCode {
  if (text === "") return "missing";
  if (isLocalDate(text)) return text;
  const midnight = AT_MIDNIGHT.exec(text)?.[1];
  if (isLocalDate(midnight)) return midnight;
  const [, year, month] = MONTH.exec(text) ?? [];
  if (year !== undefined && month !== undefined) return dayOf(year, month, "01") ?? "not-a-day";
  const [, day, word, ofYear] = NAMED.exec(text) ?? [];
  if (day !== undefined && word !== undefined && ofYear !== undefined)
    return dayOf(ofYear, MONTHS.indexOf(word.slice(0, 3).toLowerCase()) + 1, day) ?? "not-a-day";
  if (!SLASHED.test(text)) return "not-a-day";
  return order === null ? "day-unclear" : (slashed(text, order) ?? "not-a-day");
}
