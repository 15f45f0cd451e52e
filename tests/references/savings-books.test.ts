import { expect, test } from "vitest";
import { bookCosts } from "../../lib/savings/book-costs.ts";
import { day, TODAY } from "../support/price-example.ts";
import { eventOf, factsOf, lotOf } from "../support/stock-example.ts";

// A financial accounting textbook's perpetual table (read): 10 at 91; 15 at 106; 20 used; 20 at 115; 10 at 119; 23 used.
// First in first out printed in whole units of money: 1,970 and 2,600, 1,420 left. Moving average derived from it: 20 x 100,
// then 23 x 114, 1,368 left. The lots are drawn oldest first, so that each unit's own cost is the first in first out one.
const lots = [
  lotOf(10, 910, { id: "first", orderedOn: day("2026-01-05") }),
  lotOf(15, 1590, { id: "second", orderedOn: day("2026-01-06") }),
  lotOf(20, 2300, { id: "third", orderedOn: day("2026-01-20") }),
  lotOf(10, 1190, { id: "fourth", orderedOn: day("2026-01-21") }),
];
const events = [
  eventOf("drawn", 10, "2026-01-10", { lotId: "first" }),
  eventOf("drawn", 10, "2026-01-10", { lotId: "second" }),
  eventOf("drawn", 5, "2026-02-10", { lotId: "second" }),
  eventOf("drawn", 18, "2026-02-10", { lotId: "third" }),
];
const of = (from: string | null, until: string) => {
  const [only] = bookCosts(factsOf({ lots, events }), {
    from: from === null ? null : day(from),
    until: day(until),
  });
  const text = (formula: "byLot" | "fifo" | "average") =>
    [only?.[formula]?.issued, only?.[formula]?.left].map((value) => value?.amount.toFixed());
  return {
    by: [text("byLot"), text("fifo"), text("average")],
    issued: only?.issued.toFixed(),
    left: only?.left.toFixed(),
  };
};

test("the first issue, by lot, first in first out and moving average", () => {
  expect(of(null, "2026-01-10")).toEqual({
    by: [
      ["1970", "530"],
      ["1970", "530"],
      ["2000", "500"],
    ],
    issued: "20",
    left: "5",
  });
});

test("the second issue alone, and the twelve left", () => {
  expect(of("2026-02-01", TODAY)).toEqual({
    by: [
      ["2600", "1420"],
      ["2600", "1420"],
      ["2622", "1368"],
    ],
    issued: "23",
    left: "12",
  });
});

test("what left and what is there come to the 5,990 that came in, by every formula", () => {
  for (const [issued, left] of of(null, TODAY).by) expect(Number(issued) + Number(left)).toBe(5990);
});
