import { describe, expect, test } from "vitest";
import { exposureShape } from "../../lib/show/api-exposure.ts";
import { lotShape, stockEventShape } from "../../lib/show/api-lot.ts";
import { observationShape } from "../../lib/show/api-observation.ts";
import { pricesShape } from "../../lib/show/api-prices.ts";
import { savingsShape } from "../../lib/show/api-savings.ts";
import { workspaceShape } from "../../lib/show/api-settings.ts";
import { ownInterface } from "../support/interface.ts";
import { bought, priceSeen, someNeed, somePlywood, someStore } from "../support/interface-things.ts";

const api = ownInterface();

/**
 * Nova Scotia, HST 14 % since 2025-04-01, not registered: tax is cost.
 *   shelf at Mill Road     2025-06-02   40.00 -> 45.60 all in;   from 2025-06-24  44.00 -> 50.16
 *   shelf at Kestrel Hill  2025-06-03   42.00 -> 47.88
 *   special at Mill Road   2025-06-10   35.00 -> 39.90, at most 20, until 2025-06-20
 */
async function plywoodWithPrices() {
  const mill = await someStore(api);
  const kestrel = await someStore(api, { name: "Kestrel Hill Supply" });
  const plywood = await somePlywood(api);
  const seen = (storeId: string, day: string, amount: string, more: object = {}) =>
    api.make(observationShape, "/observations", priceSeen(plywood.id, storeId, day, amount, more));
  const shelf = await seen(mill.id, "2025-06-02", "40.00");
  await seen(kestrel.id, "2025-06-03", "42.00");
  const special = await seen(mill.id, "2025-06-10", "35.00", {
    terms: "special",
    until: "2025-06-20",
    maxQuantity: "20",
  });
  await seen(mill.id, "2025-06-24", "44.00");
  return { mill, kestrel, plywood, shelf, special };
}

describe("from a store to what it saved", () => {
  test("every figure on the way is the one worked out by hand", async () => {
    const { mill, plywood, shelf, special } = await plywoodWithPrices();

    const prices = await api.read(pricesShape, `/materials/${plywood.id}/prices?asOf=2025-06-12&quantity=30`);
    // 20 x 39.90 + 10 x 45.60 = 798.00 + 456.00
    expect(prices.bestOffer).toMatchObject({ cost: "1254.00", total: "1254.00", over: "0", uncovered: "0" });
    expect(prices.bestOffer?.takes).toEqual([
      { observationId: special.id, storeId: mill.id, quantity: "20", cost: "798.00" },
      { observationId: shelf.id, storeId: mill.id, quantity: "10", cost: "456.00" },
    ]);
    // The mean of 45.60 and 47.88; the special never enters.
    expect(prices.goingPrice).toEqual({
      amount: "46.74",
      currency: "CAD",
      unit: "sheet",
      stores: 2,
      kind: "fresh",
    });

    // 36 sheets and a tenth for waste are 39.6.
    const { project, requirement } = await someNeed(api, plywood.id, "36", { wastePercent: "10" });
    const lot = await api.make(
      lotShape,
      "/lots",
      bought(plywood.id, "20", "700.00", "2025-06-12", { observationId: special.id }),
    );
    expect(lot).toMatchObject({ storeId: mill.id, terms: "special", acquiredOn: "2025-06-12" });
    const inForce = { requirementId: requirement.id, quantity: "20", on: "2025-06-12" };
    await api.make(stockEventShape, `/lots/${lot.id}/allocations`, inForce);
    const draw = await api.make(stockEventShape, `/lots/${lot.id}/draws`, {
      requirementId: requirement.id,
      quantity: "12",
      on: "2025-06-26",
    });

    const exposure = await api.read(exposureShape, `/projects/${project.id}/exposure?asOf=2025-06-26`);
    expect(exposure.requirements).toHaveLength(1);
    expect(exposure.requirements[0]).toMatchObject({
      required: "39.6",
      allocated: "8",
      drawn: "12",
      lockedIn: "20",
      open: "20", // 39.6 - 20 = 19.6, whole sheets
      lockedCost: "798.00", // 700.00 and 14 %
      bestOffer: { unitPrice: "47.88" }, // the special has lapsed, Mill Road is at 50.16
      costToFinish: "957.60", // 20 x 47.88
      unpriced: false,
    });
    expect(exposure.totals).toMatchObject({
      lockedCost: "798.00",
      costToFinish: "957.60",
      perOrderCharges: "0.00",
      estimateAtCompletion: "1755.60", // 798.00 + 957.60
      budget: "2000.00",
      variance: "244.40", // 2000.00 - 1755.60
      unrealisedSaving: "72.96", // 8 x 49.02 - 798.00 x 8/20 = 392.16 - 319.20
      tenPercent: "95.76",
      restsOnStale: "0.00",
      unpricedLines: 0,
      complete: true,
    });

    const savings = await api.read(savingsShape, `/savings?asOf=2025-06-26&projectId=${project.id}`);
    // Going price on the day laid in 46.74, on the day drawn (50.16 + 47.88) / 2 = 49.02.
    expect(savings.rows[0]).toMatchObject({
      eventId: draw.id,
      kind: "drawn",
      state: "realised",
      quantity: "12",
      drawnOn: "2025-06-26",
      paid: "478.80", // 798.00 x 12/20
      goingAtAcquisition: "560.88", // 12 x 46.74
      goingAtDraw: "588.24", // 12 x 49.02
      discount: "82.08", // 560.88 - 478.80
      timing: "27.36", // 588.24 - 560.88
      carrying: null,
      saving: "109.44",
      strictSaving: "95.76", // 12 x 47.88 - 478.80
      beforeCarrying: true,
    });
    expect(savings.rows[1]).toMatchObject({
      kind: "held",
      state: "unrealised",
      quantity: "8",
      drawnOn: null,
    });
    expect(savings.totals.realised).toMatchObject({ saving: "109.44", strictSaving: "95.76", rows: 1 });
    expect(savings.totals.unrealised).toMatchObject({ saving: "72.96", rows: 1 });
    expect(savings.totals.byKind.drawn).toMatchObject({ discount: "82.08", timing: "27.36" });

    // 7.3 % a year is 0.02 % a day; 14 days from 12 June to 26 June: 478.80 x 0.28 % = 1.34064.
    await api.change(workspaceShape, "PATCH", "/workspace", { moneyRate: "7.3" });
    const carried = await api.read(savingsShape, `/savings?asOf=2025-06-26&projectId=${project.id}`);
    expect(carried.rows[0]).toMatchObject({ carrying: "1.34", saving: "108.10", beforeCarrying: false });
  });
});
