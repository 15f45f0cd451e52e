import { expect, test } from "vitest";
import { localDate } from "../../../lib/calendar/local-date.ts";
import { monthStartsBetween } from "../../../lib/calendar/month-starts.ts";

const between = (from: string, until: string, most = 36) =>
  monthStartsBetween(localDate(from), localDate(until), most);

test("the first days of the months between two days, over the turn of a year", () => {
  expect(between("2025-11-14", "2026-02-03")).toEqual(["2025-12-01", "2026-01-01", "2026-02-01"]);
});

test("the two days themselves are not among them", () => {
  expect(between("2025-12-01", "2026-02-01")).toEqual(["2026-01-01"]);
});

test("none within one month", () => {
  expect(between("2026-03-02", "2026-03-31")).toEqual([]);
});

test("of too many, every so many, the latest kept", () => {
  expect(between("2025-01-15", "2026-01-15", 5)).toEqual([
    "2025-04-01",
    "2025-07-01",
    "2025-10-01",
    "2026-01-01",
  ]);
});

test("never more than asked for, however long the time", () => {
  expect(between("1990-01-15", "2026-01-15", 34).length).toBeLessThanOrEqual(34);
  expect(between("1990-01-15", "2026-01-15", 34).at(-1)).toBe("2026-01-01");
});

test("less than one month is refused", () => {
  expect(() => between("2025-01-15", "2026-01-15", 0)).toThrow(RangeError);
});
