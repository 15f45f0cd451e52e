import { expect, test } from "vitest";
import { exposure } from "../../../lib/exposure/exposure.ts";
import { tenfoldOff } from "../../../lib/show/aisle-doubt.ts";
import { loggedPrice } from "../../../lib/show/logged-price.ts";
import { withPointMoved } from "../../../lib/show/point-moved.ts";
import { daysAgo, observation, SHEET, TODAY } from "../../support/price-example.ts";
import { factsOf, lotOf } from "../../support/stock-example.ts";

/** What is asked about a price where 30.00 is known elsewhere. */
function asked(amount: string, known: "offer" | "paid" | "nothing" = "offer") {
  const seen = known === "offer" ? [observation("30.00", { storeId: "far", seenOn: daysAgo(3) })] : [];
  const facts = factsOf({
    observations: seen,
    lots: known === "paid" ? [lotOf(1, 30)] : [],
    requirements: [],
  });
  return tenfoldOff(loggedPrice(observation(amount), seen, exposure(TODAY, facts), facts, SHEET));
}

test.each([
  ["299.80", "tenth"],
  ["2.99", "tenfold"],
  ["29.98", null],
  ["15.00", null],
  ["60.00", null],
  ["9999", null],
] as const)("%s where 30.00 is known is doubted as %s", (amount, doubt) => {
  expect(asked(amount)).toBe(doubt);
});

test("what was last paid stands in where no price is known; where nothing is, nothing is doubted", () => {
  expect(asked("299.80", "paid")).toBe("tenth");
  expect(asked("299.80", "nothing")).toBeNull();
});

test("the point is moved in the text, no digit is lost", () => {
  expect(withPointMoved("299.80", "tenth")).toBe("29.98");
  expect(withPointMoved("29.987", "tenth")).toBe("2.9987");
  expect(withPointMoved("2.99", "tenfold")).toBe("29.90");
});
