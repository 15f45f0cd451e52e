import { v7 } from "uuid";
import { expect, test } from "vitest";
import * as z from "zod";
import { lotShape } from "../../lib/show/api-lot.ts";
import { materialShape } from "../../lib/show/api-material.ts";
import { observationShape } from "../../lib/show/api-observation.ts";
import { workspaceShape } from "../../lib/show/api-settings.ts";
import { ownInterface } from "../support/interface.ts";
import { another, somePlywood, someStore } from "../support/interface-things.ts";

const api = ownInterface();
const DAY = "2025-06-02";

const answerShape = z.strictObject({
  accepted: z.array(z.string()),
  rejected: z.array(
    z.object({ id: z.string(), errors: z.array(z.object({ path: z.string(), code: z.string() })) }),
  ),
});
const snapshotShape = z.object({
  restored: z.boolean(),
  snapshot: z.object({
    version: z.literal(1),
    workspace: z.object({ id: z.string(), kind: z.string() }),
    materials: z.array(z.object({ id: z.string(), seen: z.array(z.object({ id: z.string() })) })),
  }),
});

async function send(...entries: readonly unknown[]) {
  const { id: workspaceId } = await api.read(workspaceShape, "/workspace");
  const { status, json } = await api.ask("POST", "/phone/entries", { workspaceId, entries });
  expect(status).toBe(200);
  const { accepted, rejected } = answerShape.parse(json);
  const why = rejected.map(({ id, errors }) => [id, ...errors.map(({ path, code }) => `${path}: ${code}`)]);
  return { accepted, rejected: why };
}

function price(id: string, materialId: string, storeId: string, amount = "31.00") {
  const per = { quantity: "1", unit: "sheet" };
  const entry = {
    materialId,
    storeId,
    seenOn: DAY,
    terms: "shelf",
    amount,
    currency: "CAD",
    per,
    taxIncluded: false,
  };
  return { id, kind: "price", entry };
}

const seenOf = async (materialId: string) =>
  (await api.read(z.object({ items: z.array(observationShape) }), `/observations?materialId=${materialId}`))
    .items;

test("an entry sent again is accepted and there once; other content under its id is rejected", async () => {
  const [store, sheet, id] = [await someStore(api), await somePlywood(api), v7()];
  const sent = price(id, sheet.id, store.id);
  for (let time = 0; time < 3; time += 1) expect(await send(sent)).toEqual({ accepted: [id], rejected: [] });
  expect(await send(price(id, sheet.id, store.id, "32.00"))).toEqual({
    accepted: [],
    rejected: [[id, "id: used-id"]],
  });
  expect((await seenOf(sheet.id)).map(({ amount }) => Number(amount))).toEqual([31]);
});

test("in whatever order they come, a material is written before its price and its price before what was bought", async () => {
  const store = await someStore(api);
  const [materialId, priceId, lotId] = [v7(), v7(), v7()];
  const entry = { name: another("Cedar shim"), category: "other", purchaseUnit: "sheet" };
  const bought = { materialId, storeId: store.id, observationId: priceId, terms: "shelf" };
  const lot = { ...bought, origin: "bought", quantity: "4", orderedOn: DAY };
  const { accepted, rejected } = await send(
    { id: lotId, kind: "bought", entry: lot, requirementId: null },
    price(priceId, materialId, store.id),
    { id: materialId, kind: "material", entry },
  );
  expect(rejected).toEqual([]);
  expect([...accepted].sort()).toEqual([materialId, priceId, lotId].sort());
  expect(Number((await api.read(lotShape, `/lots/${lotId}`)).quantity)).toBe(4);
});

test("each entry stands alone: what is wrong with one is said of that one, and the others are written", async () => {
  const [store, sheet, good, bad, gone] = [await someStore(api), await somePlywood(api), v7(), v7(), v7()];
  const { accepted, rejected } = await send(
    { ...price(bad, sheet.id, store.id), entry: { terms: "shelf", amount: "-1" } },
    price(good, sheet.id, store.id),
    { id: gone, kind: "take-back", observationId: v7(), taken: true },
    { id: v7(), kind: "dance" },
    "not an entry",
  );
  expect(accepted).toEqual([good]);
  expect(rejected.map(([id]) => id)).toContain(bad);
  expect(rejected).toContainEqual([gone, "observationId: not-there"]);
  expect(rejected.flat()).toEqual(expect.arrayContaining(["kind: unknown-choice", "id: missing"]));
});

test("a price taken back and brought back stands as was said last", async () => {
  const [store, sheet, id] = [await someStore(api), await somePlywood(api), v7()];
  const back = (taken: boolean) => ({ id: v7(), kind: "take-back", observationId: id, taken });
  await send(price(id, sheet.id, store.id), back(true));
  expect(await seenOf(sheet.id)).toEqual([]);
  await send(back(false), back(true), back(false));
  expect((await seenOf(sheet.id)).map((seen) => seen.id)).toEqual([id]);
});

test("a material of the catalogue is made with its sizes", async () => {
  const { CATALOGUE } = await import("../../lib/materials/catalogue/catalogue.ts");
  const [id, picked] = [v7(), CATALOGUE[0]];
  expect(await send({ id, kind: "catalogued", key: picked?.key })).toEqual({ accepted: [id], rejected: [] });
  expect((await api.read(materialShape, `/materials/${id}`)).name).toBe(picked?.name);
});

test("the snapshot holds what was seen, and says when an acknowledged entry is no longer in the books", async () => {
  const [store, sheet, id] = [await someStore(api), await somePlywood(api), v7()];
  await send(price(id, sheet.id, store.id));
  const known = await api.read(snapshotShape, `/phone/snapshot?acknowledged=${id}`);
  expect(known.restored).toBe(false);
  expect(known.snapshot.materials.find((one) => one.id === sheet.id)?.seen.map((seen) => seen.id)).toEqual([
    id,
  ]);
  const lost = await api.read(snapshotShape, `/phone/snapshot?acknowledged=${v7()}`);
  expect(lost.restored).toBe(true);
});

test("a workspace that is not there is answered so, and nothing is written", async () => {
  await api.refused(404, "POST", "/phone/entries", { workspaceId: v7(), entries: [] });
  await api.refused(404, "GET", `/phone/snapshot?workspace=${v7()}`);
});
