import { expect, test } from "vitest";
import { DAY_LIMITS } from "../../../lib/calendar/day-limits.ts";

test("the limits are those of the rules: 7 and 45 days for a rate, 7 for a special, 365 for a price, three intervals", () => {
  expect(DAY_LIMITS).toMatchObject({
    goodRate: 7,
    staleRate: 45,
    undatedSpecial: 7,
    price: 365,
    recheckIntervals: 3,
  });
});

test("the house's own are two safety days, and reminders three, seven and thirty days ahead", () => {
  const { safety, lapseAhead, sensibleAhead, lotDayAhead, shelfLifeAhead, ...ofTheRules } = DAY_LIMITS;
  expect([safety, lapseAhead, sensibleAhead, lotDayAhead, shelfLifeAhead]).toEqual([2, 3, 7, 7, 30]);
  expect(Object.keys(ofTheRules)).toHaveLength(5);
});
