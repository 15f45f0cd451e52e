import { describe, expect, test } from "vitest";
import { plusDays } from "../../../lib/calendar/local-date.ts";
import { daysThatTell } from "../../../lib/savings/makes-known.ts";
import { rowKey } from "../../../lib/savings/row-key.ts";
import { savings } from "../../../lib/savings/savings.ts";
import { whySaving } from "../../../lib/savings/why-saving.ts";
import { day, observation, SHEET, store, TODAY, valuation } from "../../support/price-example.ts";
import { a, draw } from "../../support/saving-example.ts";
import { eventOf, factsOf, lotOf, needOf, paid, revisionOf } from "../../support/stock-example.ts";

const given = { requirements: [needOf("a", revisionOf(10))], lots: [lotOf(10, 200)], events: [draw] };
function why(facts: ReturnType<typeof factsOf>) {
  const row = savings(null, null, TODAY, facts).rows[0];
  return row === undefined ? null : whySaving(rowKey(row), TODAY, facts);
}

describe("a going price that is not known", () => {
  const nothingSeen = why(factsOf(given));

  test("names the days a shelf price would tell it from: three recheck intervals up to its day", () => {
    expect(nothingSeen?.makesKnown).toEqual([
      {
        figure: "going-at-acquisition",
        what: "shelf-price",
        from: "2025-10-07",
        until: "2026-01-05",
        unvalued: null,
      },
      {
        figure: "going-at-use",
        what: "shelf-price",
        from: "2025-11-27",
        until: "2026-02-25",
        unvalued: null,
      },
    ]);
  });

  test.each([
    ["the first of them", 0, true],
    ["the day before the first", -1, false],
    ["the last", 90, true],
    ["the day after the last", 91, false],
  ])("is known by a price seen on %s, or not", (_, after, isKnown) => {
    const { from } = daysThatTell(SHEET, valuation(), day("2026-01-05"));
    const seen = observation("24.00", { seenOn: plusDays(from, after) });
    expect(why(factsOf({ ...given, observations: [seen] }))?.row.goingAtAcquisition !== null).toBe(isKnown);
  });

  test("says so where there is such a price and its tax is not known", () => {
    const stores = [store("near", { taxRegion: "CA-ZZ" })];
    const facts = factsOf({
      ...given,
      lots: [lotOf(10, 200, { paid: paid(200, { taxRegion: "CA-XX" }) })],
      valuation: valuation({ stores }),
      observations: [observation("24.00", { seenOn: day("2026-01-04") })],
    });
    expect(why(facts)?.makesKnown[0]).toMatchObject({
      figure: "going-at-acquisition",
      unvalued: "region-unknown",
    });
  });
});

test("a lot whose tax is not known says so, and a refund without a rate names its day", () => {
  const lots = [lotOf(10, 200, { paid: paid(200, { taxRegion: "CA-ZZ" }) })];
  const seen = [
    observation("24.00", { seenOn: day("2026-01-04") }),
    observation("26.00", { seenOn: day("2026-02-20") }),
  ];
  expect(why(factsOf({ ...given, lots, observations: seen }))?.makesKnown).toEqual([
    { figure: "paid", what: "region-unknown" },
  ]);
  const sold = eventOf("sold", 1, "2026-02-25", {
    amount: { amount: lotOf(10, 20).quantity, currency: "USD" },
  });
  expect(why(factsOf({ ...given, events: [sold] }))?.makesKnown).toEqual([
    { figure: "received", what: "rate-unknown", on: "2026-02-25" },
  ]);
});

test("a saving that is known says nothing is missing", () => {
  const seen = [
    observation("24.00", { seenOn: day("2026-01-04") }),
    observation("26.00", { seenOn: day("2026-02-20") }),
  ];
  expect(
    why(factsOf({ ...given, events: [eventOf("allocated", 2, "2026-01-06", a)], observations: seen }))
      ?.makesKnown,
  ).toEqual([]);
});
