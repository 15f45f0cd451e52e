import { describe, expect, test } from "vitest";
import { decimal, ONE, ZERO } from "../../../lib/decimal.ts";
import { exposure } from "../../../lib/exposure/exposure.ts";
import { money } from "../../../lib/money/money.ts";
import { cheapestCover } from "../../../lib/prices/cheapest-cover.ts";
import { packOfFree } from "../../../lib/prices/free-with-bought.ts";
import { goingPriceOn } from "../../../lib/prices/going-price.ts";
import { offersOn } from "../../../lib/prices/offers.ts";
import { savings } from "../../../lib/savings/savings.ts";
import { observation, SHEET, TODAY, valuation } from "../../support/price-example.ts";
import { eventOf, factsOf, lotOf, needOf, revisionOf } from "../../support/stock-example.ts";

const twoAndOne = { paid: decimal(2), free: ONE };
const tag = { amount: decimal(10), per: ONE };

/** "Buy 2, get 1 free" at 10.00 each, as it is kept. */
const { amount, per, packSize } = packOfFree(tag, twoAndOne);
const pack = observation(null, {
  terms: "special",
  amount: money(amount, "CAD"),
  per: { quantity: per, unit: "sheet" },
  packSize,
});
const single = observation("10.00");

/** How many packs, how many single ones, what they cost and what is left over. */
function bought(quantity: number, seen = [pack, single]) {
  const { offers } = offersOn(TODAY, seen, SHEET, valuation());
  const cover = cheapestCover(offers, decimal(quantity), { step: ONE, used: ZERO, currency: "CAD" });
  const of = (terms: string) =>
    cover.takes.find(({ offer }) => offer.terms === terms)?.quantity.toNumber() ?? 0;
  const figures = [cover.cost.amount.toFixed(2), cover.over.toNumber(), cover.uncovered.toNumber()];
  return [of("special") / 3, of("shelf"), ...figures];
}

describe("buy two, get one free, at 10.00 each", () => {
  test("is three for 20.00, in packs of three", () => {
    expect([amount, per, packSize].map(String)).toEqual(["20", "3", "3"]);
  });

  test.each([
    [1, 0, 1, "10.00", 0],
    [2, 0, 2, "20.00", 0],
    [3, 1, 0, "20.00", 0],
    [4, 1, 1, "30.00", 0],
    [5, 1, 2, "40.00", 0],
    [6, 2, 0, "40.00", 0],
    [7, 2, 1, "50.00", 0],
    [38, 12, 2, "260.00", 0],
  ])("%i are %i packs and %i single ones: %s, %i over", (quantity, packs, singles, cost, over) => {
    expect(bought(quantity)).toEqual([packs, singles, cost, over, 0]);
  });

  test("where single ones are not sold, or their price was not seen, four are two packs with two over", () => {
    expect(bought(4, [pack])).toEqual([2, 0, "40.00", 2, 0]);
  });

  test("where single ones are dearer elsewhere, two are a pack with one over", () => {
    expect(bought(2, [pack, observation("10.50", { storeId: "far" })])).toEqual([1, 0, "20.00", 1, 0]);
  });

  test("does not end the price of one, nor become the going price", () => {
    const going = goingPriceOn(TODAY, [pack, single], SHEET, valuation());
    expect(going.known && going.price.amount.toFixed(2)).toBe("10.00");
  });

  test("of a tag by the two is the same offer", () => {
    const byTwo = packOfFree({ amount: decimal("19.98"), per: decimal(2) }, twoAndOne);
    expect([byTwo.amount, byTwo.per, byTwo.packSize].map(String)).toEqual(["39.96", "6", "3"]);
  });

  test("with nothing paid for, or nothing free, is a mistake of the program", () => {
    expect(() => packOfFree(tag, { paid: ZERO, free: ONE })).toThrow(RangeError);
    expect(() => packOfFree(tag, { paid: ONE, free: ZERO })).toThrow(RangeError);
  });
});

describe("what is left of a pack", () => {
  const requirements = [needOf("a", revisionOf(2))];

  test("is shown as a quantity to come, and makes neither cost to finish smaller nor a saving", () => {
    const whole = exposure(TODAY, factsOf({ requirements, observations: [pack] }));
    const pool = whole.projects[0]?.pools[0];
    expect([pool?.over.toString(), pool?.cost.amount.toFixed(2)]).toEqual(["1", "20.00"]);
    expect(
      [whole.totals.costToFinish, whole.totals.unrealisedSaving].map((one) => one?.amount.toFixed(2)),
    ).toEqual(["20.00", "0.00"]);
  });

  test("once bought is free stock at a third of the cost, without a saving of its own", () => {
    const forNeed = { requirementId: "a" };
    const facts = factsOf({
      requirements,
      lots: [lotOf(3, 20, { terms: "special" })],
      events: [eventOf("allocated", 2, "2026-01-06", forNeed)],
      observations: [single],
    });
    const { rows } = savings(null, null, TODAY, facts);
    // Two at 10.00 less two thirds of 20.00; the third sheet makes no row.
    expect(
      rows.map(({ quantity, paid, saving }) => [quantity, paid?.amount, saving?.amount].map(String)),
    ).toEqual([["2", "13.33", "6.67"]]);
  });
});
