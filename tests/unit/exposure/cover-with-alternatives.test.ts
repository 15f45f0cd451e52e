import { describe, expect, test } from "vitest";
import { decimal, ONE, ZERO } from "../../../lib/decimal.ts";
import { coverWithAlternatives, type StandIn } from "../../../lib/exposure/cover-with-alternatives.ts";
import type { Offer } from "../../../lib/prices/offer.ts";
import { offerAt } from "../../support/price-example.ts";

const other = (...given: Parameters<typeof offerAt>) =>
  offerAt(given[0], given[1], { materialId: "other", ...given[2] });
const standIn = (factor: string, ...offers: Offer[]): StandIn => ({ factor: decimal(factor), offers });

function cover(offers: readonly Offer[], alternatives: readonly StandIn[], quantity: string) {
  const found = coverWithAlternatives(offers, alternatives, decimal(quantity), {
    step: ONE,
    used: ZERO,
    currency: "CAD",
  });
  return {
    cost: found.cost.amount.toFixed(2),
    takes: found.takes.map(
      (take) => `${take.quantity} ${take.offer.materialId} at ${take.offer.price.amount}`,
    ),
    over: found.over.toFixed(4),
    uncovered: found.uncovered.toFixed(4),
  };
}

describe("a cover with an alternative", () => {
  test("mixes the two where that costs least: a pack of the other, the rest of the material itself", () => {
    expect(cover([offerAt("3.00")], [standIn("1", other("1.00", { pack: 10 }))], "12")).toMatchObject({
      cost: "16.00",
      takes: ["10 other at 1", "2 sheet at 3"],
    });
  });

  test("takes as many of the other as its factor asks for", () => {
    expect(cover([], [standIn("1.5", other("2.00"))], "4")).toMatchObject({ cost: "12.00", over: "0.0000" });
  });

  test("buys whole ones of the other and says what is over, in the material's own units", () => {
    expect(cover([], [standIn("1.5", other("2.00"))], "3")).toEqual({
      cost: "10.00",
      takes: ["5 other at 2"],
      over: "0.3333",
      uncovered: "0.0000",
    });
  });

  test("keeps the other's own maximum and minimum", () => {
    const limited = standIn("2", other("1.00", { max: 6 }), other("1.40", { min: 8 }));
    expect(cover([offerAt("3.00")], [limited], "10")).toMatchObject({
      cost: "25.60",
      takes: ["6 other at 1", "14 other at 1.4"],
    });
  });

  test("takes the other's minimum where that is more than it needs", () => {
    expect(cover([], [standIn("2", other("1.00", { min: 8 }))], "3")).toMatchObject({
      cost: "8.00",
      over: "1.0000",
    });
  });

  test("says what no offer of either covers", () => {
    const few = [offerAt("3.00", { max: 2 })];
    expect(cover(few, [standIn("2", other("1.00", { max: 5 }))], "10")).toMatchObject({
      uncovered: "5.5000",
    });
  });

  test("prefers a fresh offer of the other to a stale one of the material", () => {
    const stale = offerAt("1.00", {}, { stale: true, ageDays: 40 });
    expect(cover([stale], [standIn("1", other("5.00"))], "2")).toMatchObject({ cost: "10.00" });
  });

  test("adds up from the offers' own prices, to the half cent", () => {
    expect(cover([], [standIn("3", other("0.335"))], "1")).toMatchObject({ cost: "1.01" });
  });

  test("without an offer of the other is the plain cover", () => {
    expect(cover([offerAt("3.00")], [standIn("2")], "4")).toMatchObject({ cost: "12.00" });
  });
});
