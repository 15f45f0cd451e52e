import { expect, test } from "vitest";
import { DAY_LIMITS } from "../../../lib/calendar/day-limits.ts";

test("the limits are those of the rules: 7 and 45 days for a rate, 7 for a special, 365 for a price, three intervals", () => {
  expect(DAY_LIMITS).toEqual({
    goodRate: 7,
    staleRate: 45,
    undatedSpecial: 7,
    price: 365,
    recheckIntervals: 3,
  });
});
