import { describe, expect, test } from "vitest";
import { plusDays } from "../../../lib/calendar/local-date.ts";
import type { ExposureFacts } from "../../../lib/exposure/exposure-facts.ts";
import type { Reminder } from "../../../lib/reminders/reminder.ts";
import { reminders } from "../../../lib/reminders/reminders.ts";
import { NOTHING_AGREED } from "../../../lib/stock/lot.ts";
import { daysAgo, observation, SHEET, store, TODAY, valuation } from "../../support/price-example.ts";
import { cad, eventOf, factsOf, lotOf, needOf, revisionOf } from "../../support/stock-example.ts";

const TEN = needOf("need", revisionOf(10));
const seen = observation;

function told(given: Parameters<typeof factsOf>[0], wanted: string | null = null, lapseDays = 3): Reminder[] {
  const facts: ExposureFacts = factsOf(given);
  const wishes = wanted === null ? [] : [["sheet", cad(wanted)] as const];
  return reminders(TODAY, facts, { wanted: new Map(wishes), lapseDays });
}
const short = (all: readonly Reminder[]) => all.map(({ kind, on }) => [kind, on]);

describe("a price at or below what was asked for", () => {
  const at = (...observations: Parameters<typeof seen>[]) =>
    told({ observations: observations.map((one) => seen(...one)) }, "40.00");

  test("is told when it is below and when it is the same, not above", () => {
    expect(short(at(["39.99"]))).toEqual([["price-at-or-below", TODAY]]);
    expect(short(at(["40.00"]))).toEqual([["price-at-or-below", TODAY]]);
    expect(at(["40.01"])).toEqual([]);
  });

  test("counts all in, with tax that does not come back", () => {
    const taxed = valuation({ stores: [store("near", { taxRegion: "CA-NS" })] });
    const all = (amount: string) =>
      short(told({ valuation: taxed, observations: [seen(amount)] }, "40.00")).length;
    // By hand: 14 % on 35.08 is 39.99, on 35.10 it is 40.01.
    expect([all("35.08"), all("35.10")]).toEqual([1, 0]);
  });

  test("is told once for each store, of its cheapest", () => {
    const all = at(
      ["39.00"],
      ["35.00", { terms: "special", until: daysAgo(-20) }],
      ["38.00", { storeId: "far" }],
    );
    expect(all.map(({ storeId, each }) => [storeId, each?.amount.toFixed(2)]).sort()).toEqual([
      ["far", "38.00"],
      ["near", "35.00"],
    ]);
  });

  test("is not told of a stale price, a used one, one that lapsed, or an archived material", () => {
    expect(at(["30.00", { seenOn: daysAgo(31) }])).toEqual([]);
    expect(at(["30.00", { seenOn: daysAgo(30) }])).toHaveLength(1);
    expect(at(["30.00", { terms: "used" }])).toEqual([]);
    expect(at(["30.00", { terms: "special", seenOn: daysAgo(3), until: daysAgo(1) }])).toEqual([]);
    const archived = { ...SHEET, archivedOn: daysAgo(1) };
    expect(told({ materials: [archived], observations: [seen("30.00")] }, "40.00")).toEqual([]);
  });

  test("is not compared with a wish in another currency", () => {
    const wanted = new Map([["sheet", { amount: cad("40").amount, currency: "USD" as const }]]);
    expect(reminders(TODAY, factsOf({ observations: [seen("30.00")] }), { wanted, lapseDays: 3 })).toEqual(
      [],
    );
  });
});

describe("an offer that open needs rest on", () => {
  const special = (days: number) =>
    told({
      requirements: [TEN],
      observations: [seen("30.00", { terms: "special", until: plusDays(TODAY, days) })],
    });

  test("is told of from three days before it lapses to its last day", () => {
    expect([4, 3, 0].map((days) => short(special(days)))).toEqual([
      [],
      [["offer-lapsing", plusDays(TODAY, 3)]],
      [["offer-lapsing", TODAY]],
    ]);
    expect(special(3).map(({ quantity, money }) => [quantity?.toFixed(), money?.amount.toFixed(2)])).toEqual([
      ["10", "300.00"],
    ]);
  });

  test("is told of earlier where the workspace wishes", () => {
    const until = plusDays(TODAY, 9);
    const observations = [seen("30.00", { terms: "special", until })];
    expect(short(told({ requirements: [TEN], observations }, null, 9))).toEqual([["offer-lapsing", until]]);
  });

  test("is not told of where nothing is open", () => {
    const observations = [seen("30.00", { terms: "special", until: TODAY })];
    expect(told({ observations })).toEqual([]);
    const closed = needOf("need", revisionOf(10), { closedOn: TODAY });
    expect(told({ requirements: [closed], observations })).toEqual([]);
  });

  test("is told of once it is stale, from the first day it is", () => {
    const aged = (days: number) =>
      short(told({ requirements: [TEN], observations: [seen("30.00", { seenOn: daysAgo(days) })] }));
    expect(aged(30)).toEqual([]);
    expect(aged(31)).toEqual([["price-stale", TODAY]]);
    expect(aged(40)).toEqual([["price-stale", daysAgo(9)]]);
  });

  test("is told of once, however many needs rest on it", () => {
    const requirements = [TEN, needOf("more", revisionOf(5))];
    const all = told({ requirements, observations: [seen("30.00", { seenOn: daysAgo(40) })] });
    expect(all.map(({ quantity }) => quantity?.toFixed())).toEqual(["15"]);
  });
});

describe("a need's last sensible day to buy", () => {
  const needed = (days: number) => needOf("need", revisionOf(10, { neededBy: plusDays(TODAY, days) }));

  test("is two safety days before it is needed, told of a week ahead and once it has passed", () => {
    expect(short(told({ requirements: [needed(10)] }))).toEqual([]);
    expect(short(told({ requirements: [needed(9)] }))).toEqual([["buy-by", plusDays(TODAY, 7)]]);
    expect(short(told({ requirements: [needed(-3)] }))).toEqual([["buy-by", daysAgo(5)]]);
  });

  test("is earlier by the lead days of the store it would be bought at", () => {
    const slow = valuation({ stores: [store("near", { leadDays: 10 })] });
    const at = (days: number) =>
      short(told({ valuation: slow, requirements: [needed(days)], observations: [seen("30.00")] }));
    expect(at(20)).toEqual([]);
    expect(at(19)).toEqual([["buy-by", plusDays(TODAY, 7)]]);
  });

  test("is not told of once nothing is open", () => {
    const requirements = [needed(3)];
    const events = [eventOf("allocated", 10, "2026-01-10", { requirementId: "need" })];
    expect(told({ requirements, lots: [lotOf(10, 200)], events })).toEqual([]);
  });
});

describe("a lot's last day", () => {
  const lot = (agreed: Partial<typeof NOTHING_AGREED>) =>
    lotOf(10, 200, { agreed: { ...NOTHING_AGREED, ...agreed } });
  const kept = (shelfLifeDays: number) =>
    short(told({ materials: [{ ...SHEET, shelfLifeDays }], lots: [lotOf(10, 200)] }));

  test("for a return is told of a week ahead, to that day, while something is on hand", () => {
    const on = (days: number) => ({ lots: [lot({ returnableUntil: plusDays(TODAY, days) })] });
    expect([8, 7, 0, -1].map((days) => told(on(days)).length)).toEqual([0, 1, 1, 0]);
    expect(told({ ...on(7), events: [eventOf("drawn", 4, "2026-01-10")] })[0]?.quantity?.toFixed()).toBe("6");
    expect(told({ ...on(7), events: [eventOf("drawn", 10, "2026-01-10")] })).toEqual([]);
  });

  test("for a price adjustment is told of beside it", () => {
    const both = lot({ returnableUntil: plusDays(TODAY, 5), adjustableUntil: plusDays(TODAY, 2) });
    expect(short(told({ lots: [both] }))).toEqual([
      ["adjust-by", plusDays(TODAY, 2)],
      ["return-by", plusDays(TODAY, 5)],
    ]);
  });

  test("of its shelf life is told of thirty days ahead, and until it is gone", () => {
    // Bought and received on 5 January, 56 days before today.
    expect(kept(87)).toEqual([]);
    expect(kept(86)).toEqual([["keeps-until", plusDays(TODAY, 30)]]);
    expect(kept(50)).toEqual([["keeps-until", daysAgo(6)]]);
  });

  test("is not told of before it is ordered, nor of what has not come in", () => {
    const agreed = { ...NOTHING_AGREED, returnableUntil: TODAY };
    expect(told({ lots: [lotOf(10, 200, { agreed, receipts: [] })] })).toEqual([]);
    expect(told({ lots: [lotOf(10, 200, { agreed, orderedOn: plusDays(TODAY, 1) })] })).toEqual([]);
  });
});

test("a reminder's key is its kind, what it is of, and its day", () => {
  const agreed = { ...NOTHING_AGREED, returnableUntil: plusDays(TODAY, 5) };
  expect(told({ lots: [lotOf(10, 200, { agreed })] }).map(({ key }) => key)).toEqual([
    "return-by.lot.2026-03-07",
  ]);
});

test("reminders stand by day, the earliest first", () => {
  const agreed = { ...NOTHING_AGREED, returnableUntil: plusDays(TODAY, 5) };
  const requirements = [needOf("need", revisionOf(10, { neededBy: plusDays(TODAY, 6) }))];
  const observations = [seen("30.00", { terms: "special", until: plusDays(TODAY, 1) })];
  expect(short(told({ lots: [lotOf(10, 200, { agreed })], requirements, observations }, "31.00"))).toEqual([
    ["price-at-or-below", TODAY],
    ["offer-lapsing", plusDays(TODAY, 1)],
    ["buy-by", plusDays(TODAY, 4)],
    ["return-by", plusDays(TODAY, 5)],
  ]);
});
