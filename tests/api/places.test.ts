import { v7 } from "uuid";
import { describe, expect, test } from "vitest";
import * as z from "zod";
import { lotShape, stockEventShape } from "../../lib/show/api-lot.ts";
import { observationShape } from "../../lib/show/api-observation.ts";
import { fitsShape, placeContentsShape, placeShape } from "../../lib/show/api-place.ts";
import { requirementShape } from "../../lib/show/api-project.ts";
import {
  leftoverShape,
  paymentShape,
  priceFellShape,
  receiptShape,
  stockActShape,
} from "../../lib/show/api-stock-act.ts";
import { ownInterface } from "../support/interface.ts";
import { another, bought, priceSeen, someNeed, somePlywood, someStore } from "../support/interface-things.ts";

const api = ownInterface();
const priceFellList = z.strictObject({ items: z.array(priceFellShape) });
const leftoverList = z.strictObject({ items: z.array(leftoverShape) });

/** Ten sheets of 48 lb bought on the second of June for 400.00 before tax, in a shed that bears half a tonne. */
async function tenInShed() {
  const plywood = await somePlywood(api, {
    dimensions: { faceWidth: "48 in", faceLength: "96 in", thickness: "0.5 in", weight: "48 lb" },
    sources: { weight: "printed on the lift" },
  });
  const shed = await api.make(placeShape, "/places", {
    name: another("Shed"),
    weight: "500 kg",
    covered: true,
  });
  const order = bought(plywood.id, "10", "400.00", "2025-06-02", { storedAt: shed.name });
  const lot = await api.make(lotShape, "/lots", order);
  const happened = (what: string, body: object) => api.make(stockEventShape, `/lots/${lot.id}/${what}`, body);
  return { plywood, shed, lot, happened };
}

describe("a place", () => {
  test("is listed, changed, archived and restored", async () => {
    const shed = await api.make(placeShape, "/places", {
      name: another("Loft"),
      area: "40 sq ft",
      count: "60",
    });
    expect(shed).toMatchObject({ area: "40 square-foot", count: "60", weight: null, archivedOn: null });
    expect(await api.change(placeShape, "PATCH", `/places/${shed.id}`, { area: null })).toMatchObject({
      area: null,
      count: "60",
    });
    await api.change(placeShape, "DELETE", `/places/${shed.id}`);
    await api.change(placeShape, "POST", `/places/${shed.id}/restore`);
    expect((await api.refused(422, "POST", "/places", { name: "x", area: "5 kg" })).faults).toEqual([
      "area: unit-not-convertible",
    ]);
  });

  test("says what lies there, how full it is, what that weighs with its source, and what still fits", async () => {
    const { plywood, shed, lot } = await tenInShed();
    const there = await api.read(placeContentsShape, `/places/${shed.id}`);
    expect(there.lying).toEqual([{ lotId: lot.id, materialId: plywood.id, quantity: "10" }]);
    // 10 x 48 lb x 0.45359237 = 217.724338 kg.
    expect(there.weighs).toMatchObject({ kilograms: "217.724338", unknown: [] });
    expect(there.weighs.parts[0]?.source).toBe("printed on the lift");
    expect(there.room[2]).toMatchObject({ measure: "weight", limit: "500", free: "282.275662" });
    const fits = await api.read(fitsShape, `/places/${shed.id}/fits?materialId=${plywood.id}`);
    expect(fits).toEqual({ quantity: "12", by: "weight", atMost: false, unknown: [] });
    const before = await api.read(placeContentsShape, `/places/${shed.id}?asOf=2025-06-01`);
    expect(before.lying).toEqual([]);
  });
});

describe("stock in places", () => {
  test("is moved at a cost, charged for, counted and taken back", async () => {
    const { shed, lot, happened } = await tenInShed();
    const loft = await api.make(placeShape, "/places", { name: another("Loft") });
    const cost = { amount: "15.00", currency: "CAD" };
    const moved = await happened("moves", { quantity: "4", on: "2025-06-05", placeId: loft.id, cost });
    expect(moved).toMatchObject({ kind: "moved", amount: "15.00", placeId: loft.id, fromPlaceId: null });
    const read = () => api.read(lotShape, `/lots/${lot.id}`);
    expect((await read()).lying).toEqual([
      { placeId: shed.id, quantity: "6" },
      { placeId: loft.id, quantity: "4" },
    ]);
    const rent = await happened("storage-money", { on: "2025-06-06", amount: "3.00", currency: "CAD" });
    expect(rent).toMatchObject({ kind: "stored", quantity: "0", amount: "3.00" });
    const count = { on: "2025-06-07", counts: [{ lotId: lot.id, quantity: "5" }] };
    const counted = await api.make(stockActShape, `/places/${shed.id}/counts`, count);
    expect(counted.events).toMatchObject([{ kind: "missing", quantity: "1", placeId: shed.id }]);
    const month = {
      from: "2025-06-08",
      until: "2025-06-30",
      amount: "20.00",
      currency: "CAD",
      shareBy: "weight",
    };
    const charged = await api.make(stockActShape, `/places/${loft.id}/storage-money`, month);
    expect(charged.events).toMatchObject([{ kind: "stored", amount: "20.00", on: "2025-06-30" }]);
    await api.change(stockActShape, "DELETE", `/stock-acts/${charged.id}`);
    await api.change(stockActShape, "DELETE", `/stock-acts/${counted.id}`);
    expect((await read()).state.missing).toBe("0");
    await api.change(stockActShape, "POST", `/stock-acts/${counted.id}/restore`);
    expect((await api.read(stockActShape, `/stock-acts/${counted.id}`)).undoneAt).toBeNull();
  });

  test("moves no more than lies there", async () => {
    const { shed, lot } = await tenInShed();
    const body = { quantity: "11", on: "2025-06-05", placeId: null, fromPlaceId: shed.id };
    expect((await api.refused(422, "POST", `/lots/${lot.id}/moves`, body)).faults).toEqual([
      "quantity: more-than-in-place",
    ]);
  });
});

describe("what is set aside", () => {
  test("moves to another requirement, comes back unused, and is left over, each as one act", async () => {
    const { plywood, lot, happened } = await tenInShed();
    const { project, requirement } = await someNeed(api, plywood.id, "36");
    const body = { materialId: plywood.id, quantity: "5", unit: "sheet", neededBy: "2025-08-01" };
    const other = await api.make(requirementShape, `/projects/${project.id}/requirements`, body);
    await happened("allocations", { quantity: "8", on: "2025-06-03", requirementId: requirement.id });
    const transfer = {
      fromRequirementId: requirement.id,
      toRequirementId: other.id,
      quantity: "3",
      on: "2025-06-04",
    };
    const act = await api.make(stockActShape, "/stock-acts/transfers", { id: v7(), ...transfer });
    expect(act.events.map(({ kind }) => kind)).toEqual(["released", "allocated"]);
    expect(
      (await api.refused(422, "POST", "/stock-acts/transfers", { ...transfer, quantity: "6" })).faults,
    ).toEqual(["quantity: more-than-allocated"]);
    const forIt = { requirementId: requirement.id };
    const draw = await happened("draws", { quantity: "4", on: "2025-06-05", ...forIt });
    const unused = `/lots/${lot.id}/draws/${draw.id}/unused`;
    const back = await api.make(stockActShape, unused, { quantity: "1" });
    expect(back).toMatchObject({
      kind: "unused",
      undoes: [draw.id],
      events: [{ kind: "drawn", quantity: "3" }],
    });
    const over = `/stock-acts/leftovers?projectId=${project.id}&asOf=2025-06-06`;
    expect((await api.read(leftoverList, over)).items.map(({ quantity }) => quantity)).toEqual(["2", "3"]);
    const done = { projectId: project.id, on: "2025-06-06" };
    await api.make(stockActShape, "/stock-acts/leftovers", done);
    expect((await api.read(lotShape, `/lots/${lot.id}?asOf=2025-06-06`)).state).toMatchObject({
      free: "7",
      allocated: [],
    });
    await api.refused(422, "POST", "/stock-acts/leftovers", done);
  });
});

describe("an order", () => {
  test("is received and paid in parts, each undone and restored", async () => {
    const plywood = await somePlywood(api);
    const payments = [{ amount: "100.00", on: "2025-06-02" }];
    const order = bought(plywood.id, "10", "400.00", "2025-06-02", {
      origin: "special-order",
      acquiredOn: null,
      payments,
      leadDays: 14,
    });
    const lot = await api.make(lotShape, "/lots", order);
    expect(lot).toMatchObject({ expectedOn: "2025-06-16", receipts: [] });
    const part = { quantity: "6", on: "2025-06-15" };
    const receipt = await api.make(receiptShape, `/lots/${lot.id}/receipts`, part);
    expect((await api.refused(422, "POST", `/lots/${lot.id}/receipts`, part)).faults).toEqual([
      "quantity: more-than-ordered",
    ]);
    const one = `/lots/${lot.id}/receipts/${receipt.id}`;
    expect((await api.change(receiptShape, "DELETE", one)).undoneAt).not.toBeNull();
    await api.change(receiptShape, "POST", `${one}/restore`);
    const paid = { amount: "356.00", on: "2025-06-16" };
    const payment = await api.make(paymentShape, `/lots/${lot.id}/payments`, paid);
    const balance = `/lots/${lot.id}/payments/${payment.id}`;
    await api.change(paymentShape, "DELETE", balance);
    expect((await api.read(lotShape, `/lots/${lot.id}`)).payments).toMatchObject([{ amount: "100.00" }]);
    await api.change(paymentShape, "POST", `${balance}/restore`);
    await api.refused(404, "DELETE", `/lots/${v7()}/payments/${payment.id}`);
  });
});

test("a lower price of the same store is told while it is paid back", async () => {
  const plywood = await somePlywood(api);
  const store = await someStore(api, { returnDays: 30, priceAdjustmentDays: 14, restockingPercent: "10" });
  const order = bought(plywood.id, "10", "400.00", "2025-06-02", { storeId: store.id });
  const lot = await api.make(lotShape, "/lots", order);
  expect(lot).toMatchObject({ returnableUntil: "2025-07-02", adjustableUntil: "2025-06-16" });
  await api.make(observationShape, "/observations", priceSeen(plywood.id, store.id, "2025-06-10", "36.00"));
  const told = async (asOf: string) =>
    (await api.read(priceFellList, `/stock-acts/price-fell?asOf=${asOf}`)).items.filter(
      ({ lotId }) => lotId === lot.id,
    );
  // (40.00 - 36.00) x 1.14 x 10.
  expect(await told("2025-06-10")).toMatchObject([
    { money: "45.60", adjustUntil: "2025-06-16", lastDay: "2025-07-02", paid: "45.60", offered: "41.04" },
  ]);
  expect(await told("2025-07-03")).toEqual([]);
});

test("a price of nothing, another currency and a late return are asked about", async () => {
  const plywood = await somePlywood(api);
  const store = await someStore(api);
  const order = bought(plywood.id, "10", "0", "2025-06-02", { storeId: store.id });
  expect((await api.refused(422, "POST", "/lots", order)).faults).toEqual(["paid.amount: free-asked"]);
  await api.make(lotShape, "/lots", { ...order, givenFree: "a replacement" });
  const paid = { amount: "300.00", currency: "USD", taxIncluded: false, taxRegion: "CA-NS" };
  expect((await api.refused(422, "POST", "/lots", { ...order, paid })).faults).toEqual([
    "paid.currency: other-currency",
  ]);
  const until = { returnableUntil: "2025-06-20" };
  const lot = await api.make(lotShape, "/lots", bought(plywood.id, "10", "400.00", "2025-06-02", until));
  const late = { quantity: "1", on: "2025-06-21", amount: "40.00", currency: "CAD" };
  expect((await api.refused(422, "POST", `/lots/${lot.id}/returns`, late)).faults).toEqual([
    "reason: after-return-day",
  ]);
  await api.make(stockEventShape, `/lots/${lot.id}/returns`, { ...late, reason: "the manager agreed" });
});
