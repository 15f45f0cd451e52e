import { v7 } from "uuid";
import { afterAll, beforeAll, expect, test } from "vitest";
import { storeShape } from "../../lib/show/api-store.ts";
import { type Line, lineTo } from "../support/cut-line.ts";
import { freshDatabase } from "../support/database.ts";
import { interfaceAt } from "../support/interface.ts";
import { another } from "../support/interface-things.ts";
import { type Served, servedOn } from "../support/served.ts";

let line: Line;
let web: Served;
const api = interfaceAt(() => web.address);

beforeAll(async () => {
  line = await lineTo(await freshDatabase());
  web = await servedOn(line.url);
});
afterAll(async () => {
  await web?.stop();
  await line?.close();
});

test("the database gone is 503 for reading, writing and health, and the program goes on when it is back", async () => {
  const body = { id: v7(), name: another("Yard"), taxRegion: "CA-NS", currency: "CAD" };
  const before = await api.make(storeShape, "/stores", body);
  line.cut();
  const asked: readonly (readonly [string, string])[] = [
    ["GET", "/stores"],
    ["POST", "/stores"],
    ["GET", "/health"],
    ["PATCH", "/workspace"],
    ["DELETE", `/stores/${before.id}`],
  ];
  for (const [method, path] of asked) {
    const refused = await api.refused(503, method, path, {
      ...(path === "/stores" ? { ...body, id: v7() } : {}),
    });
    expect(refused.headers.get("retry-after")).toBe("5");
    expect(refused.detail).toContain("database");
  }
  // What needs no database, and faults of the request itself, are answered all the same.
  await api.refused(422, "POST", "/stores", {});
  line.join();
  await expect.poll(async () => (await api.ask("GET", "/health")).status, { timeout: 20_000 }).toBe(200);
  expect(await api.change(storeShape, "POST", "/stores", body)).toEqual(before);
});
