import { v7 } from "uuid";
import { describe, expect, test } from "vitest";
import * as z from "zod";
import { exposureShape } from "../../lib/show/api-exposure.ts";
import { lotShape, stockEventShape } from "../../lib/show/api-lot.ts";
import { savingsShape } from "../../lib/show/api-savings.ts";
import { ownInterface } from "../support/interface.ts";
import { bought, someNeed, somePlywood } from "../support/interface-things.ts";

const api = ownInterface();
const counted = z.strictObject({ event: stockEventShape.nullable() });
const events = z.strictObject({ items: z.array(stockEventShape) });

/** Ten sheets bought on the second of June for 400.00 before tax, 456.00 all in, and a need of 36 of them. */
async function tenSheets() {
  const plywood = await somePlywood(api);
  const { project, requirement } = await someNeed(api, plywood.id, "36");
  const lot = await api.make(lotShape, "/lots", bought(plywood.id, "10", "400.00", "2025-06-02"));
  const happened = (what: string, quantity: string, on: string, more: object = {}) =>
    api.make(stockEventShape, `/lots/${lot.id}/${what}`, { quantity, on, ...more });
  const forIt = { requirementId: requirement.id };
  return { plywood, project, requirement, lot, happened, forIt };
}
const stateOf = async (id: string, asOf: string) =>
  (await api.read(lotShape, `/lots/${id}?asOf=${asOf}`)).state;

describe("what happens to a lot", () => {
  test("moves its quantity and never changes how much there was", async () => {
    const { lot, happened, forIt, requirement } = await tenSheets();
    await happened("allocations", "6", "2025-06-03", forIt);
    await happened("releases", "1", "2025-06-04", forIt);
    await happened("draws", "2", "2025-06-05", forIt);
    await happened("draws", "1", "2025-06-06");
    await happened("returns", "1", "2025-06-07", { amount: "44.00", currency: "CAD" });
    await happened("sales", "1", "2025-06-08", { amount: "20.00", currency: "CAD" });
    await happened("write-offs", "1", "2025-06-09", { reason: "a broken corner" });
    const count = { quantity: "3", on: "2025-06-10" };
    const { event } = await api.make(counted, `/lots/${lot.id}/counts`, count);
    expect(event).toMatchObject({ kind: "missing", quantity: "1" }); // 10 - 2 - 1 - 1 - 1 - 1 = 4 should be there
    const state = await stateOf(lot.id, "2025-06-10");
    expect(state).toEqual({
      free: "0", // 10 - 6 + 1 - 1 - 1 - 1 - 1 - 1
      allocated: [{ requirementId: requirement.id, quantity: "3" }], // 6 - 1 - 2
      drawn: [{ requirementId: requirement.id, quantity: "2" }],
      drawnForNone: "1",
      returned: "1",
      sold: "1",
      writtenOff: "1",
      found: "0",
      missing: "1",
      onOrder: "0",
    });
    // As of an earlier day: what had happened by then.
    expect(await stateOf(lot.id, "2025-06-04")).toMatchObject({ free: "5", drawnForNone: "0", missing: "0" });
    const { items } = await api.read(events, `/lots/${lot.id}/events`);
    expect(items.map(({ kind }) => kind)).toEqual([
      "allocated",
      "released",
      "drawn",
      "drawn",
      "returned",
      "sold",
      "written-off",
      "missing",
    ]);
  });

  test("makes one row each of what it saved or lost", async () => {
    const { lot, happened } = await tenSheets();
    await happened("returns", "2", "2025-06-07", { amount: "80.00", currency: "CAD" });
    await happened("write-offs", "1", "2025-06-09");
    const { rows } = await api.read(savingsShape, "/savings?asOf=2025-06-10");
    const own = rows.filter((row) => row.lot === lot.id);
    // 456.00 x 2/10 = 91.20 and x 1/10 = 45.60, no money rate: 80.00 - 91.20 and 0 - 45.60.
    expect(own).toMatchObject([
      { kind: "returned", paid: "91.20", received: "80.00", saving: "-11.20", drawnOn: "2025-06-07" },
      { kind: "written-off", paid: "45.60", received: null, saving: "-45.60", missing: false },
    ]);
  });

  test("a count that finds more adds it, one that agrees records nothing", async () => {
    const { lot } = await tenSheets();
    const more = { id: v7(), quantity: "11.5", on: "2025-06-03" };
    const { event } = await api.make(counted, `/lots/${lot.id}/counts`, more);
    expect(event).toMatchObject({ id: more.id, kind: "found", quantity: "1.5" });
    expect(await api.change(counted, "POST", `/lots/${lot.id}/counts`, more)).toEqual({ event });
    await api.refused(409, "POST", `/lots/${lot.id}/counts`, { ...more, quantity: "12" });
    const agreed = await api.make(counted, `/lots/${lot.id}/counts`, { quantity: "11.5", on: "2025-06-04" });
    expect(agreed).toEqual({ event: null });
    expect((await stateOf(lot.id, "2025-06-04")).free).toBe("11.5");
    await api.change(stockEventShape, "DELETE", `/lots/${lot.id}/counts/${more.id}`);
    expect((await stateOf(lot.id, "2025-06-04")).free).toBe("10");
  });
});

describe("what a lot cannot give", () => {
  test("is refused with how much there is", async () => {
    const { lot, happened, forIt } = await tenSheets();
    await happened("allocations", "7", "2025-06-03", forIt);
    const ask = (what: string, body: object) => api.ask("POST", `/lots/${lot.id}/${what}`, body);
    expect(await ask("allocations", { quantity: "4", on: "2025-06-03", ...forIt })).toMatchObject({
      status: 422,
      json: { errors: [{ path: "quantity", code: "more-than-free", values: { has: "3" } }] },
    });
    expect(await ask("draws", { quantity: "4", on: "2025-06-03" })).toMatchObject({
      status: 422,
      json: { errors: [{ path: "quantity", code: "more-than-free", values: { has: "3" } }] },
    });
    expect(await ask("releases", { quantity: "8", on: "2025-06-03", ...forIt })).toMatchObject({
      status: 422,
      json: { errors: [{ path: "quantity", code: "more-than-allocated", values: { has: "7" } }] },
    });
    expect(await ask("draws", { quantity: "1", on: "2025-06-01" })).toMatchObject({
      status: 422,
      json: { errors: [{ path: "on", code: "before-acquisition" }] },
    });
  });

  test("a back-dated event that would make a later day impossible is refused, naming the one in the way", async () => {
    const { lot, happened } = await tenSheets();
    const later = await happened("draws", "8", "2025-06-20");
    const sale = { quantity: "3", on: "2025-06-05", amount: "1", currency: "CAD" };
    const { status, json } = await api.ask("POST", `/lots/${lot.id}/sales`, sale);
    expect([status, json]).toMatchObject([
      422,
      { errors: [{ path: "on", code: "event-in-the-way", values: { event: later.id, on: "2025-06-20" } }] },
    ]);
  });

  test("of the last ten sheets exactly ten are allocated, by twenty at once", async () => {
    const { lot, forIt } = await tenSheets();
    const one = { quantity: "1", on: "2025-06-03", ...forIt };
    const path = `/lots/${lot.id}/allocations`;
    const answers = await Promise.all(Array.from({ length: 20 }, () => api.ask("POST", path, one)));
    const made = answers.filter(({ status }) => status === 201);
    const refused = answers.filter(({ status }) => status === 422);
    expect([made.length, refused.length]).toEqual([10, 10]);
    expect((await stateOf(lot.id, "2025-06-03")).free).toBe("0");
  });

  test("money belongs to what brings money, the kind to the address", async () => {
    const { lot } = await tenSheets();
    const path = `/lots/${lot.id}`;
    const draw = { quantity: "1", on: "2025-06-03", amount: "5", kind: "sold" };
    expect((await api.refused(422, "POST", `${path}/draws`, draw)).faults.toSorted()).toEqual([
      "amount: unknown-field",
      "kind: unknown-field",
    ]);
    const sale = { quantity: "1", on: "2025-06-03" };
    expect((await api.refused(422, "POST", `${path}/sales`, sale)).faults).toEqual([
      "amount: missing",
      "currency: missing",
    ]);
    await api.refused(404, "POST", `${path}/thefts`, sale);
  });
});

describe("undoing", () => {
  test("takes a draw back with its saving, and it can be brought back", async () => {
    const { lot, project, happened, forIt } = await tenSheets();
    await happened("allocations", "10", "2025-06-03", forIt);
    const draw = await happened("draws", "4", "2025-06-05", forIt);
    const lockedIn = async () => {
      const { requirements } = await api.read(
        exposureShape,
        `/projects/${project.id}/exposure?asOf=2025-06-05`,
      );
      return [requirements[0]?.allocated, requirements[0]?.drawn, requirements[0]?.lockedCost];
    };
    expect(await lockedIn()).toEqual(["6", "4", "456.00"]);
    const undone = await api.change(stockEventShape, "DELETE", `/lots/${lot.id}/draws/${draw.id}`);
    expect(undone.undoneAt).not.toBeNull();
    expect(await lockedIn()).toEqual(["10", "0", "456.00"]);
    // Twice is no harm.
    expect(await api.change(stockEventShape, "DELETE", `/lots/${lot.id}/draws/${draw.id}`)).toEqual(undone);
    const all = await api.read(events, `/lots/${lot.id}/events?undone=true`);
    expect(all.items.map(({ id, undoneAt }) => [id === draw.id, undoneAt !== null])).toEqual([
      [false, false],
      [true, true],
    ]);
    const back = await api.change(stockEventShape, "POST", `/lots/${lot.id}/draws/${draw.id}/restore`);
    expect(back.undoneAt).toBeNull();
    expect(await lockedIn()).toEqual(["6", "4", "456.00"]);
  });

  test("is refused while a later event needs it, and leaves it as it was", async () => {
    const { lot, happened, forIt } = await tenSheets();
    const allocation = await happened("allocations", "10", "2025-06-03", forIt);
    const release = await happened("releases", "10", "2025-06-04", forIt);
    const path = `/lots/${lot.id}/allocations/${allocation.id}`;
    const { status, json } = await api.ask("DELETE", path);
    expect([status, json]).toMatchObject([
      422,
      { errors: [{ code: "event-in-the-way", values: { event: release.id, kind: "released" } }] },
    ]);
    expect((await stateOf(lot.id, "2025-06-03")).allocated).toHaveLength(1);
  });

  test("finds an event under its own lot and kind only", async () => {
    const { lot, happened } = await tenSheets();
    const other = await tenSheets();
    const draw = await happened("draws", "1", "2025-06-05");
    await api.refused(404, "DELETE", `/lots/${lot.id}/sales/${draw.id}`);
    await api.refused(404, "DELETE", `/lots/${other.lot.id}/draws/${draw.id}`);
    await api.refused(404, "POST", `/lots/${lot.id}/returns/${draw.id}/restore`);
    expect((await stateOf(lot.id, "2025-06-05")).drawnForNone).toBe("1");
  });

  test("a deleted lot is out of the books on every day until it is restored", async () => {
    const { lot, project, happened, forIt } = await tenSheets();
    await happened("allocations", "10", "2025-06-03", forIt);
    const path = `/projects/${project.id}/exposure?asOf=2025-06-05`;
    const deleted = await api.change(lotShape, "DELETE", `/lots/${lot.id}`);
    expect(deleted.deletedAt).not.toBeNull();
    expect((await api.read(exposureShape, path)).totals.lockedCost).toBe("0.00");
    await api.refused(404, "POST", `/lots/${lot.id}/draws`, { quantity: "1", on: "2025-06-05" });
    const listed = z.object({ items: z.array(lotShape) });
    const live = await api.read(listed, `/lots?materialId=${lot.materialId}`);
    const gone = await api.read(listed, `/lots?materialId=${lot.materialId}&deleted=true`);
    expect([live.items.length, gone.items.map(({ id }) => id)]).toEqual([0, [lot.id]]);
    await api.change(lotShape, "POST", `/lots/${lot.id}/restore`);
    expect((await api.read(exposureShape, path)).totals.lockedCost).toBe("456.00");
  });
});
