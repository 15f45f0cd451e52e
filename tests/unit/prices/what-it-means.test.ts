import { describe, expect, test } from "vitest";
import { type Decimal, decimal, roundHalfUp } from "../../../lib/decimal.ts";
import { money } from "../../../lib/money/money.ts";
import type { Observation } from "../../../lib/prices/observation.ts";
import { type Need, whatItMeans } from "../../../lib/prices/what-it-means.ts";
import { daysAgo, observation, rate, SHEET, store, TODAY, valuation } from "../../support/price-example.ts";

const text = (value: { amount: Decimal } | null) =>
  value === null ? null : roundHalfUp(value.amount, 2).toString();
const NO_NEED: Need = { open: decimal(0), openUsed: decimal(0), lastPaid: null };
const need = (open: number, given: Partial<Need> = {}): Need => ({
  ...NO_NEED,
  open: decimal(open),
  ...given,
});

function means(
  logged: Observation,
  others: readonly Observation[],
  wanted: Need = NO_NEED,
  given = valuation(),
) {
  return whatItMeans(TODAY, logged, others, SHEET, given, wanted);
}
const elsewhere = (amount: string, ago = 3, given: Partial<Observation> = {}) =>
  observation(amount, { storeId: "far", seenOn: daysAgo(ago), ...given });

describe("a price just logged", () => {
  const special = observation("20.00", { terms: "special" });

  test("stands against the best offer of the other stores", () => {
    const { againstBestElsewhere } = means(special, [elsewhere("25.00"), observation("10.00")], need(38));
    expect(text(againstBestElsewhere?.difference ?? null)).toBe("-5");
    expect(againstBestElsewhere?.percent?.toString()).toBe("-20");
  });

  test("covers what is open, and says what that costs here and elsewhere", () => {
    const found = means(special, [elsewhere("25.00")], need(38));
    expect([found.covers.toString(), text(found.totalHere), text(found.totalElsewhere)]).toEqual([
      "38",
      "760",
      "950",
    ]);
    expect(text(found.totalDifference)).toBe("-190");
  });

  test("of a limited number covers no more than that", () => {
    const found = means({ ...special, maxQuantity: decimal(6) }, [elsewhere("25.00")], need(38));
    expect([found.covers.toString(), text(found.totalDifference)]).toEqual(["6", "-30"]);
  });

  test("of used ones covers what may be used", () => {
    const used = observation("20.00", { terms: "used" });
    expect(means(used, [], need(38)).covers.toString()).toBe("0");
    expect(means(used, [], need(38, { openUsed: decimal(10) })).covers.toString()).toBe("10");
  });

  test("with nothing else on offer stands against nothing", () => {
    const found = means(special, [], need(38));
    expect([found.againstBestElsewhere, found.totalElsewhere, found.totalDifference]).toEqual([
      null,
      null,
      null,
    ]);
    expect(text(found.totalHere)).toBe("760");
  });

  test("elsewhere to be had for a part only is compared by no total", () => {
    const found = means(special, [elsewhere("25.00", 3, { maxQuantity: decimal(6) })], need(38));
    expect([found.againstBestElsewhere, found.totalElsewhere]).toEqual([null, null]);
  });

  test("stands against the going price without itself", () => {
    const shelf = observation("20.00");
    expect(text(means(shelf, [elsewhere("25.00")]).againstGoing?.difference ?? null)).toBe("-5");
    expect(means(shelf, []).againstGoing).toBeNull();
  });

  test("stands against what was last paid", () => {
    const found = means(special, [], need(38, { lastPaid: money("18.50", "CAD") }));
    expect(text(found.againstLastPaid?.difference ?? null)).toBe("1.5");
  });

  test("with nothing open is compared for the least that can be bought", () => {
    const bulk = elsewhere("15.00", 3, { minQuantity: decimal(10) });
    expect(text(means(special, [elsewhere("25.00"), bulk]).againstBestElsewhere?.other ?? null)).toBe("25");
  });

  test("for a minimum is compared for that many", () => {
    const break_ = observation("17.00", { terms: "quantity-break", minQuantity: decimal(10) });
    const bulk = elsewhere("15.00", 3, { terms: "quantity-break", minQuantity: decimal(10) });
    expect(text(means(break_, [elsewhere("25.00"), bulk]).againstBestElsewhere?.other ?? null)).toBe("15");
  });

  test("that is a receipt covers nothing", () => {
    const found = means(observation("20.00", { terms: "paid" }), [elsewhere("25.00")], need(38));
    expect([found.covers.toString(), found.totalHere]).toEqual(["0", null]);
  });

  test("before import charges covers nothing and is marked", () => {
    const there = valuation({
      stores: [store("near", { taxRegion: "US-ME", currency: "USD" }), store("far")],
      rates: [rate(TODAY, "USD", "CAD", "1.40")],
    });
    const found = means(observation("10.00", { currency: "USD" }), [elsewhere("25.00")], need(38), there);
    expect([found.beforeImportCharges, found.covers.toString(), found.totalHere]).toEqual([true, "0", null]);
  });

  test("that cannot be valued says why and is compared with nothing", () => {
    const found = means(observation("10.00", { currency: "USD" }), [elsewhere("25.00")], need(38));
    expect(found.price).toEqual({ known: false, reason: "rate-unknown" });
    expect([found.againstBestElsewhere, found.againstGoing, found.totalHere]).toEqual([null, null, null]);
  });
});
