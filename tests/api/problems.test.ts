import { describe, expect, test } from "vitest";
import * as z from "zod";
import { materialShape } from "../../lib/show/api-material.ts";
import { workspaceShape } from "../../lib/show/api-settings.ts";
import { storeShape } from "../../lib/show/api-store.ts";
import { ownInterface, problemOf } from "../support/interface.ts";
import { another, bought, priceSeen, someNeed, somePlywood, someStore } from "../support/interface-things.ts";

const api = ownInterface();
const NOBODY = "00000000-0000-4000-8000-000000000000";
const materials = z.object({ items: z.array(materialShape) });

async function tomorrowAnd(days: number): Promise<string> {
  const { today } = await api.read(workspaceShape, "/workspace");
  const day = new Date(`${today}T00:00:00Z`);
  day.setUTCDate(day.getUTCDate() + 1 + days);
  return day.toISOString().slice(0, 10);
}

describe("a body that cannot be read", () => {
  test("no JSON at all is 400", async () => {
    const refused = problemOf(await api.send("POST", "/stores", '{"name": "half'), 400);
    expect(refused.detail).toContain("JSON");
    expect(problemOf(await api.send("POST", "/stores", ""), 400).faults).toEqual([]);
  });

  test("bytes that are not UTF-8 are 400, not another name", async () => {
    const bytes = new Uint8Array([0x7b, 0x22, 0x6e, 0x22, 0x3a, 0x22, 0xff, 0xfe, 0x22, 0x7d]);
    problemOf(await api.send("POST", "/stores", bytes), 400);
  });

  test("another content type is 415", async () => {
    problemOf(await api.send("POST", "/stores", "{}", { "content-type": "text/plain" }), 415);
  });

  test("10 MB of text in one entry are 413, and nothing is stored", async () => {
    const name = "n".repeat(10_000_000);
    const text = JSON.stringify({ name, taxRegion: "CA-NS", currency: "CAD" });
    expect(problemOf(await api.send("POST", "/stores", text), 413).detail).toContain("larger");
    const stored = await api.read(z.object({ items: z.array(storeShape) }), "/stores");
    expect(stored.items.filter((store) => store.name.length > 200)).toEqual([]);
  });

  test("2 MB are too much for one entry and not for many", async () => {
    const entry = { name: "n".repeat(2_000_000), taxRegion: "CA-NS", currency: "CAD" };
    await api.refused(413, "POST", "/stores", entry);
    const { status, json } = await api.ask("POST", "/stores", { entries: [entry] });
    expect([status, json]).toMatchObject([
      200,
      { accepted: [], rejected: [{ index: 0, errors: [{ path: "name", code: "too-long" }] }] },
    ]);
  });

  test("a body of a length nobody said is refused while it arrives", async () => {
    const piece = new TextEncoder().encode(" ".repeat(1_000_000));
    let sent = 0;
    const endless = new ReadableStream<Uint8Array>({
      pull: (to) => {
        sent += 1;
        if (sent > 12) to.close();
        else to.enqueue(piece);
      },
    });
    const response = await fetch(`${api.address()}/api/v1/stores`, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: endless,
      duplex: "half",
    } as RequestInit);
    expect(response.status).toBe(413);
  });

  test("thousands of brackets are 400 or 422, never a crash", async () => {
    const deep = "[".repeat(200_000) + "]".repeat(200_000);
    const { status } = await api.send("POST", "/stores", deep);
    expect([400, 422]).toContain(status);
    await api.read(workspaceShape, "/workspace");
  });
});

describe("a body that says what cannot be", () => {
  test("every fault is named at once, unknown fields by their own names", async () => {
    const { faults } = await api.refused(422, "POST", "/stores", {
      currency: "XYZ",
      taxRegion: 7,
      colour: "red",
      pricesIncludeTax: "yes",
    });
    expect(new Set(faults)).toEqual(
      new Set([
        "name: missing",
        "taxRegion: not-text",
        "currency: unknown-currency",
        "pricesIncludeTax: not-yes-or-no",
        "colour: unknown-field",
      ]),
    );
  });

  test("a list or a bare word is no object", async () => {
    expect((await api.refused(422, "POST", "/stores", [])).faults).toEqual([": not-an-object"]);
    expect((await api.refused(422, "POST", "/stores", "store")).faults).toEqual([": not-an-object"]);
    expect((await api.refused(422, "POST", "/stores", null)).faults).toEqual([": not-an-object"]);
  });

  test("amounts are plain decimal text", async () => {
    const store = await someStore(api);
    const plywood = await somePlywood(api);
    const wrong: readonly (readonly [unknown, string])[] = [
      [41.98, "not-text"],
      [1e30, "not-text"],
      ["1e30", "not-a-number"],
      ["1.2.3", "not-a-number"],
      ["1,049", "not-a-number"],
      ["-5", "not-positive"],
      ["0", "not-positive"],
      ["1000000000000000000000000000000", "too-large"],
      ["0.1234567", "too-many-places"],
      ["9".repeat(1000), "too-long"],
    ];
    for (const [amount, code] of wrong) {
      const body = { ...priceSeen(plywood.id, store.id, "2025-06-02", "1"), amount };
      const { faults } = await api.refused(422, "POST", "/observations", body);
      expect([amount, ...faults]).toEqual([amount, `amount: ${code}`]);
    }
  });

  test("a day of 1900 or beyond tomorrow is refused; tomorrow counts as today", async () => {
    const store = await someStore(api);
    const plywood = await somePlywood(api);
    const on = (day: string) => priceSeen(plywood.id, store.id, day, "40");
    expect((await api.refused(422, "POST", "/observations", on("1900-01-01"))).faults).toEqual([
      "seenOn: day-too-early",
    ]);
    const ahead = on(await tomorrowAnd(1));
    expect((await api.refused(422, "POST", "/observations", ahead)).faults).toEqual(["seenOn: day-ahead"]);
    expect((await api.refused(422, "POST", "/observations", on("2025-02-29"))).faults).toEqual([
      "seenOn: not-a-day",
    ]);
    const { today } = await api.read(workspaceShape, "/workspace");
    const { status, json } = await api.ask("POST", "/observations", on(await tomorrowAnd(0)));
    expect([status, json]).toMatchObject([201, { seenOn: today }]);
  });

  test("a unit the material cannot be converted to is refused with the reason", async () => {
    const store = await someStore(api);
    const plywood = await somePlywood(api);
    const perPound = priceSeen(plywood.id, store.id, "2025-06-02", "2", {
      per: { quantity: "1", unit: "lb" },
    });
    const { status, json } = await api.ask("POST", "/observations", perPound);
    expect([status, json]).toMatchObject([
      422,
      {
        errors: [{ path: "per.unit", code: "unit-not-convertible", values: { reason: expect.any(String) } }],
      },
    ]);
  });

  test("a waste of 900 % is out of range", async () => {
    const plywood = await somePlywood(api);
    const { project } = await someNeed(api, plywood.id, "10");
    const body = { materialId: plywood.id, quantity: "1", unit: "sheet", neededBy: "2025-07-01" };
    const { faults } = await api.refused(422, "POST", `/projects/${project.id}/requirements`, {
      ...body,
      wastePercent: "900",
    });
    expect(faults).toEqual(["wastePercent: percent-out-of-range"]);
  });

  test("names that would reach into an object are only unknown fields", async () => {
    const text = '{"name":"x","taxRegion":"CA-NS","currency":"CAD","__proto__":{"a":1},"constructor":{}}';
    const { faults } = problemOf(await api.send("POST", "/stores", text), 422);
    expect(faults).toContain("constructor: unknown-field");
  });

  test("what the database could not hold as text is refused as text", async () => {
    const body = { name: "nul \u0000 inside", taxRegion: "CA-NS", currency: "CAD" };
    expect((await api.refused(422, "POST", "/stores", body)).faults).toEqual(["name: not-text"]);
  });
});

describe("a query that says what cannot be", () => {
  test("unknown parameters, limits and days are named", async () => {
    const { faults } = await api.refused(422, "GET", "/lots?limit=5000&asOf=2025-13-01&sort=age");
    expect(new Set(faults)).toEqual(new Set(["limit: too-large", "asOf: not-a-day", "sort: unknown-field"]));
    expect((await api.refused(422, "GET", "/stores?cursor=abc&limit=0")).faults.toSorted()).toEqual([
      "cursor: not-an-id",
      "limit: not-positive",
    ]);
  });

  test("nobody knows what will be: as of a day to come is refused", async () => {
    const path = `/savings?asOf=${await tomorrowAnd(1)}`;
    expect((await api.refused(422, "GET", path)).faults).toEqual(["asOf: day-ahead"]);
    expect((await api.ask("GET", `/savings?asOf=${await tomorrowAnd(0)}`)).status).toBe(200);
  });
});

describe("what is not there", () => {
  test("is 404 under an id nobody has and under what is no id", async () => {
    for (const id of [NOBODY, "17", "%00", "..%2f..", "x".repeat(500)]) {
      for (const path of [`/stores/${id}`, `/materials/${id}/prices`, `/projects/${id}/exposure`])
        await api.refused(404, "GET", path);
      await api.refused(404, "POST", `/lots/${id}/draws`, { quantity: "1", on: "2025-06-01" });
      await api.refused(404, "PATCH", `/requirements/${id}`, { quantity: "1" });
      await api.refused(404, "DELETE", `/observations/${id}`);
    }
  });

  test("is a fault of the entry when the entry names it", async () => {
    const price = priceSeen(NOBODY, NOBODY, "2025-06-02", "1");
    expect((await api.refused(422, "POST", "/observations", price)).faults).toEqual([
      "materialId: not-there",
      "storeId: not-there",
    ]);
    expect((await api.refused(422, "POST", "/lots", bought(NOBODY, "1", "1", "2025-06-02"))).faults).toEqual([
      "materialId: not-there",
    ]);
  });

  test("an archived store takes no new price and can be restored", async () => {
    const store = await someStore(api);
    const plywood = await somePlywood(api);
    await api.change(storeShape, "DELETE", `/stores/${store.id}`);
    const price = priceSeen(plywood.id, store.id, "2025-06-02", "40");
    expect((await api.refused(422, "POST", "/observations", price)).faults).toEqual(["storeId: archived"]);
    await api.change(storeShape, "POST", `/stores/${store.id}/restore`);
    expect((await api.ask("POST", "/observations", price)).status).toBe(201);
  });

  test("one name is one thing, capitals aside", async () => {
    const name = another("Birch plywood");
    await somePlywood(api, { name });
    const again = { name: name.toUpperCase(), category: "sheet goods", purchaseUnit: "sheet" };
    expect((await api.refused(422, "POST", "/materials", again)).faults).toEqual(["name: name-taken"]);
    const listed = await api.read(materials, "/materials?limit=1000");
    expect(listed.items.filter((one) => one.name === name)).toHaveLength(1);
  });
});
