import { describe, expect, test } from "vitest";
import { type Decimal, decimal, ONE, ZERO } from "../../../lib/decimal.ts";
import { money } from "../../../lib/money/money.ts";
import { cheapestCover } from "../../../lib/prices/cheapest-cover.ts";
import type { Offer } from "../../../lib/prices/offer.ts";
import { offerAt } from "../../support/price-example.ts";

function cover(offers: readonly Offer[], quantity: number | Decimal, used: number | Decimal = 0) {
  return cheapestCover(offers, decimal(quantity), { step: ONE, used: decimal(used), currency: "CAD" });
}

/** What is taken, as "quantity x price", in the order taken. */
function taken(...given: Parameters<typeof cover>): string[] {
  return cover(...given).takes.map(({ offer, quantity }) => `${quantity} x ${offer.price.amount}`);
}
const cost = (...given: Parameters<typeof cover>) => cover(...given).cost.amount.toString();

test("one price covers all of it", () => {
  expect([taken([offerAt("20")], 38), cost([offerAt("20")], 38)]).toEqual([["38 x 20"], "760"]);
});

test("three for 20.00 makes 38 cost 253.33: rounded once, at the end", () => {
  expect(cost([offerAt(decimal(20).dividedBy(3))], 38)).toBe("253.33");
});

test("nothing is bought where nothing is needed", () => {
  expect([taken([offerAt("20")], 0), cost([offerAt("20")], 0)]).toEqual([[], "0"]);
});

test("no offer leaves all of it uncovered", () => {
  const none = cover([], 38);
  expect([none.uncovered.toString(), none.cost.amount.toString()]).toEqual(["38", "0"]);
});

describe("offers combined", () => {
  test("a limited cheap one first, the rest elsewhere", () => {
    expect(taken([offerAt("20"), offerAt("12", { max: 6 })], 38)).toEqual(["6 x 12", "32 x 20"]);
  });

  test("what all of them cannot cover stays open", () => {
    const part = cover([offerAt("20", { max: 10 }), offerAt("12", { max: 6 })], 38);
    expect([part.uncovered.toString(), part.cost.amount.toString()]).toEqual(["22", "272"]);
  });

  test("a minimum is bought for when it still is the cheaper", () => {
    const break_ = offerAt("12", { min: 10 });
    expect(taken([offerAt("13.50"), break_], 8)).toEqual(["8 x 13.5"]);
    expect(taken([offerAt("16"), break_], 8)).toEqual(["10 x 12"]);
  });

  test("one that would leave less than the other's minimum gives some up", () => {
    const limited = offerAt("10", { max: 6 });
    const bulk = offerAt("12", { min: 5 });
    expect(taken([limited, bulk, offerAt("100")], 10)).toEqual(["5 x 10", "5 x 12"]);
  });

  test("whole packs: 27 bundles of a pallet of 42 are 42", () => {
    const pallet = cover([offerAt("30", { min: 42, pack: 42 })], 27);
    expect([pallet.takes[0]?.quantity.toString(), pallet.over.toString()]).toEqual(["42", "15"]);
  });

  test("packs of two kinds meet the quantity exactly where that is the cheapest", () => {
    expect(taken([offerAt("10", { pack: 5 }), offerAt("10.50", { pack: 3 })], 11)).toEqual([
      "5 x 10",
      "6 x 10.5",
    ]);
  });
});

describe("more than needed", () => {
  test("is taken where it is cheaper, and shown as over", () => {
    const more = cover([offerAt("10"), offerAt("8", { min: 50 })], 45);
    expect([more.cost.amount.toString(), more.over.toString()]).toEqual(["400", "5"]);
  });

  test("is not taken at the same total, however fresh it is", () => {
    const single = offerAt("10", {}, { ageDays: 9, distanceKm: decimal(900) });
    const bulk = offerAt("9", { min: 50 }, { distanceKm: ZERO });
    expect(taken([single, bulk], 45)).toEqual(["45 x 10"]);
  });
});

describe("a stale offer", () => {
  const stale = { stale: true, ageDays: 60 };

  test("is not used while a fresh one covers all, however cheap it is", () => {
    expect(taken([offerAt("20"), offerAt("5", {}, stale)], 38)).toEqual(["38 x 20"]);
  });

  test("is used for the part that no fresh one covers, and its cost is named", () => {
    const mixed = cover([offerAt("20", { max: 30 }), offerAt("5", {}, stale)], 38);
    expect(mixed.takes.map(({ quantity }) => quantity.toString())).toEqual(["30", "8"]);
    expect(mixed.restsOnStale.amount.toString()).toBe("40");
  });

  test("alone covers all of it, all of it resting on stale prices", () => {
    const all = cover([offerAt("5", {}, stale)], 38);
    expect([all.cost.amount.toString(), all.restsOnStale.amount.toString()]).toEqual(["190", "190"]);
  });

  test("is not used while a fresh one covers all by its minimum", () => {
    expect(taken([offerAt("20", { min: 50 }), offerAt("5", {}, stale)], 38)).toEqual(["50 x 20"]);
  });
});

describe("a used one", () => {
  const used = { terms: "used" } as const;

  test("does not count where used ones are not accepted", () => {
    expect(taken([offerAt("20"), offerAt("5", {}, used)], 38)).toEqual(["38 x 20"]);
    expect(cover([offerAt("5", {}, used)], 38).uncovered.toString()).toBe("38");
  });

  test("counts for the part of which used ones are accepted", () => {
    expect(taken([offerAt("20"), offerAt("5", {}, used)], 38, 10)).toEqual(["28 x 20", "10 x 5"]);
  });

  test("counts for all where all may be used", () => {
    expect(taken([offerAt("20"), offerAt("5", {}, used)], 38, 38)).toEqual(["38 x 5"]);
  });

  test("counts once against what may be used, fresh and stale together", () => {
    const fresh = offerAt("5", { max: 3 }, used);
    const stale = offerAt("1", {}, { ...used, stale: true });
    const both = cover([fresh, stale], 10, 5);
    expect(both.takes.map(({ quantity }) => quantity.toString())).toEqual(["3", "2"]);
    expect(both.uncovered.toString()).toBe("5");
  });

  test("in a pack larger than what may be used covers no more than that", () => {
    const pack = offerAt("1", { pack: 8 }, used);
    const both = cover([offerAt("20"), pack], 10, 5);
    expect(both.takes.map(({ quantity }) => quantity.toString())).toEqual(["5", "8"]);
    expect(both.over.toString()).toBe("3");
  });
});

describe("of equal totals", () => {
  const first = (offers: readonly Offer[]) => cover(offers, 10).takes.map(({ offer }) => offer.storeId);

  test("the fresher counts", () => {
    const old = offerAt("20", {}, { storeId: "old", ageDays: 9 });
    const fresh = offerAt("20", {}, { storeId: "fresh", ageDays: 3, distanceKm: decimal(900) });
    expect([first([old, fresh]), first([fresh, old])]).toEqual([["fresh"], ["fresh"]]);
  });

  test("and as fresh, the nearer", () => {
    const far = offerAt("20", {}, { storeId: "far", distanceKm: decimal("7.2") });
    const near = offerAt("20", {}, { storeId: "near", distanceKm: decimal("7.1") });
    expect([first([far, near]), first([near, far])]).toEqual([["near"], ["near"]]);
  });

  test("a store of no known distance is farther than any", () => {
    const unknown = offerAt("20", {}, { storeId: "unknown", distanceKm: null });
    const far = offerAt("20", {}, { storeId: "far", distanceKm: decimal(999_999_999) });
    expect(first([unknown, far])).toEqual(["far"]);
  });

  test("a cent's difference wins over freshness and nearness", () => {
    const cheaper = offerAt("19.99", {}, { storeId: "cheaper", ageDays: 29 });
    const nearer = offerAt("20", {}, { storeId: "nearer", distanceKm: ZERO });
    expect(first([cheaper, nearer])).toEqual(["cheaper"]);
  });
});

test("thousands of board feet are bought to the board foot", () => {
  const lumber = offerAt("400", { min: "0.001", pack: "0.001" });
  expect([taken([lumber], decimal("1.234")), cost([lumber], decimal("1.234"))]).toEqual([
    ["1.234 x 400"],
    "493.6",
  ]);
});

test("an offer in another currency is a mistake of the program", () => {
  const dollars = offerAt("20", {}, { price: money(20, "USD") });
  expect(() => cover([dollars, offerAt("20", { max: 1 })], 38)).toThrow("convert one of them");
});
