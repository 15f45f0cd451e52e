import { describe, expect, test } from "vitest";
import { type Decimal, decimal, roundHalfUp } from "../../lib/decimal.ts";
import { exposure } from "../../lib/exposure/exposure.ts";
import { convertFor, roundUpToPurchase } from "../../lib/materials/convert.ts";
import { boughtAlone } from "../../lib/prices/bought-alone.ts";
import { cheapestCover } from "../../lib/prices/cheapest-cover.ts";
import type { Observation } from "../../lib/prices/observation.ts";
import { offersOn } from "../../lib/prices/offers.ts";
import type { RequirementRevision } from "../../lib/projects/project.ts";
import { requiredOn } from "../../lib/projects/required.ts";
import { fromCatalogue } from "../support/catalogue-material.ts";
import { figuresIn } from "../support/figures-in.ts";
import { day, fee, observation, SHEET, TODAY, valuation } from "../support/price-example.ts";
import { lumber } from "../support/some-material.ts";
import { eventOf, factsOf, lotOf, needOf, revisionOf } from "../support/stock-example.ts";

// Mistakes a plain price list makes, N1 to N25 of the trade facts, here those about quantities. Each row: common practice
// of the trade for what is right, its arithmetic derived, exact to the printed digits unless the row says otherwise.
const cents = (value: Decimal | undefined) => (value === undefined ? null : roundHalfUp(value, 2).toFixed(2));
const terms = { step: decimal(1), used: decimal(0), currency: "CAD" } as const;

function offersOf(seen: readonly Observation[]) {
  return offersOn(TODAY, seen, SHEET, valuation()).offers;
}
function finish(
  quantity: number,
  observations: readonly Observation[],
  given: Partial<RequirementRevision> = {},
) {
  const requirements = [needOf("a", revisionOf(quantity, given))];
  return exposure(TODAY, factsOf({ requirements, observations }));
}

describe("how many", () => {
  // N6. 8 x 13.50 = 108.00; 10 x 12.00 = 120.00; never 8 x 12.00 = 96.00.
  test("N6 a price for ten and more is not the price of eight", () => {
    const seen = [
      observation("12.00", { terms: "quantity-break", minQuantity: decimal(10) }),
      observation("13.50"),
    ];
    const cover = cheapestCover(offersOf(seen), decimal(8), terms);
    expect(cents(cover.cost.amount)).toBe("108.00");
    const ten = cheapestCover(offersOf(seen.slice(0, 1)), decimal(8), terms);
    expect([cents(ten.cost.amount), ten.over.toString()]).toEqual(["120.00", "2"]);
    const whole = finish(8, seen);
    expect(cents(whole.totals.costToFinish.amount)).toBe("108.00");
    expect(figuresIn([cover, ten, whole])).not.toContain("96.00");
  });

  // N11. 1,100 / 32 = 34.375, up to 35; rounded first it would be 31 x 1.1, about 34.
  test("N11 waste is added before rounding to whole sheets", () => {
    const need = needOf("a", revisionOf(1000, { unit: "square-foot", wastePercent: decimal(10) }));
    const required = requiredOn(need, TODAY, SHEET);
    if (!required.known) throw new Error(required.reason);
    expect(required.quantity.toString()).toBe("34.375");
    expect(roundUpToPurchase(required.quantity, required.unit).toString()).toBe("35");
    const whole = finish(1000, [observation("1.00")], { unit: "square-foot", wastePercent: decimal(10) });
    expect(cents(whole.totals.costToFinish.amount)).toBe("35.00");
    expect(figuresIn(whole)).not.toContain("34.00");
  });

  // N12; dressed size of a 2x4, 1-1/2 x 3-1/2 in: PS 20 (read). Cubic metres to five decimals.
  test("N12 the volume of a 2x4 of 8 ft comes from its actual size, 0.00826 cubic metres", () => {
    const volume = (material: ReturnType<typeof lumber>) => {
      const read = convertFor(material, { value: decimal(1), unit: "piece" }, "cubic-metre");
      return read.ok ? roundHalfUp(read.value, 5).toFixed() : read.reason;
    };
    expect(volume(lumber("2x4", "8 ft", ["1-1/2 in", "3-1/2 in"]))).toBe("0.00826");
    expect(volume(fromCatalogue("spruce-pine-fir-2x4-8-ft"))).toBe("0.00826");
    // By its name alone it has no volume: never 0.01259, which is 2 x 4 x 96 cubic inches.
    expect(volume(lumber("2x4", "8 ft"))).toBe("actual-size-unknown");
  });

  // N20. 42 x 36.00 = 1,512.00, fifteen left; naive 27 x 36.00 = 972.00. The unit price is made up.
  test("N20 27 bundles sold by the pallet of 42 only cost 42, with 15 left to value", () => {
    const pallet = [observation("36.00", { packSize: decimal(42) })];
    const whole = finish(27, pallet);
    const pool = whole.projects[0]?.pools[0];
    expect([cents(pool?.cost.amount), pool?.over.toString()]).toEqual(["1512.00", "15"]);
    expect(figuresIn([whole, cheapestCover(offersOf(pallet), decimal(27), terms)])).not.toContain("972.00");
  });
});

describe("what comes with the order", () => {
  // N19. 28 x 19.20 + 85.00 = 622.60; 28 x 21.48 = 601.44; naive 537.60 wins.
  test("N19 delivery is part of the comparison: 28 at 21.48 free beat 28 at 19.20 and 85.00", () => {
    const delivery = fee("delivery", { amount: decimal(85), basis: "order" });
    const offers = offersOf([
      observation("19.20", { fees: [delivery] }),
      observation("21.48", { storeId: "far" }),
    ]);
    const best = boughtAlone(offers, decimal(28), terms);
    expect([best.cover.takes[0]?.offer.storeId, cents(best.total.amount)]).toEqual(["far", "601.44"]);
    expect(figuresIn(best)).not.toContain("537.60");
    const near = boughtAlone(
      offers.filter(({ storeId }) => storeId === "near"),
      decimal(28),
      terms,
    );
    expect(cents(near.total.amount)).toBe("622.60");
    const delivered = finish(28, [observation("19.20", { fees: [delivery] })]).totals;
    expect(cents(delivered.estimateAtCompletion.amount)).toBe("622.60");
  });

  // N18; X7 of the trade facts: need 100, 45 paid at 18, 25 quoted at 20, the rest at 22. 810 + 55 x 22 = 2,020.
  test("N18 a quote that lapsed unused is locked in no more: 2,020.00 and not 1,970.00", () => {
    const requirements = [needOf("a", revisionOf(100))];
    const lots = [lotOf(45, 810)];
    const events = [eventOf("allocated", 45, "2026-01-06", { requirementId: "a" })];
    const quote = (until: string) =>
      observation("20.00", {
        terms: "quote",
        until: day(until),
        maxQuantity: decimal(25),
        seenOn: day("2026-02-20"),
      });
    const at = (until: string) =>
      exposure(
        TODAY,
        factsOf({ requirements, lots, events, observations: [observation("22.00"), quote(until)] }),
      );
    expect(cents(at("2026-03-02").totals.estimateAtCompletion.amount)).toBe("1970.00");
    const lapsed = at("2026-03-01");
    expect(cents(lapsed.totals.estimateAtCompletion.amount)).toBe("2020.00");
    expect(figuresIn(lapsed)).not.toContain("1970.00");
  });
});
