import { v7 } from "uuid";
import { afterAll, expect, test } from "vitest";
import * as z from "zod";
import { lotShape } from "../../lib/show/api-lot.ts";
import { workspaceShape } from "../../lib/show/api-settings.ts";
import { storeShape } from "../../lib/show/api-store.ts";
import { lotEntry } from "../../lib/stock/lot-entry.ts";
import { ownInterface } from "../support/interface.ts";
import { another, bought, priceSeen, somePlywood, someStore } from "../support/interface-things.ts";

const api = ownInterface();

/** The demo with a store, a material and a lot in it, written past the interface, on the same database. */
async function demo() {
  const { makeDemoWorkspace } = await import("../../lib/data/workspaces.ts");
  const { addStore } = await import("../../lib/data/stores.ts");
  const { addMaterial } = await import("../../lib/data/materials.ts");
  const { addLot } = await import("../../lib/data/lots.ts");
  const { storeEntry } = await import("../../lib/prices/store-entry.ts");
  const { materialEntry } = await import("../../lib/materials/material-entry.ts");
  const { id: workspaceId } = await makeDemoWorkspace();
  const scope = { workspaceId, actor: "a test" };
  const [storeId, materialId, lotId] = [v7(), v7(), v7()];
  const store = { name: another("Second Cut Reuse Centre"), taxRegion: "CA-NS", currency: "CAD" };
  const board = { name: another("Board"), category: "other", purchaseUnit: "each" };
  await addStore(scope, storeId, storeEntry.parse(store));
  await addMaterial(scope, materialId, materialEntry.parse(board));
  await addLot(scope, lotId, lotEntry.parse(bought(materialId, "4", "40", "2025-06-02")));
  return { workspaceId, storeId, materialId, lotId };
}

afterAll(async () => {
  const { disconnect } = await import("../../lib/data/client.ts");
  await disconnect();
});

test("the interface speaks to the owner's workspace, never to the demo, whatever a browser is looking at", async () => {
  const { workspaceId, storeId, materialId, lotId } = await demo();
  const cookie = { cookie: "dunnage-workspace=demo" };
  const { json } = await api.ask("GET", "/workspace", undefined, cookie);
  expect(workspaceShape.parse(json).id).not.toBe(workspaceId);
  const listed = await api.read(z.object({ items: z.array(storeShape) }), "/stores?limit=1000");
  expect(listed.items.map(({ id }) => id)).not.toContain(storeId);
  for (const path of [`/stores/${storeId}`, `/materials/${materialId}/prices`, `/lots/${lotId}`])
    await api.refused(404, "GET", path);
  await api.refused(404, "PATCH", `/stores/${storeId}`, { name: "taken over" });
  await api.refused(404, "DELETE", `/lots/${lotId}`);
  await api.refused(404, "POST", `/lots/${lotId}/draws`, { quantity: "1", on: "2025-06-03" });
});

test("what names another workspace's things names nothing", async () => {
  const { storeId, materialId } = await demo();
  const own = { store: await someStore(api), plywood: await somePlywood(api) };
  const priced = (material: string, store: string) => priceSeen(material, store, "2025-06-02", "1");
  const refusedFor = async (body: object) => (await api.refused(422, "POST", "/observations", body)).faults;
  expect(await refusedFor(priced(own.plywood.id, storeId))).toEqual(["storeId: not-there"]);
  expect(await refusedFor(priced(materialId, own.store.id))).toEqual(["materialId: not-there"]);
  const lot = await api.make(lotShape, "/lots", bought(own.plywood.id, "4", "160", "2025-06-02"));
  expect(lot.materialId).toBe(own.plywood.id);
});

test("an id another workspace has is free here", async () => {
  const { storeId } = await demo();
  const { status } = await api.ask("POST", "/stores", {
    id: storeId,
    name: another("Yard"),
    taxRegion: "CA-NS",
    currency: "CAD",
  });
  expect(status).toBe(201);
});
