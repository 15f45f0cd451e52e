import { describe, expect, test } from "vitest";
import type { LocalDate } from "../../../lib/calendar/local-date.ts";
import { decimal } from "../../../lib/decimal.ts";
import type { Observation, Terms } from "../../../lib/prices/observation.ts";
import { offersOn } from "../../../lib/prices/offers.ts";
import { daysAgo, observation, SHEET, TODAY, valuation } from "../../support/price-example.ts";

/** Amounts of the offers in force on a day, cheapest first. */
function inForce(all: readonly Observation[], on: LocalDate = TODAY): string[] {
  return offersOn(on, all, SHEET, valuation()).offers.map(({ price }) => price.amount.toString());
}

/** Why each of them is no offer, in the order given; "in force" when it is one. */
function standing(all: readonly Observation[], on: LocalDate = TODAY): string[] {
  const { leftOut } = offersOn(on, all, SHEET, valuation());
  return all.map(({ id }) => leftOut.find(({ observationId }) => observationId === id)?.reason ?? "in force");
}

function seen(amount: string, ago: number, given: Partial<Observation> = {}): Observation {
  return observation(amount, { seenOn: daysAgo(ago), ...given });
}
const min = (quantity: number) => ({ minQuantity: decimal(quantity) });

describe("a shelf price", () => {
  test("holds until a newer one is seen at that store", () => {
    expect(inForce([seen("20", 60)])).toEqual(["20"]);
    expect(standing([seen("20", 60), seen("22", 10)])).toEqual(["replaced", "in force"]);
  });

  test("does not end at another store", () => {
    expect(standing([seen("20", 60), seen("22", 10, { storeId: "far" })])).toEqual(["in force", "in force"]);
  });

  test("is not ended by a special beside it", () => {
    expect(inForce([seen("20", 60), seen("15", 3, { terms: "special" })])).toEqual(["15", "20"]);
  });

  test("logged during a special does not hide the special", () => {
    expect(inForce([seen("15", 3, { terms: "special" }), seen("20", 1)])).toEqual(["15", "20"]);
  });

  test("announced for a later day leaves the present one in force until then", () => {
    const announced = seen("25", 5, { from: daysAgo(2) });
    expect(standing([seen("20", 60), announced], daysAgo(3))).toEqual(["in force", "not-yet"]);
    expect(standing([seen("20", 60), announced], daysAgo(2))).toEqual(["replaced", "in force"]);
  });

  test("with a stated end holds to the end of that day", () => {
    const dated = seen("20", 60, { until: daysAgo(4) });
    expect(standing([dated], daysAgo(4))).toEqual(["in force"]);
    expect(standing([dated], daysAgo(3))).toEqual(["lapsed"]);
  });

  test("for more pieces at once stands beside the one for single pieces", () => {
    expect(inForce([seen("20", 10), seen("18", 5, min(10))])).toEqual(["18", "20"]);
  });
});

describe("a quantity break", () => {
  const terms = "quantity-break" as const;

  test("holds until a newer one for the same minimum is seen", () => {
    const breaks = [seen("18", 20, { terms, ...min(10) }), seen("17", 5, { terms, ...min(10) })];
    expect(standing(breaks)).toEqual(["replaced", "in force"]);
  });

  test("for another minimum stands beside it", () => {
    const breaks = [seen("18", 20, { terms, ...min(10) }), seen("16", 5, { terms, ...min(50) })];
    expect(inForce(breaks)).toEqual(["16", "18"]);
  });

  test("is not ended by a shelf price", () => {
    expect(inForce([seen("18", 20, { terms, ...min(10) }), seen("20", 5)])).toEqual(["18", "20"]);
  });
});

describe.each<Terms>(["special", "clearance", "used"])("a %s price", (terms) => {
  test("without an end holds seven days from the day seen, the seventh included", () => {
    const special = seen("15", 20, { terms });
    expect(standing([special], daysAgo(13))).toEqual(["in force"]);
    expect(standing([special], daysAgo(12))).toEqual(["lapsed"]);
  });

  test("without an end is ended earlier by a later sighting of the same terms", () => {
    expect(standing([seen("15", 5, { terms }), seen("16", 2, { terms })])).toEqual(["replaced", "in force"]);
  });

  test("without an end is ended by a later one for another minimum, and stays ended when that lapses", () => {
    expect(standing([seen("15", 5, { terms }), seen("14", 2, { terms, ...min(10) })])).toEqual([
      "replaced",
      "in force",
    ]);
    const short = seen("14", 4, { terms, until: daysAgo(2) });
    expect(standing([seen("15", 5, { terms }), short], daysAgo(1))).toEqual(["replaced", "lapsed"]);
  });

  test("of one day for two minimums are two offers", () => {
    expect(inForce([seen("15", 5, { terms }), seen("14", 5, { terms, ...min(10) })])).toEqual(["14", "15"]);
  });

  test("without an end is not ended by a later sighting of other terms", () => {
    expect(standing([seen("15", 5, { terms }), seen("20", 2)])).toEqual(["in force", "in force"]);
  });

  test("with an end holds to it, both days counted", () => {
    const dated = seen("15", 20, { terms, from: daysAgo(10), until: daysAgo(3) });
    const on = (ago: number) => standing([dated], daysAgo(ago))[0];
    expect([on(11), on(10), on(3), on(2)]).toEqual(["not-yet", "in force", "in force", "lapsed"]);
  });

  test("with an end gives way only while a newer one of its minimum is itself in force", () => {
    const long = seen("15", 20, { terms, until: daysAgo(-10) });
    const short = seen("14", 8, { terms, until: daysAgo(4) });
    expect(standing([long, short], daysAgo(5))).toEqual(["replaced", "in force"]);
    expect(standing([long, short], daysAgo(3))).toEqual(["in force", "lapsed"]);
  });
});

describe("a quote", () => {
  test("holds to its end", () => {
    const quote = seen("17", 20, { terms: "quote", until: daysAgo(3) });
    expect([standing([quote], daysAgo(3)), standing([quote], daysAgo(2))]).toEqual([
      ["in force"],
      ["lapsed"],
    ]);
  });

  test("without an end holds no day", () => {
    expect(standing([seen("17", 0, { terms: "quote" })])).toEqual(["lapsed"]);
  });

  test("is not ended by a shelf price or a special", () => {
    const quote = seen("17", 20, { terms: "quote", until: TODAY });
    expect(standing([quote, seen("20", 5), seen("16", 4, { terms: "special" })])[0]).toBe("in force");
  });
});

test("what was paid is a receipt, never an offer", () => {
  expect(standing([seen("12", 0, { terms: "paid" })])).toEqual(["receipt"]);
});

describe("none left", () => {
  const gone = (ago: number, storeId = "near") => observation(null, { seenOn: daysAgo(ago), storeId });

  test("ends every offer of that store, whatever its terms", () => {
    const all = [
      seen("20", 10),
      seen("15", 6, { terms: "special" }),
      seen("17", 9, { terms: "quote", until: TODAY }),
      gone(5),
    ];
    expect(standing(all)).toEqual(["none-left", "none-left", "none-left", "none-left"]);
  });

  test("does not end the offers of another store", () => {
    expect(standing([seen("20", 10, { storeId: "far" }), gone(5)])[0]).toBe("in force");
  });

  test("ends with the next sighting, which counts by itself", () => {
    expect(standing([seen("20", 10), gone(5), seen("21", 2)])).toEqual([
      "none-left",
      "none-left",
      "in force",
    ]);
  });

  test("changes nothing before the day it was seen", () => {
    expect(standing([seen("20", 10), gone(5)], daysAgo(6))[0]).toBe("in force");
  });

  test("recorded after a price of the same day ends it, before it does not", () => {
    const first = seen("20", 5);
    const later = gone(5);
    expect(standing([first, later])[0]).toBe("none-left");
    expect(standing([gone(5), seen("20", 5)])[1]).toBe("in force");
  });
});

describe("age", () => {
  test("of 365 days is still a price, of 366 none", () => {
    expect(standing([seen("20", 365)])).toEqual(["in force"]);
    expect(standing([seen("20", 366)])).toEqual(["too-old"]);
  });

  test("past a year ends even what has a later stated end", () => {
    expect(standing([seen("20", 366, { until: TODAY })])).toEqual(["too-old"]);
  });
});

test("of two sightings of one day the later recorded counts", () => {
  expect(standing([seen("20", 3), seen("21", 3)])).toEqual(["replaced", "in force"]);
});

test("a sighting after the day is not known on it at all", () => {
  const { offers, leftOut } = offersOn(daysAgo(5), [seen("20", 10), seen("1", 4)], SHEET, valuation());
  expect([offers.length, leftOut.length]).toEqual([1, 0]);
});
