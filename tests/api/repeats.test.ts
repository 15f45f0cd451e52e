import { v4, v7 } from "uuid";
import { describe, expect, test } from "vitest";
import * as z from "zod";
import { manyShape } from "../../app/api/v1/_answers/many-answer.ts";
import { lotShape, stockEventShape } from "../../lib/show/api-lot.ts";
import { observationShape } from "../../lib/show/api-observation.ts";
import { projectShape, requirementShape } from "../../lib/show/api-project.ts";
import { exchangeRateShape } from "../../lib/show/api-settings.ts";
import { storeShape } from "../../lib/show/api-store.ts";
import { ownInterface } from "../support/interface.ts";
import { another, bought, priceSeen, someNeed, somePlywood, someStore } from "../support/interface-things.ts";

const api = ownInterface();

/** A create sent twice answers the same thing with 200, another content under its id is 409 and changes nothing. */
async function sentAgain<S extends z.ZodType>(shape: S, path: string, body: object, other: object) {
  const first = await api.make(shape, path, body);
  expect(await api.change(shape, "POST", path, body)).toEqual(first);
  const { faults } = await api.refused(409, "POST", path, { ...body, ...other });
  expect(faults).toEqual(["id: used-id"]);
  expect(await api.change(shape, "POST", path, body)).toEqual(first);
}

describe("a repeated create", () => {
  test("answers 200 with what is there, 409 for other content, for every noun", async () => {
    const plywood = await somePlywood(api);
    const store = await someStore(api);
    const { project, requirement } = await someNeed(api, plywood.id, "10");
    const lot = await api.make(lotShape, "/lots", bought(plywood.id, "10", "400", "2025-06-02"));
    await sentAgain(
      storeShape,
      "/stores",
      { id: v7(), name: another("Yard"), taxRegion: "CA-NS", currency: "CAD" },
      { currency: "USD" },
    );
    await sentAgain(projectShape, "/projects", { id: v7(), name: another("Cabin") }, { budget: "1" });
    const seen = priceSeen(plywood.id, store.id, "2025-06-02", "40.00");
    await sentAgain(observationShape, "/observations", { id: v7(), ...seen }, { amount: "40.01" });
    const need = { materialId: plywood.id, quantity: "4", unit: "sheet", neededBy: "2025-07-01" };
    await sentAgain(
      requirementShape,
      `/projects/${project.id}/requirements`,
      { id: v7(), ...need },
      { quantity: "5" },
    );
    const receipt = bought(plywood.id, "4", "160", "2025-06-03");
    await sentAgain(lotShape, "/lots", { id: v7(), ...receipt }, { quantity: "5" });
    const draw = { id: v7(), requirementId: requirement.id, quantity: "2", on: "2025-06-04" };
    await sentAgain(stockEventShape, `/lots/${lot.id}/draws`, draw, { quantity: "3" });
  });

  test("may have an id of any version, in capitals or not", async () => {
    const id = v4();
    const body = { id: id.toUpperCase(), name: another("Yard"), taxRegion: "CA-NS", currency: "CAD" };
    expect((await api.make(storeShape, "/stores", body)).id).toBe(id);
    expect((await api.change(storeShape, "POST", "/stores", { ...body, id })).id).toBe(id);
    const read = await api.read(storeShape, `/stores/${id.toUpperCase()}`);
    expect(read.id).toBe(id);
  });

  test("needs no id: then one is made", async () => {
    const store = await someStore(api);
    expect(store.id).toMatch(/^[0-9a-f-]{14}7/); // version 7
    expect((await api.refused(422, "POST", "/stores", { id: "17" })).faults).toContain("id: not-an-id");
  });

  test("written another way is still the same content", async () => {
    const plywood = await somePlywood(api);
    const store = await someStore(api);
    const body = { id: v7(), ...priceSeen(plywood.id, store.id, "2025-06-02", "40.00") };
    const first = await api.make(observationShape, "/observations", body);
    const again = { ...Object.fromEntries(Object.entries(body).reverse()), amount: "40", note: null };
    expect(await api.change(observationShape, "POST", "/observations", again)).toEqual(first);
  });

  test("of a deleted one answers 200 and it stays deleted", async () => {
    const plywood = await somePlywood(api);
    const store = await someStore(api);
    const body = { id: v7(), ...priceSeen(plywood.id, store.id, "2025-06-02", "40.00") };
    await api.make(observationShape, "/observations", body);
    await api.change(observationShape, "DELETE", `/observations/${body.id}`);
    const again = await api.change(observationShape, "POST", "/observations", body);
    expect(again.deletedAt).not.toBeNull();
  });

  test("of a corrected one is compared with what was first received", async () => {
    const plywood = await somePlywood(api);
    const store = await someStore(api);
    const body = { id: v7(), ...priceSeen(plywood.id, store.id, "2025-06-02", "40.00") };
    await api.make(observationShape, "/observations", body);
    const correction = { amount: "41.00", reason: "read again" };
    await api.change(observationShape, "POST", `/observations/${body.id}/corrections`, correction);
    expect((await api.change(observationShape, "POST", "/observations", body)).amount).toBe("41.00");
    await api.refused(409, "POST", "/observations", { ...body, amount: "41.00" });
  });

  test("twenty at once make one thing", async () => {
    const body = { id: v7(), name: another("Yard"), taxRegion: "CA-NS", currency: "CAD" };
    const answers = await Promise.all(Array.from({ length: 20 }, () => api.ask("POST", "/stores", body)));
    const statuses = answers.map(({ status }) => status).sort();
    expect(statuses).toEqual([...Array.from({ length: 19 }, () => 200), 201]);
  });
});

describe("many at once", () => {
  test("each entry stands alone: good ones are stored, each bad one has all its faults and its place", async () => {
    const plywood = await somePlywood(api);
    const store = await someStore(api);
    const [one, two] = [v7(), v7()];
    const price = (amount: unknown, more: object = {}) => ({
      ...priceSeen(plywood.id, store.id, "2025-06-02", "1"),
      amount,
      ...more,
    });
    const answer = await api.change(manyShape, "POST", "/observations", {
      entries: [
        price("40", { id: one }),
        price("1.2.3", { id: two, colour: "red" }),
        price("41"),
        price("42", { storeId: v7() }),
        price("43", { id: one }),
        7,
      ],
    });
    expect(answer.accepted).toHaveLength(2);
    expect(answer.accepted[0]).toBe(one);
    const said = answer.rejected.map(({ index, id, errors }) => ({
      index,
      id,
      errors: errors.map(({ path, code }) => `${path}: ${code}`).sort(),
    }));
    expect(said).toEqual([
      { index: 1, id: two, errors: ["amount: not-a-number", "colour: unknown-field"] },
      { index: 3, id: null, errors: ["storeId: not-there"] },
      { index: 4, id: one, errors: ["id: used-id"] },
      { index: 5, id: null, errors: [": not-an-object"] },
    ]);
  });

  test("sent again is accepted again and stored once", async () => {
    const plywood = await somePlywood(api);
    const store = await someStore(api);
    const entries = Array.from({ length: 500 }, (_, index) => ({
      id: v7(),
      ...priceSeen(plywood.id, store.id, "2025-06-02", `${40 + index}`),
    }));
    const first = await api.change(manyShape, "POST", "/observations", { entries });
    expect(await api.change(manyShape, "POST", "/observations", { entries })).toEqual(first);
    const path = `/observations?materialId=${plywood.id}&limit=1000`;
    const { items } = await api.read(z.object({ items: z.array(observationShape) }), path);
    expect(items).toHaveLength(500);
  });

  test("works for every noun that is created", async () => {
    const plywood = await somePlywood(api);
    const { project } = await someNeed(api, plywood.id, "10");
    const need = { materialId: plywood.id, quantity: "4", unit: "sheet", neededBy: "2025-07-01" };
    const bulk: readonly (readonly [string, object])[] = [
      ["/stores", { name: another("Yard"), taxRegion: "CA-NS", currency: "CAD" }],
      ["/materials", { name: another("Board"), category: "other", purchaseUnit: "each" }],
      ["/projects", { name: another("Cabin") }],
      [`/projects/${project.id}/requirements`, need],
      ["/lots", bought(plywood.id, "4", "160", "2025-06-03")],
    ];
    for (const [path, good] of bulk) {
      const answer = await api.change(manyShape, "POST", path, { entries: [good, {}] });
      expect([path, answer.accepted.length, answer.rejected.map(({ index }) => index)]).toEqual([
        path,
        1,
        [1],
      ]);
    }
  });

  test("exchange rates are known by day, pair and source", async () => {
    const rate = { date: "2025-06-02", base: "USD", quote: "CAD", rate: "1.3700", source: "test table" };
    const key = "2025-06-02 USD CAD test table";
    await api.make(exchangeRateShape, "/exchange-rates", rate);
    expect((await api.change(exchangeRateShape, "POST", "/exchange-rates", rate)).rate).toBe("1.37");
    await api.refused(409, "POST", "/exchange-rates", { ...rate, rate: "1.38" });
    const entries = [
      rate,
      { ...rate, rate: "1.38" },
      { ...rate, date: "2025-06-03" },
      { ...rate, quote: "USD" },
    ];
    const answer = await api.change(manyShape, "POST", "/exchange-rates", { entries });
    expect(answer.accepted).toEqual([key, "2025-06-03 USD CAD test table"]);
    expect(answer.rejected.map(({ index, errors }) => [index, errors[0]?.code])).toEqual([
      [1, "used-id"],
      [3, "same-currency"],
    ]);
  });

  test("other fields beside the entries, or no list, refuse the whole", async () => {
    const { faults } = await api.refused(422, "POST", "/stores", { entries: {}, name: "x" });
    expect(faults).toEqual(["entries: not-a-list", "name: unknown-field"]);
    const entries = Array.from({ length: 1001 }, () => ({}));
    expect((await api.refused(422, "POST", "/stores", { entries })).faults).toEqual(["entries: too-many"]);
  });
});
