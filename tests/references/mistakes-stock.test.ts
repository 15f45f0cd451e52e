import { describe, expect, test } from "vitest";
import { decimal, ZERO } from "../../lib/decimal.ts";
import { exposure } from "../../lib/exposure/exposure.ts";
import { money } from "../../lib/money/money.ts";
import { allInPrice } from "../../lib/prices/all-in-price.ts";
import type { Observation } from "../../lib/prices/observation.ts";
import { savings } from "../../lib/savings/savings.ts";
import { lotAccount } from "../../lib/stock/lot-account.ts";
import { lotCost } from "../../lib/stock/lot-cost.ts";
import { CANADA } from "../../lib/tax/regions-ca.ts";
import { billTaxes } from "../../lib/tax/tax.ts";
import { billOf, billTerms, deposit, figuresOf, HST, lineAt } from "../support/bill-example.ts";
import { figuresIn } from "../support/figures-in.ts";
import { component, day, observation, SHEET, store, TODAY, valuation } from "../support/price-example.ts";
import { amounts, rows } from "../support/saving-example.ts";
import { cad, eventOf, factsOf, lotOf, needOf, revisionOf } from "../support/stock-example.ts";

// Mistakes a plain price list makes, N1 to N25 of the trade facts, here those about what was bought, taxed and saved. Each
// row: common practice of the trade for what is right, its arithmetic derived, exact to the cent unless the row says
// otherwise.
const forNeed = { requirementId: "a" };

/** X7 of the trade facts: need 100, 45 paid at 18, 25 at 20. */
const lots = [lotOf(45, 810), lotOf(25, 500, { id: "second" })];
const allocated = [
  eventOf("allocated", 45, "2026-01-06", forNeed),
  eventOf("allocated", 25, "2026-01-06", { ...forNeed, lotId: "second" }),
];
function held(observations: readonly Observation[], events = allocated) {
  return factsOf({ requirements: [needOf("a", revisionOf(100))], lots, events, observations });
}

describe("what was saved", () => {
  // N7; ordinary selling prices, Competition Act (read). 20.00 - 18.00.
  test("N7 a saving is against the price seen, not against what the tag says it was", () => {
    const before = day("2026-01-04");
    const observations = [
      observation("20.00", { seenOn: before }),
      observation("18.00", {
        seenOn: before,
        terms: "special",
        until: day("2026-01-10"),
        note: "was 24.99",
      }),
    ];
    const drawn = rows([eventOf("drawn", 1, "2026-01-05", forNeed)], lotOf(1, 18), { observations });
    expect(amounts(drawn[0], "discount", "saving")).toEqual(["2.00", "2.00"]);
    expect(figuresIn(drawn)).not.toContain("6.99");
  });

  // N8; C11 of the trade facts: 50 at 14.40, 17.20 later, 8 % for 92 days. 140.00 - 14.52.
  test("N8 money tied up is taken off: 125.48", () => {
    const given = {
      requirements: [needOf("a", revisionOf(50))],
      observations: [observation("17.20")],
      moneyRates: [{ percent: decimal(8), from: null }],
    };
    const lot = lotOf(50, 720, { orderedOn: day("2025-11-30") });
    const [row] = rows([eventOf("drawn", 50, "2026-03-02", forNeed)], lot, given);
    expect(amounts(row, "carrying", "saving")).toEqual(["14.52", "125.48"]);
    expect(figuresIn(row)).not.toContain("140.00");
  });

  // N14; X7. 25 x (21.50 - 18) = 87.50; 20 x (22 - 18) = 80.00. The second lot, 25 x 2 = 50.00, is left out here.
  test("N14 each sheet is counted once: 87.50 realised and 80.00 not yet", () => {
    const events = [...allocated.slice(0, 1), eventOf("drawn", 25, "2026-02-20", forNeed)];
    const observations = [observation("22.00"), observation("21.50", { seenOn: day("2026-02-19") })];
    const found = savings(null, null, TODAY, held(observations, events));
    const { realised, unrealised } = found;
    expect([realised, unrealised].map(({ saving }) => saving.amount.toFixed(2))).toEqual(["87.50", "80.00"]);
    // Counted twice, all 45 would stand at 4.00 each beside what is realised.
    expect(figuresIn(found)).not.toContain("180.00");
  });

  // N15; X11 of the trade facts. 45 x -1 + 25 x -3.
  test("N15 a loss is shown: -120.00 when the market falls to 17.00", () => {
    const facts = held([observation("17.00")]);
    const { unrealised, rows: each } = savings(null, null, TODAY, facts);
    expect(each.map(({ saving }) => saving?.amount.toFixed(2))).toEqual(["-45.00", "-75.00"]);
    expect(unrealised.saving.amount.toFixed(2)).toBe("-120.00");
    expect(exposure(TODAY, facts).totals.unrealisedSaving?.amount.toFixed(2)).toBe("-120.00");
  });
});

describe("what was paid", () => {
  // N10. 200 - 2 x 20 x 0.85 = 166.00 for eight, 20.75 each; before tax.
  test("N10 a return with 15 % withheld makes the eight kept cost 166.00, 20.75 each", () => {
    const back = eventOf("returned", 2, "2026-02-25", { amount: cad("34.00") });
    const [row] = rows([back], lotOf(10, 200));
    const { holdings } = lotAccount(lotOf(10, 200), cad(200), [back], TODAY);
    const kept = (holdings[0]?.cost.amount ?? ZERO).minus(row?.saving?.amount ?? ZERO);
    expect([kept.toFixed(2), holdings[0]?.quantity.toFixed(), kept.dividedBy(8).toFixed(2)]).toEqual([
      "166.00",
      "8",
      "20.75",
    ]);
    expect(figuresIn(holdings)).not.toContain("200.00");
  });

  // N13; Canada Revenue Agency, input tax credits (read). 5,000 x 1.13 = 5,650.
  test("N13 a tax that comes back is cash and no cost: 5,000.00, with 5,650.00 out until then", () => {
    const registered = valuation({
      taxRegion: "CA-ON",
      stores: [store("near", { taxRegion: "CA-ON" })],
      regions: CANADA,
      registrations: [{ tax: "HST", from: null, until: null }],
    });
    const price = allInPrice(observation("5000"), SHEET, registered, TODAY);
    const lot = lotCost(lotOf(1, 5000), SHEET, registered, TODAY);
    if (!price.known || !lot.known) throw new Error("not known");
    expect([price.price, price.cash].map(({ amount }) => amount.toFixed(2))).toEqual(["5000.00", "5650.00"]);
    expect(figuresIn([price.price, lot.cost])).toEqual(["5000.00"]);
    expect([lot.cost, lot.cash].map(({ amount }) => amount.toFixed(2))).toEqual(["5000.00", "5650.00"]);
  });

  // N24; T24 of the trade facts: two pallets at 25.00; once forfeited they are cost, with the tax the receipt charged.
  test("N24 a deposit that comes back is cash, and cost only when forfeited", () => {
    const cost = (...given: Parameters<typeof deposit>) => {
      const figures = figuresOf(
        billOf([lineAt("100.00")], { deposits: [deposit(...given)] }),
        billTerms([HST]),
      );
      return [figures.total, figures.cost].map(({ amount }) => amount.toFixed(2));
    };
    expect(cost(50)).toEqual(["163.00", "113.00"]);
    expect(cost(50, { taxable: true })).toEqual(["169.50", "113.00"]);
    expect(cost(50, { forfeited: true })).toEqual(["163.00", "163.00"]);
    expect(cost(50, { taxable: true, forfeited: true })).toEqual(["169.50", "169.50"]);
  });

  // N25; T38 of the trade facts (measured with binary floating point): 0.70 x 5 % = 0.035, half up.
  test("N25 half a cent is rounded up in decimals: 0.70 at 5 % is 0.04", () => {
    const five = component("GST", "5");
    const taxed = billTaxes([{ base: money("0.70", "CAD"), exempt: [] }], [five], "per-bill");
    const bill = figuresOf(billOf([lineAt("0.70")]), billTerms([five]));
    expect(figuresIn([taxed.map(({ amount }) => amount), bill.taxes.map(({ amount }) => amount)])).toEqual([
      "0.04",
    ]);
    expect((Math.round(0.7 * 0.05 * 100) / 100).toFixed(2)).toBe("0.03");
  });
});
