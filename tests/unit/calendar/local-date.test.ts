import { afterEach, describe, expect, test } from "vitest";
import {
  dayNumber,
  daysBetween,
  isLocalDate,
  localDate,
  plusDays,
  todayIn,
  within,
} from "../../../lib/calendar/local-date.ts";

test.each(["2024-02-29", "2000-02-29", "1999-12-31", "0001-01-01"])("%s is a day", (text) => {
  expect(isLocalDate(text)).toBe(true);
  expect(localDate(text)).toBe(text);
});

test.each([
  "2023-02-29",
  "1900-02-29",
  "2024-04-31",
  "2024-13-01",
  "2024-00-10",
  "2024-01-00",
  "2024-1-1",
  "24-01-01",
  "2024-01-01T00:00:00Z",
  " 2024-01-01",
  "2024/01/01",
  "",
])("%j is no day and is refused with how to write one", (text) => {
  expect(isLocalDate(text)).toBe(false);
  expect(() => localDate(text)).toThrow("YYYY-MM-DD");
});

test("only text can be a day", () => {
  expect(isLocalDate(20240101)).toBe(false);
  expect(isLocalDate(new Date())).toBe(false);
  expect(isLocalDate(null)).toBe(false);
});

test("the day before the first of March is the 29th in a leap year and the 28th in another", () => {
  expect(plusDays(localDate("2024-03-01"), -1)).toBe("2024-02-29");
  expect(plusDays(localDate("2023-03-01"), -1)).toBe("2023-02-28");
  expect(plusDays(localDate("2000-02-28"), 1)).toBe("2000-02-29");
});

test("a year has 365 days, a leap year 366", () => {
  expect(daysBetween(localDate("2023-01-01"), localDate("2024-01-01"))).toBe(365);
  expect(daysBetween(localDate("2024-01-01"), localDate("2025-01-01"))).toBe(366);
  expect(daysBetween(localDate("2024-01-02"), localDate("2024-01-01"))).toBe(-1);
});

test("days are counted from 1970-01-01", () => {
  expect(dayNumber(localDate("1970-01-01"))).toBe(0);
  expect(dayNumber(localDate("1969-12-31"))).toBe(-1);
});

test("a day beyond the year 9999 is refused", () => {
  expect(() => plusDays(localDate("9999-12-31"), 1)).toThrow(RangeError);
});

test("both ends of a span count, and a missing end is open", () => {
  const day = localDate("2025-04-01");
  expect(within(day, day, day)).toBe(true);
  expect(within(day, plusDays(day, 1), null)).toBe(false);
  expect(within(day, null, plusDays(day, -1))).toBe(false);
  expect(within(day, null, null)).toBe(true);
});

test("text order is day order", () => {
  expect(localDate("2024-09-30") < localDate("2024-10-01")).toBe(true);
});

describe("wherever the machine stands", () => {
  const home = process.env.TZ;
  afterEach(() => {
    if (home === undefined) delete process.env.TZ;
    else process.env.TZ = home;
  });

  test.each([
    ["America/St_Johns", 210],
    ["Pacific/Kiritimati", -840],
    ["UTC", 0],
  ])("days are the same days in %s", (zone, offset) => {
    process.env.TZ = zone;
    // The zone is really in use, else this test says nothing.
    expect(new Date("2024-01-15T12:00:00Z").getTimezoneOffset()).toBe(offset);
    expect(plusDays(localDate("2024-03-09"), 1)).toBe("2024-03-10");
    expect(plusDays(localDate("2024-03-10"), 1)).toBe("2024-03-11");
    expect(plusDays(localDate("2024-11-03"), 1)).toBe("2024-11-04");
    expect(daysBetween(localDate("2024-01-01"), localDate("2024-12-31"))).toBe(365);
    expect(isLocalDate("2011-12-30")).toBe(true);
  });
});

test("today is the day in the named zone, not the machine's", () => {
  const instant = new Date("2025-04-01T02:15:00Z");
  expect(todayIn("America/Halifax", instant)).toBe("2025-03-31");
  expect(todayIn("America/St_Johns", instant)).toBe("2025-03-31");
  expect(todayIn("Pacific/Kiritimati", instant)).toBe("2025-04-01");
  expect(todayIn("UTC", instant)).toBe("2025-04-01");
});
