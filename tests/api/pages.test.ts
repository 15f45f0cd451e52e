import { v4 } from "uuid";
import { describe, expect, test } from "vitest";
import * as z from "zod";
import { manyShape } from "../../app/api/v1/_answers/many-answer.ts";
import { observationShape } from "../../lib/show/api-observation.ts";
import { exchangeRateShape, taxRegionShape } from "../../lib/show/api-settings.ts";
import { storeShape } from "../../lib/show/api-store.ts";
import { ownInterface } from "../support/interface.ts";
import { another, priceSeen, somePlywood, someStore } from "../support/interface-things.ts";

const api = ownInterface();

/** A list walked to its end, page by page; `between` is done after each page. */
async function walked<S extends z.ZodType>(item: S, path: string, between: () => Promise<unknown>) {
  const page = z.strictObject({ items: z.array(item), nextCursor: z.string().nullable() });
  const seen: z.output<S>[] = [];
  let cursor: string | null = "";
  for (let pages = 0; cursor !== null; pages += 1) {
    expect(pages).toBeLessThan(100);
    const from: string = cursor === "" ? "" : `&cursor=${encodeURIComponent(cursor)}`;
    const { items, nextCursor }: z.output<typeof page> = await api.read(page, `${path}${from}`);
    seen.push(...items);
    cursor = nextCursor;
    await between();
  }
  return seen;
}

/** A store whose id stands anywhere among the others, since callers make ids of any version. */
const anywhere = () => someStore(api, { id: v4(), name: another("Yard") });

describe("a list read page by page", () => {
  test("shows everything that was there exactly once, while stores are added before and after", async () => {
    const there = await Promise.all(Array.from({ length: 25 }, anywhere));
    const seen = await walked(storeShape, "/stores?limit=4", anywhere);
    const ids = seen.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toEqual(expect.arrayContaining(there.map(({ id }) => id)));
  });

  test("goes on behind a store that was archived after it was read", async () => {
    const there = await Promise.all(Array.from({ length: 6 }, anywhere));
    const seen: string[] = [];
    const page = z.object({ items: z.array(storeShape), nextCursor: z.string().nullable() });
    const first = await api.read(page, "/stores?limit=2");
    seen.push(...first.items.map(({ id }) => id));
    await api.change(storeShape, "DELETE", `/stores/${first.nextCursor}`);
    const rest = await api.read(page, `/stores?limit=1000&cursor=${first.nextCursor}`);
    seen.push(...rest.items.map(({ id }) => id));
    expect(new Set(seen).size).toBe(seen.length);
    expect(seen).toEqual(expect.arrayContaining(there.map(({ id }) => id)));
  });

  test("observations come the newest first, and later ones do not move the page", async () => {
    const plywood = await somePlywood(api);
    const store = await someStore(api);
    const price = (day: number) =>
      priceSeen(plywood.id, store.id, `2025-06-${String(day).padStart(2, "0")}`, "40");
    const entries = Array.from({ length: 20 }, (_, index) => price(1 + (index % 10)));
    const { accepted } = await api.change(manyShape, "POST", "/observations", { entries });
    const add = () => api.make(observationShape, "/observations", price(28));
    const seen = await walked(observationShape, `/observations?materialId=${plywood.id}&limit=3`, add);
    expect(seen.map(({ id }) => id).sort()).toEqual([...accepted].sort());
    const days = seen.map(({ seenOn }) => seenOn);
    expect(days).toEqual([...days].sort().reverse());
  });

  test("is in the order of its keys where there are no ids", async () => {
    const nothing = () => Promise.resolve();
    const codes = (await walked(taxRegionShape, "/tax-regions?limit=5", nothing)).map(({ code }) => code);
    expect(codes).toEqual([...codes].sort());
    expect(codes.length).toBeGreaterThanOrEqual(13); // ten provinces and three territories
    const days = ["2025-06-04", "2025-06-02", "2025-06-03"];
    const rate = { base: "USD", quote: "CAD", rate: "1.37", source: "test table" };
    for (const date of days) await api.make(exchangeRateShape, "/exchange-rates", { ...rate, date });
    const rates = await walked(exchangeRateShape, "/exchange-rates?limit=1", nothing);
    expect(rates.map(({ date }) => date)).toEqual([...days].sort());
  });
});
