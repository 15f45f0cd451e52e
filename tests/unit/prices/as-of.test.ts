import { expect, test } from "vitest";
import { plusDays } from "../../../lib/calendar/local-date.ts";
import { ONE, ZERO } from "../../../lib/decimal.ts";
import { cheapestCover } from "../../../lib/prices/cheapest-cover.ts";
import { goingPriceOn } from "../../../lib/prices/going-price.ts";
import { lastChange } from "../../../lib/prices/last-change.ts";
import { TERMS } from "../../../lib/prices/observation.ts";
import { offersOn } from "../../../lib/prices/offers.ts";
import { daysAgo, observation, SHEET, valuation } from "../../support/price-example.ts";

const D = daysAgo(20);
const known = [
  observation("20", { seenOn: daysAgo(60) }),
  observation("22", { seenOn: daysAgo(25), storeId: "far" }),
  observation("15", { seenOn: daysAgo(22), terms: "special" }),
];
const answers = (all: typeof known) => ({
  offers: offersOn(D, all, SHEET, valuation()),
  going: goingPriceOn(D, all, SHEET, valuation()),
  change: lastChange(D, all, SHEET, valuation()),
  best: cheapestCover(offersOn(D, all, SHEET, valuation()).offers, ONE, {
    step: ONE,
    used: ZERO,
    currency: "CAD",
  }),
});

test.each(TERMS)("a %s sighting seen the day after changes no answer as of the day", (terms) => {
  const amount = terms === "none-left" ? null : "1";
  const later = observation(amount, { seenOn: plusDays(D, 1), terms, until: plusDays(D, 9) });
  expect(answers([...known, later])).toEqual(answers(known));
});

test("the same sighting seen on the day does", () => {
  const then = observation("1", { seenOn: D });
  expect(answers([...known, then]).going).not.toEqual(answers(known).going);
});

test("a corrected fact counts corrected on every day, past ones too", () => {
  const [first, ...rest] = known;
  if (first === undefined) throw new Error("there is one");
  const right = { ...first, amount: observation("19").amount };
  const offers = offersOn(D, [right, ...rest], SHEET, valuation()).offers;
  expect(offers.map(({ price }) => price.amount.toString())).toEqual(["15", "19", "22"]);
});

test("a deleted one counts on none", () => {
  const offers = offersOn(D, known.slice(1), SHEET, valuation()).offers;
  expect(offers.map(({ price }) => price.amount.toString())).toEqual(["15", "22"]);
});
