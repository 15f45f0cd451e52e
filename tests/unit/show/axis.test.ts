import * as fc from "fast-check";
import { expect, test } from "vitest";
import { localDate } from "../../../lib/calendar/local-date.ts";
import { decimal } from "../../../lib/decimal.ts";
import { monthTicks, placeOn, valueAt, valueTicks } from "../../../lib/show/axis.ts";
import { law } from "../../support/law.ts";

const ticks = (...values: string[]) => valueTicks(values.map(decimal)).map((tick) => tick.toFixed());

test("an axis holds its values with a little room, in steps people read", () => {
  expect(ticks("29.64", "37.9")).toEqual(["27.5", "30", "32.5", "35", "37.5", "40"]);
});

test("one value alone still has an axis around it", () => {
  const [first = "", ...rest] = ticks("42.97");
  expect(Number(first)).toBeLessThan(42.97);
  expect(Number(rest.at(-1))).toBeGreaterThan(42.97);
});

test("prices near nothing do not reach below zero", () => {
  expect(ticks("0.001", "0.4")[0]).toBe("0");
});

test("cents have an axis in cents", () => {
  expect(ticks("0.92", "1.18")).toEqual(["0.9", "1", "1.1", "1.2"]);
});

test("every value lies within the first and the last tick, and the ticks are evenly spaced", () => {
  const amounts = fc.array(fc.integer({ min: 1, max: 99_999_999 }), { minLength: 1, maxLength: 20 });
  law(
    fc.property(amounts, (cents) => {
      const values = cents.map((cent) => decimal(cent).dividedBy(100));
      const axis = valueTicks(values);
      const gaps = new Set(axis.slice(1).map((tick, index) => tick.minus(axis[index] ?? 0).toFixed()));
      const places = values.map((value) => placeOn(axis, value).toNumber());
      return gaps.size === 1 && axis.length <= 12 && places.every((place) => place >= 0 && place <= 1);
    }),
  );
});

test("a year has a tick every three months", () => {
  expect(monthTicks(localDate("2025-11-25"), localDate("2026-11-25"))).toEqual([
    "2026-01-01",
    "2026-04-01",
    "2026-07-01",
    "2026-10-01",
  ]);
});

test("three weeks around a month's first day have that one tick", () => {
  expect(monthTicks(localDate("2026-02-20"), localDate("2026-03-10"))).toEqual(["2026-03-01"]);
});

test("twenty years have at most five ticks", () => {
  expect(monthTicks(localDate("2006-05-05"), localDate("2026-11-25")).length).toBeLessThanOrEqual(5);
});

test("a place on an axis and the value there are the same thing", () => {
  const axis = [decimal(20), decimal(30), decimal(40)];
  expect(placeOn(axis, decimal(25)).toFixed()).toBe("0.25");
  expect(valueAt(axis, 0.25)).toBe(25);
});
