import { describe, expect, test } from "vitest";
import { decimal } from "../../lib/decimal.ts";
import type { Quantity } from "../../lib/measure/units.ts";
import { movingAverageCost, periodicAverageCost } from "../../lib/stock/average-cost.ts";
import type { CostedFlow, CostFlow } from "../../lib/stock/cost-flow.ts";
import { costFlow } from "../../lib/stock/cost-flow.ts";
import { costByMethod } from "../../lib/stock/cost-methods.ts";
import { fifoCost } from "../../lib/stock/fifo-cost.ts";
import { loadWeight } from "../../lib/stock/load-weight.ts";
import { suggestedRefund } from "../../lib/stock/refund.ts";
import { CANADA } from "../../lib/tax/regions-ca.ts";
import { day, SHEET, store, TODAY, valuation } from "../support/price-example.ts";
import { cad, eventOf, lotOf, paid } from "../support/stock-example.ts";

// A financial accounting textbook's perpetual table (read): 10 on hand at 91; 15 at 106; 20 used; 20 at 115; 10 at 119; 23 used. The book
// prints first in, first out in whole units of money: 1,970 and 2,600 used, 1,420 left. The averages are derived from the same
// data: (910 + 1,590) / 25 = 100, then (500 + 2,300 + 1,190) / 35 = 114; over the period 5,990 / 55 = 108.9091.
// IAS 2, paragraphs 25 and 27 (read), names first in, first out and the weighted average, moving or periodic.
const FLOW: CostFlow = (
  [
    ["in", "2026-01-01", 10, 91],
    ["in", "2026-01-05", 15, 106],
    ["out", "2026-01-10", 20],
    ["in", "2026-01-15", 20, 115],
    ["in", "2026-01-20", 10, 119],
    ["out", "2026-01-25", 23],
  ] as const
).map(([way, on, quantity, each], at) => {
  const shared = { id: `${at}`, on: day(on), quantity: decimal(quantity) };
  return way === "in" ? { way, ...shared, cost: cad(quantity * (each ?? 0)) } : { way, ...shared };
});

function figures({ issues, left }: CostedFlow) {
  return [...issues.map(({ cost }) => cost.amount.toFixed(2)), left.cost.amount.toFixed(2)];
}

describe("what was used and what is left of interchangeable goods", () => {
  test("first in, first out: 1,970, 2,600, and 1,420 left (read)", () => {
    expect(figures(fifoCost(FLOW, "CAD"))).toEqual(["1970.00", "2600.00", "1420.00"]);
  });

  test("moving average: 2,000, 2,622, and 1,368 left (derived)", () => {
    expect(figures(movingAverageCost(FLOW, "CAD"))).toEqual(["2000.00", "2622.00", "1368.00"]);
  });

  test("periodic average: 4,683.09 used, and 1,306.91 left (derived)", () => {
    const [first, second, left] = figures(periodicAverageCost(FLOW, "CAD"));
    expect(
      decimal(first ?? 0)
        .plus(second ?? 0)
        .toFixed(2),
    ).toBe("4683.09");
    expect(left).toBe("1306.91");
  });

  test("55 units for 5,990 came in, and that is what was used and what is left, by every method (derived)", () => {
    for (const method of [fifoCost, movingAverageCost, periodicAverageCost]) {
      const { issues, left } = method(FLOW, "CAD");
      const cost = issues.reduce((sum, one) => sum.plus(one.cost.amount), left.cost.amount);
      const quantity = issues.reduce((sum, one) => sum.plus(one.quantity), left.quantity);
      expect([cost.toFixed(), quantity.toFixed()]).toEqual(["5990", "55"]);
    }
  });

  test("the same from lots and what was drawn of them", () => {
    const lots = [
      { lot: lotOf(10, 0, { id: "a", orderedOn: day("2026-01-01") }), cost: cad(910), events: [] },
      { lot: lotOf(15, 0, { id: "b", orderedOn: day("2026-01-05") }), cost: cad(1590), events: [] },
    ].map((one) => ({
      ...one,
      events: [{ ...eventOf("drawn", 10, "2026-01-10"), lotId: one.lot.id }],
    }));
    expect(figures(fifoCost(costFlow(lots, TODAY), "CAD"))).toEqual(["910.00", "1060.00", "530.00"]);
  });
});

test("the lots' own costs stand beside the formulas, and come to what came in as they do", () => {
  const lots = [
    lotOf(10, 910, { id: "a", orderedOn: day("2026-01-01") }),
    lotOf(15, 1590, { id: "b", orderedOn: day("2026-01-05") }),
  ];
  // All twenty from the second lot and the first: fifteen at 106, five at 91.
  const events = [
    { ...eventOf("drawn", 15, "2026-01-10"), lotId: "b" },
    { ...eventOf("drawn", 5, "2026-01-10"), lotId: "a" },
  ];
  const found = costByMethod(SHEET, { lots, events }, valuation(), TODAY);
  if (!found.known) throw new Error("every cost is known");
  expect(found.came.cost.amount.toFixed(2)).toBe("2500.00");
  expect(figures(found.methods["own-cost"])).toEqual(["1590.00", "455.00", "455.00"]);
  expect(figures(found.methods["first-in-first-out"])).toEqual(["1440.00", "530.00", "530.00"]);
});

test("two at 20.00 handed back, 15 % kept, 13 % tax on what is left: 34.00 + 4.42 = 38.42 (trade.md T23, derived)", () => {
  const stores = [store("near", { taxRegion: "CA-ON" })];
  const lot = lotOf(2, 0, { paid: paid("40.00") });
  const found = suggestedRefund(lot, SHEET, valuation({ stores, regions: CANADA }), decimal(2), {
    percent: decimal(15),
  });
  if (!found.known) throw new Error(found.reason);
  expect([found.net, found.tax, found.refund].map(({ amount }) => amount.toFixed(2))).toEqual([
    "34.00",
    "4.42",
    "38.42",
  ]);
});

// Building-materials weights (trade.md W18, W25, W28): plywood 3.0 psf per inch (read, quoted rule), drywall 1/2 in 1.6 psf (read);
// 4x8 ft sheets; kilograms printed to 0.01.
test.each([
  ["plywood 1/2 in", "48", 1, "21.77"],
  ["drywall 1/2 in", "51.2", 1, "23.22"],
  ["fifty sheets of plywood 1/2 in", "48", 50, "1088.62"],
])("%s weighs %s lb each: %i are %s kg", (_name, pounds, quantity, kilograms) => {
  const weight: Quantity = { value: decimal(pounds), unit: "pound" };
  const material = { ...SHEET, dimensions: { ...SHEET.dimensions, weight } };
  expect(loadWeight([{ material, quantity: decimal(quantity) }]).kilograms.toFixed(2)).toBe(kilograms);
});
