import { v7 } from "uuid";
import { describe, expect, test } from "vitest";
import * as z from "zod";
import { disposalShape } from "../../lib/show/api-disposal.ts";
import { stockEventShape } from "../../lib/show/api-lot.ts";
import { materialShape } from "../../lib/show/api-material.ts";
import { askingPriceShape, salvageShape } from "../../lib/show/api-salvage.ts";
import { ownInterface } from "../support/interface.ts";
import { another, someNeed } from "../support/interface-things.ts";

const api = ownInterface();
const ON = "2025-06-02";

const boards = () =>
  api.make(materialShape, "/materials", {
    name: another("Old fir 2x4"),
    category: "dimensional-lumber",
    purchaseUnit: "linear-foot",
    dimensions: { nominalThickness: "2 in", nominalWidth: "4 in" },
  });
const counted = (more: object = {}) => ({
  reclaimedFrom: "porch",
  hours: "6.5",
  hourlyRate: "28",
  hauling: "35.50",
  purchasePrice: "40",
  currency: "CAD",
  condition: "0.6",
  tally: [
    { pieces: "12", length: "8 ft" },
    { pieces: "5", length: "10 ft 3 in" },
  ],
  on: ON,
  ...more,
});

describe("salvage", () => {
  test("counted in is a lot with its cost; it is read, listed and corrected", async () => {
    const { id: materialId } = await boards();
    const made = await api.make(salvageShape, "/salvage", { materialId, ...counted() });
    // 12 x 8 + 5 x 10.25 ft; 6.5 x 28 + 35.50 + 40
    expect([made.lot.quantity, made.lot.paid.amount, made.lot.origin]).toEqual([
      "147.25",
      "257.50",
      "salvaged",
    ]);
    expect(made).toMatchObject({ hours: "6.5", tally: [{ pieces: "12", length: "8 ft" }, { pieces: "5" }] });
    const path = `/salvage/${made.lot.id}`;
    expect(await api.read(salvageShape, path)).toEqual(made);
    const list = z.strictObject({ items: z.array(salvageShape), nextCursor: z.string().nullable() });
    expect((await api.read(list, "/salvage")).items.map(({ lot }) => lot.id)).toContain(made.lot.id);
    const body = counted({ tally: [], quantity: "100", hours: "7" });
    const after = await api.change(salvageShape, "POST", `${path}/corrections`, body);
    expect([after.lot.quantity, after.lot.paid.amount]).toEqual(["100", "271.50"]);
  });

  test("with a tally that cannot be read is refused, each row named", async () => {
    const { id: materialId } = await boards();
    const tally = [{ pieces: "1.5", length: "8 ft" }, { pieces: "2" }];
    const odd = { materialId, ...counted({ tally, condition: "0" }) };
    expect((await api.refused(422, "POST", "/salvage", odd)).faults).toEqual([
      "condition: not-positive",
      "tally.0.pieces: not-whole",
    ]);
    const rows = counted({ tally: [{ pieces: "1", length: "8" }, { pieces: "2" }] });
    expect((await api.refused(422, "POST", "/salvage", { materialId, ...rows })).faults).toEqual([
      "tally.0.length: length-unit-missing",
      "tally.1.length: missing",
    ]);
    expect((await api.ask("GET", `/salvage/${v7()}`)).status).toBe(404);
  });

  test("is set aside only for a requirement that accepts used material", async () => {
    const { id: materialId } = await boards();
    const { lot } = await api.make(salvageShape, "/salvage", { materialId, ...counted() });
    const asked = async (acceptsUsed: boolean) => {
      const { requirement } = await someNeed(api, materialId, "40", { unit: "linear-foot", acceptsUsed });
      return { requirementId: requirement.id, quantity: "40", on: "2025-06-03" };
    };
    for (const happened of ["allocations", "draws"]) {
      const refused = await api.refused(422, "POST", `/lots/${lot.id}/${happened}`, await asked(false));
      expect(refused.faults).toEqual(["requirementId: used-not-accepted"]);
    }
    await api.make(stockEventShape, `/lots/${lot.id}/allocations`, await asked(true));
  });

  test("is put up for sale at a dated price, which is undone and restored", async () => {
    const { id: materialId } = await boards();
    const { lot } = await api.make(salvageShape, "/salvage", { materialId, ...counted() });
    const path = `/lots/${lot.id}/asking-prices`;
    const asked = { amount: "2.25", currency: "CAD", since: "2025-06-05" };
    const made = await api.make(askingPriceShape, path, asked);
    expect(made).toMatchObject({ amount: "2.25", since: "2025-06-05", undoneAt: null });
    const undone = await api.change(askingPriceShape, "DELETE", `${path}/${made.id}`);
    expect(undone.undoneAt).not.toBeNull();
    const list = z.strictObject({ items: z.array(askingPriceShape) });
    expect((await api.read(list, path)).items).toEqual([]);
    await api.change(askingPriceShape, "POST", `${path}/${made.id}/restore`);
    expect((await api.read(list, path)).items).toEqual([made]);
    expect((await api.ask("DELETE", `/lots/${v7()}/asking-prices/${made.id}`)).status).toBe(404);
  });
});

describe("waste", () => {
  test("is a project's cost, all in; corrected, undone and restored", async () => {
    const { id: materialId } = await boards();
    const { project } = await someNeed(api, materialId, "40", { unit: "linear-foot" });
    const path = `/projects/${project.id}/disposals`;
    const weight = { value: "680", unit: "kilogram" };
    const body = { kind: "mixed", on: ON, feeBasis: "tonne", fee: "125", hauling: "30", currency: "CAD" };
    const made = await api.make(disposalShape, path, { ...body, taxRegion: "CA-NS", weight });
    // 0.68 x 125 = 85, + 14 % = 96.90, + 30
    expect(made.cost).toEqual({ amount: "126.90", currency: "CAD" });
    expect(made.weighs).toEqual({ kilograms: "680", from: "weighed", source: null });
    const unweighed = await api.make(disposalShape, path, body);
    expect([unweighed.cost, unweighed.unknown]).toEqual([null, "weight-unknown"]);
    const list = z.strictObject({ items: z.array(disposalShape) });
    expect((await api.read(list, path)).items.map(({ id }) => id)).toEqual([unweighed.id, made.id]);
    const one = `/disposals/${made.id}`;
    const flat = { ...body, feeBasis: "flat", fee: "60" };
    expect((await api.change(disposalShape, "POST", `${one}/corrections`, flat)).cost?.amount).toBe("90.00");
    expect((await api.change(disposalShape, "DELETE", one)).undoneAt).not.toBeNull();
    expect((await api.read(list, path)).items.map(({ id }) => id)).toEqual([unweighed.id]);
    expect((await api.change(disposalShape, "POST", `${one}/restore`)).undoneAt).toBeNull();
  });

  test("that cannot be right is refused with every reason", async () => {
    const { id: materialId } = await boards();
    const { project } = await someNeed(api, materialId, "40", { unit: "linear-foot" });
    const odd = { kind: "soup", on: ON, feeBasis: "load", fee: "-1", currency: "CAD", materialId };
    const { faults } = await api.refused(422, "POST", `/projects/${project.id}/disposals`, odd);
    expect(faults).toEqual(["kind: unknown-choice", "fee: negative", "loads: missing", "quantity: missing"]);
    const none = { kind: "mixed", on: ON, feeBasis: "flat", fee: "1", currency: "CAD" };
    expect((await api.ask("POST", `/projects/${v7()}/disposals`, none)).status).toBe(404);
  });
});
