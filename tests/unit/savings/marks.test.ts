import { expect, test } from "vitest";
import { marksBetween, marksOfLots } from "../../../lib/savings/unrealised-through-time.ts";
import { day } from "../../support/price-example.ts";
import { lotOf } from "../../support/stock-example.ts";

test("marks are the ends of months, and the last day", () => {
  expect(marksBetween(day("2026-01-15"), day("2026-03-02"))).toEqual([
    "2026-01-31",
    "2026-02-28",
    "2026-03-02",
  ]);
  expect(marksBetween(day("2026-01-15"), day("2026-02-28"))).toEqual(["2026-01-31", "2026-02-28"]);
  expect(marksBetween(day("2026-03-02"), day("2026-03-02"))).toEqual(["2026-03-02"]);
});

test("over a long time they stand further apart, a dozen at most", () => {
  const marks = marksBetween(day("2021-01-15"), day("2026-03-02"));
  expect(marks.length).toBeLessThanOrEqual(13);
  expect(marks.at(-1)).toBe("2026-03-02");
  expect([...marks].sort()).toEqual(marks);
});

test("they begin with the first lot, or with a later first day asked for", () => {
  const lots = [lotOf(1, 1, { orderedOn: day("2026-01-20") })];
  expect(marksOfLots(lots, null, day("2026-03-02"))[0]).toBe("2026-01-31");
  expect(marksOfLots(lots, day("2026-02-01"), day("2026-03-02"))[0]).toBe("2026-02-28");
  expect(marksOfLots([], null, day("2026-03-02"))).toEqual([]);
});
