import { describe, expect, test } from "vitest";
import * as z from "zod";
import { exposureShape } from "../../lib/show/api-exposure.ts";
import { materialShape } from "../../lib/show/api-material.ts";
import { correctionShape, observationShape } from "../../lib/show/api-observation.ts";
import { pricesShape } from "../../lib/show/api-prices.ts";
import { projectShape, requirementShape } from "../../lib/show/api-project.ts";
import { ownInterface } from "../support/interface.ts";
import { another, priceSeen, someNeed, somePlywood, someStore } from "../support/interface-things.ts";

const api = ownInterface();
const list = z.object({ items: z.array(observationShape) });
const corrections = z.strictObject({ items: z.array(correctionShape) });

async function onePrice(amount = "40.00") {
  const store = await someStore(api);
  const plywood = await somePlywood(api);
  const seen = await api.make(
    observationShape,
    "/observations",
    priceSeen(plywood.id, store.id, "2025-06-02", amount),
  );
  const best = async (asOf: string) =>
    (await api.read(pricesShape, `/materials/${plywood.id}/prices?asOf=${asOf}`)).bestOffer?.total ?? null;
  return { store, plywood, seen, best };
}

describe("a price seen", () => {
  test("comes back exactly as it was seen", async () => {
    const store = await someStore(api, { pricesIncludeTax: true });
    const plywood = await somePlywood(api);
    const full = priceSeen(plywood.id, store.id, "2025-06-02", "20.00", {
      per: { quantity: "3", unit: "sheet" },
      taxIncluded: true,
      terms: "special",
      minQuantity: "3",
      maxQuantity: "38",
      from: "2025-06-01",
      until: "2025-06-09",
      fees: [{ name: "Delivery", amount: "45.00", basis: "order", freeFrom: "500", taxable: true }],
      note: "end of the aisle",
    });
    const { id } = await api.make(observationShape, "/observations", full);
    expect(await api.read(observationShape, `/observations/${id}`)).toEqual({
      ...full,
      id,
      taxRegion: null,
      exemptFrom: [],
      packSize: null,
      fees: [
        {
          name: "Delivery",
          amount: "45.00",
          percent: null,
          basis: "order",
          freeFrom: "500.00",
          taxable: true,
        },
      ],
      deletedAt: null,
      corrections: 0,
    });
    // 3 for 20.00 with tax: 38 cost 253.33 and not 38 x 6.67 (R1); the delivery of 45.00 and its 14 % stand apart.
    const path = `/materials/${plywood.id}/prices?asOf=2025-06-03&quantity=38`;
    const { bestOffer, offers } = await api.read(pricesShape, path);
    expect(offers[0]?.allIn.amount).toBe("6.666667");
    expect(bestOffer).toMatchObject({
      cost: "253.33",
      charges: [{ name: "Delivery", amount: "51.30" }],
      total: "304.63",
    });
  });

  test("corrected counts corrected on every day; what it said before stays readable", async () => {
    const { seen, best } = await onePrice();
    expect(await best("2025-06-03")).toBe("45.60");
    const path = `/observations/${seen.id}/corrections`;
    const corrected = await api.change(observationShape, "POST", path, {
      amount: "38.00",
      reason: "a smudge",
    });
    expect(corrected).toMatchObject({ amount: "38.00", seenOn: "2025-06-02", corrections: 1 });
    expect(await best("2025-06-03")).toBe("43.32"); // 38.00 and 14 %
    await api.change(observationShape, "POST", path, { note: "read again", reason: "once more" });
    const { items } = await api.read(corrections, path);
    expect(items.map(({ reason, earlier }) => [reason, earlier.amount, earlier.note])).toEqual([
      ["a smudge", "40.00", null],
      ["once more", "38.00", null],
    ]);
    expect(items.every(({ actor }) => actor === "interface")).toBe(true);
  });

  test("cannot be corrected into something else, nor without a reason", async () => {
    const { seen } = await onePrice();
    const path = `/observations/${seen.id}/corrections`;
    const wrong = { storeId: seen.storeId, terms: "quote" };
    expect((await api.refused(422, "POST", path, wrong)).faults.toSorted()).toEqual([
      "reason: missing",
      "storeId: unknown-field",
    ]);
    const quote = { terms: "quote", reason: "it was one" };
    expect((await api.refused(422, "POST", path, quote)).faults).toEqual(["until: until-required"]);
  });

  test("deleted counts on no day, and on every day again when restored", async () => {
    const { seen, plywood, best } = await onePrice();
    await api.change(observationShape, "DELETE", `/observations/${seen.id}`);
    expect(await best("2025-06-03")).toBeNull();
    expect((await api.read(list, `/observations?materialId=${plywood.id}`)).items).toEqual([]);
    const all = await api.read(list, `/observations?materialId=${plywood.id}&deleted=true`);
    expect(all.items.map(({ id }) => id)).toEqual([seen.id]);
    await api.refused(404, "POST", `/observations/${seen.id}/corrections`, { note: "x", reason: "y" });
    await api.change(observationShape, "POST", `/observations/${seen.id}/restore`);
    expect(await best("2025-06-03")).toBe("45.60");
  });

  test("seen after a day never changes an answer as of that day", async () => {
    const { store, plywood, best } = await onePrice();
    await api.make(observationShape, "/observations", priceSeen(plywood.id, store.id, "2025-06-05", "10.00"));
    expect([await best("2025-06-01"), await best("2025-06-04"), await best("2025-06-05")]).toEqual([
      null,
      "45.60",
      "11.40",
    ]);
  });

  test("says why it is no offer", async () => {
    const { store, plywood, seen } = await onePrice();
    const more = { terms: "none-left", amount: null, currency: null };
    await api.make(
      observationShape,
      "/observations",
      priceSeen(plywood.id, store.id, "2025-06-04", "1", more),
    );
    const { offers, leftOut, goingPrice } = await api.read(
      pricesShape,
      `/materials/${plywood.id}/prices?asOf=2025-06-05`,
    );
    expect(offers).toEqual([]);
    expect(leftOut).toContainEqual({ observationId: seen.id, storeId: store.id, reason: "none-left" });
    expect(goingPrice).not.toBeNull(); // it was on the shelf three days ago
  });
});

describe("a project", () => {
  test("has dated statuses, and what is finished has nothing open", async () => {
    const { plywood } = await onePrice();
    const { project } = await someNeed(api, plywood.id, "10");
    const patch = { status: "finished", statusFrom: "2025-06-20" };
    const changed = await api.change(projectShape, "PATCH", `/projects/${project.id}`, patch);
    expect(changed.statuses).toEqual([
      { status: "live", from: "2025-06-01" },
      { status: "finished", from: "2025-06-20" },
    ]);
    const on = async (day: string) => {
      const { status } = await api.read(projectShape, `/projects/${project.id}?asOf=${day}`);
      const exposure = await api.read(exposureShape, `/projects/${project.id}/exposure?asOf=${day}`);
      return [status, exposure.requirements[0]?.open, exposure.totals.costToFinish];
    };
    expect(await on("2025-06-19")).toEqual(["live", "10", "456.00"]);
    expect(await on("2025-06-20")).toEqual(["finished", "0", "0.00"]);
    await api.refused(404, "GET", `/projects/${project.id}/exposure?asOf=2025-05-31`);
  });

  test("its requirements are dated revisions, and can be closed", async () => {
    const { plywood } = await onePrice();
    const { project, requirement } = await someNeed(api, plywood.id, "10", { budgetUnitPrice: "50" });
    const path = `/requirements/${requirement.id}`;
    const patch = (body: object) => api.change(requirementShape, "PATCH", path, body);
    await patch({ quantity: "12", validFrom: "2025-06-10" });
    const closed = await patch({ closedOn: "2025-06-15" });
    expect(closed.revisions.map(({ validFrom, quantity }) => [validFrom, quantity])).toEqual([
      ["2025-06-01", "10"],
      ["2025-06-10", "12"],
    ]);
    const on = async (day: string) => {
      const { quantity } = await api.read(requirementShape, `${path}?asOf=${day}`);
      const { requirements } = await api.read(exposureShape, `/projects/${project.id}/exposure?asOf=${day}`);
      const line = requirements[0];
      return [quantity, line?.open, line?.costToFinish, line?.budget];
    };
    expect(await on("2025-06-09")).toEqual(["10", "10", "456.00", "500.00"]);
    expect(await on("2025-06-14")).toEqual(["12", "12", "547.20", "600.00"]);
    expect((await on("2025-06-15"))[1]).toBe("0");
    await patch({ closedOn: null });
    expect((await on("2025-06-15"))[1]).toBe("12");
  });

  test("with a line nothing is known of is not complete, and has no variance", async () => {
    const { plywood } = await onePrice();
    const { project } = await someNeed(api, plywood.id, "10");
    const board = await api.make(materialShape, "/materials", {
      name: another("Board nobody sells"),
      category: "other",
      purchaseUnit: "each",
    });
    const need = { materialId: board.id, quantity: "3", unit: "each", neededBy: "2025-07-01" };
    await api.make(requirementShape, `/projects/${project.id}/requirements`, {
      ...need,
      validFrom: "2025-06-01",
    });
    const { requirements, totals } = await api.read(
      exposureShape,
      `/projects/${project.id}/exposure?asOf=2025-06-05`,
    );
    expect(requirements.find(({ materialId }) => materialId === board.id)).toMatchObject({
      unpriced: true,
      costToFinish: null,
      bestOffer: null,
    });
    expect(totals).toMatchObject({
      costToFinish: "456.00",
      unpricedLines: 1,
      complete: false,
      variance: null,
    });
  });
});
