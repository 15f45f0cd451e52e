import { expect, test } from "vitest";
import { latestOnOrBefore } from "../../../lib/calendar/as-of.ts";
import { localDate } from "../../../lib/calendar/local-date.ts";

const facts = [
  { on: localDate("2024-03-01"), what: "spring" },
  { on: localDate("2024-01-01"), what: "winter" },
  { on: localDate("2024-03-01"), what: "spring, said again" },
  { on: localDate("2024-06-01"), what: "summer" },
];
const asOf = (day: string) => latestOnOrBefore(facts, localDate(day), (fact) => fact.on)?.what;

test("the newest fact on or before the day counts, in whatever order the facts stand", () => {
  expect(asOf("2024-02-29")).toBe("winter");
  expect(asOf("2024-06-01")).toBe("summer");
});

test("of two facts of one day the later in the list counts", () => {
  expect(asOf("2024-05-31")).toBe("spring, said again");
});

test("before the first fact there is none", () => {
  expect(asOf("2023-12-31")).toBeUndefined();
  expect(latestOnOrBefore([], localDate("2024-01-01"), () => localDate("2024-01-01"))).toBeNull();
});
