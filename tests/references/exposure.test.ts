import { describe, expect, test } from "vitest";
import { decimal } from "../../lib/decimal.ts";
import { exposure } from "../../lib/exposure/exposure.ts";
import type { Observation } from "../../lib/prices/observation.ts";
import type { RequirementRevision } from "../../lib/projects/project.ts";
import { day, observation, rate, TODAY, UNTAXED, valuation } from "../support/price-example.ts";
import { cad, eventOf, factsOf, lotOf, needOf, revisionOf } from "../support/stock-example.ts";

const text = (value: { amount: { toFixed: (places: number) => string } } | null | undefined) =>
  value?.amount.toFixed(2) ?? null;
const forNeed = { requirementId: "a" };

// Derived by exact arithmetic from the usual definitions (estimate at completion = actual + what is left, budget less
// estimate: read in project-management texts; what is ordered at a fixed price stands apart: common practice).
describe("need 100: 45 paid at 18, 25 ordered at 20, 30 open at 22, budget 21", () => {
  const lots = [lotOf(45, 810), lotOf(25, 500, { id: "ordered", receipts: [] })];
  const events = [
    eventOf("allocated", 45, "2026-01-06", forNeed),
    eventOf("allocated", 25, "2026-01-06", { ...forNeed, lotId: "ordered" }),
  ];
  const requirements = [needOf("a", revisionOf(100, { budgetUnitPrice: cad(21) }))];
  const at = (price: string) =>
    exposure(TODAY, factsOf({ requirements, lots, events, observations: [observation(price)] })).projects[0];

  test("locks in 810 and 500, of which 25 sheets are still to come", () => {
    expect([text(at("22.00")?.totals.lockedCost), at("22.00")?.lines[0]?.onOrder.toNumber()]).toEqual([
      "1310.00",
      25,
    ]);
  });

  test("has 660 open", () => {
    expect(text(at("22.00")?.totals.costToFinish)).toBe("660.00");
  });

  test("is estimated at 1,970 against 2,100: 130 under", () => {
    const totals = at("22.00")?.totals;
    expect([totals?.estimateAtCompletion, totals?.budget, totals?.variance].map(text)).toEqual([
      "1970.00",
      "2100.00",
      "130.00",
    ]);
  });

  test("swings by 66 for every ten per cent: what is locked in has no price left to move", () => {
    expect(text(at("22.00")?.totals.tenPercent)).toBe("66.00");
    expect(text(at("24.20")?.totals.estimateAtCompletion)).toBe("2036.00");
    expect(text(at("19.80")?.totals.estimateAtCompletion)).toBe("1904.00");
  });

  test("is 230 to the good at 22, which is 2,200 less 1,970", () => {
    const totals = at("22.00")?.totals;
    expect(text(totals?.unrealisedSaving)).toBe("230.00");
    expect(2200 - Number(text(totals?.estimateAtCompletion))).toBe(230);
  });

  test("is 120 to the bad when the market falls to 17, and says so", () => {
    expect(text(at("17.00")?.totals.unrealisedSaving)).toBe("-120.00");
  });

  // A quote is locked in until its end only, and only once ordered (common practice).
  test("with the 25 only quoted, and the quote lapsed unused, is estimated at 2,020", () => {
    const quoted = (until: string) => [
      observation("22.00"),
      observation("20.00", {
        terms: "quote",
        until: day(until),
        maxQuantity: decimal(25),
        seenOn: day("2026-02-20"),
      }),
    ];
    const estimate = (until: string) =>
      text(
        exposure(
          TODAY,
          factsOf({ requirements, lots, events: events.slice(0, 1), observations: quoted(until) }),
        ).totals.estimateAtCompletion,
      );
    expect([estimate("2026-03-02"), estimate("2026-03-01")]).toEqual(["1970.00", "2020.00"]);
  });
});

// Mistakes of the trade, derived by exact arithmetic; each named with what a careless reading gives.
describe("what finishing costs", () => {
  const finish = (
    quantity: number,
    observations: readonly Observation[],
    given: Partial<RequirementRevision> = {},
  ) => {
    const requirements = [needOf("a", revisionOf(quantity, given))];
    return exposure(TODAY, factsOf({ requirements, observations })).projects[0]?.pools[0];
  };

  test("eight, at 13.50 or 12.00 from ten up, cost 108.00, not 96.00", () => {
    const ten = observation("12.00", { terms: "quantity-break", minQuantity: decimal(10) });
    expect(text(finish(8, [observation("13.50"), ten])?.cost)).toBe("108.00");
  });

  test("nine of them cost 120.00: ten at 12.00 are cheaper than nine at 13.50, with one over", () => {
    const ten = observation("12.00", { terms: "quantity-break", minQuantity: decimal(10) });
    const pool = finish(9, [observation("13.50"), ten]);
    expect([text(pool?.cost), pool?.over.toNumber()]).toEqual(["120.00", 1]);
  });

  test("27 bundles sold by pallets of 42 cost 42, with 15 left over", () => {
    const pool = finish(27, [observation("10.00", { packSize: decimal(42) })]);
    expect([text(pool?.cost), pool?.over.toNumber()]).toEqual(["420.00", 15]);
  });

  test("1,000 square feet and 10 % waste are 35 sheets of 32, not 34", () => {
    const pool = finish(1000, [observation("1.00")], { unit: "square-foot", wastePercent: decimal(10) });
    expect(pool?.quantity.toNumber()).toBe(35);
  });

  test("12.10 US dollars seen at 1.35 cost 16.58 at today's 1.37", () => {
    const rates = [rate("2026-01-20", "USD", "CAD", "1.35"), rate("2026-03-02", "USD", "CAD", "1.37")];
    const requirements = [needOf("a", revisionOf(1))];
    const observations = [observation("12.10", { currency: "USD", seenOn: day("2026-02-20") })];
    const known = valuation({ rates, regions: [UNTAXED] });
    const found = exposure(TODAY, factsOf({ requirements, observations, valuation: known }));
    expect(text(found.totals.costToFinish)).toBe("16.58");
  });

  test("28 at 19.20 with 85.00 delivery are estimated at 622.60, not 537.60", () => {
    const fees = [
      {
        name: "delivery",
        amount: decimal(85),
        percent: null,
        basis: "order",
        freeFrom: null,
        taxable: false,
      },
    ] as const;
    const requirements = [needOf("a", revisionOf(28))];
    const found = exposure(TODAY, factsOf({ requirements, observations: [observation("19.20", { fees })] }));
    expect([found.totals.costToFinish, found.totals.estimateAtCompletion].map(text)).toEqual([
      "537.60",
      "622.60",
    ]);
  });
});
