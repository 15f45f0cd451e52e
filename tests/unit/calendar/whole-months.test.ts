import { expect, test } from "vitest";
import { localDate } from "../../../lib/calendar/local-date.ts";
import { wholeMonths } from "../../../lib/calendar/whole-months.ts";

const months = (from: string, to: string) => wholeMonths(localDate(from), localDate(to));

test("a month is full when its day of the month is reached", () => {
  expect([months("2026-01-15", "2026-02-14"), months("2026-01-15", "2026-02-15")]).toEqual([0, 1]);
});

test("a year is twelve of them", () => {
  expect(months("2025-03-02", "2026-03-02")).toBe(12);
});

test("from the last of a long month to the last of a short one is not a full month", () => {
  expect([months("2026-01-31", "2026-02-28"), months("2026-01-31", "2026-03-01")]).toEqual([0, 1]);
});

test("a day before is no month, not one less than none", () => {
  expect(months("2026-03-02", "2026-01-01")).toBe(0);
});
