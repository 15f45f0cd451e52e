import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import * as z from "zod";
import { ownInterface } from "../support/interface.ts";

const api = ownInterface();
const NOBODY = "00000000-0000-4000-8000-000000000000";
const METHODS = ["GET", "POST", "PUT", "PATCH", "DELETE"];

const schema = z.record(z.string(), z.unknown());
const content = z.record(z.string(), z.strictObject({ schema }));
const operation = z.strictObject({
  operationId: z.string().regex(/^[a-z][A-Za-z0-9]+$/),
  summary: z.string().min(1),
  parameters: z.array(
    z.strictObject({ name: z.string(), in: z.enum(["path", "query"]), required: z.boolean(), schema }),
  ),
  requestBody: z.strictObject({ required: z.literal(true), content }).optional(),
  responses: z.record(
    z.string().regex(/^[2-5]\d\d$/),
    z.strictObject({ description: z.string().min(1), content }),
  ),
});
/** What this document uses of OpenAPI 3.1 (written by hand after the specification, strict: nothing else may be there). */
const openApi = z.strictObject({
  openapi: z.string().regex(/^3\.1\.\d$/),
  info: z.strictObject({ title: z.string(), version: z.string(), description: z.string() }),
  servers: z.array(z.strictObject({ url: z.literal("/api/v1") })),
  paths: z.record(
    z.string().startsWith("/"),
    z.record(z.enum(["get", "post", "patch", "delete"]).or(z.string()), operation),
  ),
  components: z.strictObject({ schemas: z.record(z.string(), schema) }),
});

/** Every operation of the document as [method, path]. */
async function documented() {
  const { paths, ...document } = await api.read(openApi, "/openapi.json");
  const operations = Object.entries(paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, said]) => ({ method: method.toUpperCase(), path, said })),
  );
  return { ...document, paths, operations };
}

/** The addresses of the interface as folders say them: "/lots/{id}/{happened}". */
function routes(): string[] {
  const folder = new URL("../../app/api/v1", import.meta.url);
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith("/route.ts") && !file.startsWith("[..."))
    .map((file) => `/${file.replace("/route.ts", "").replaceAll("[", "{").replaceAll("]", "}")}`);
}

/** Whether a documented path is one of a route's: "{id}" stands for itself, a word may stand for "{happened}". */
function isOf(route: string, path: string): boolean {
  const [parts, said] = [route.split("/"), path.split("/")];
  return (
    parts.length === said.length &&
    parts.every(
      (part, index) => part === said[index] || (part === "{happened}" && !said[index]?.startsWith("{")),
    )
  );
}

function* schemasIn(value: unknown): Generator<Readonly<Record<string, unknown>>> {
  if (typeof value !== "object" || value === null) return;
  if (!Array.isArray(value)) yield value as Readonly<Record<string, unknown>>;
  for (const inner of Object.values(value)) yield* schemasIn(inner);
}

describe("the document", () => {
  test("is OpenAPI 3.1, each operation named once, each path part declared", async () => {
    const { operations } = await documented();
    expect(operations.length).toBeGreaterThan(60);
    const names = operations.map(({ said }) => said.operationId);
    expect(new Set(names).size).toBe(names.length);
    for (const { path, said } of operations) {
      const inPath = said.parameters.filter((one) => one.in === "path").map(({ name }) => `{${name}}`);
      expect(inPath).toEqual(path.match(/\{\w+\}/g) ?? []);
    }
  });

  test("says for each create that it answers 201 when new, 200 when repeated, 409 for other content", async () => {
    const { operations } = await documented();
    const posts = operations.filter(({ method }) => method === "POST");
    const creates = posts.filter(({ path }) => !/\/(restore|corrections)$/.test(path));
    expect(creates.length).toBeGreaterThan(12);
    for (const { path, said } of creates)
      expect([path, ...Object.keys(said.responses)]).toEqual(
        expect.arrayContaining([path, "200", "201", "409"]),
      );
    const others = operations.filter((one) => !creates.includes(one));
    expect(others.filter(({ said }) => "201" in said.responses)).toEqual([]);
  });

  test("says a decimal as text everywhere", async () => {
    const { paths, components } = await documented();
    const schemas = [...schemasIn({ paths, components })];
    expect(schemas.length).toBeGreaterThan(1000);
    expect(schemas.filter(({ type }) => type === "number")).toEqual([]);
  });

  test("refers to nothing that is not there", async () => {
    const { paths, components } = await documented();
    const named = [...schemasIn({ paths })].flatMap(({ $ref }) => (typeof $ref === "string" ? [$ref] : []));
    expect(new Set(named)).toEqual(new Set(["#/components/schemas/Problem"]));
    expect(Object.keys(components.schemas)).toEqual(["Problem"]);
  });

  test("has no operation that is not reachable", async () => {
    const { operations } = await documented();
    const unreachable: string[] = [];
    for (const { method, path, said } of operations) {
      const address = path.replaceAll(/\{\w+\}/g, NOBODY);
      const { status, json } = await api.ask(method, address, {});
      const detail = z.object({ detail: z.string().optional() }).parse(json).detail ?? "";
      const expected = [...Object.keys(said.responses)].map(Number);
      if (!expected.includes(status) || detail.includes("no such address") || status >= 500)
        unreachable.push(`${method} ${path} ${status} ${detail}`);
    }
    expect(unreachable).toEqual([]);
  });

  test("leaves no address out, and none of its methods", async () => {
    const { operations } = await documented();
    const wrong: string[] = [];
    const found = routes();
    expect(found.length).toBeGreaterThan(25);
    for (const route of found) {
      const said = operations.filter(({ path }) => isOf(route, path));
      if (said.length === 0) wrong.push(`${route} is not documented`);
      for (const path of new Set(said.map((one) => one.path))) {
        const known = said.filter((one) => one.path === path).map(({ method }) => method);
        for (const method of METHODS.filter((one) => !known.includes(one))) {
          const address = path.replaceAll(/\{\w+\}/g, NOBODY);
          const { status, headers } = await api.ask(method, address, {});
          const allowed = (headers.get("allow") ?? "").split(", ").sort();
          if (status !== 405 || allowed.join() !== [...known].sort().join())
            wrong.push(`${method} ${path}: ${status}, allows ${allowed}`);
        }
      }
    }
    expect(wrong).toEqual([]);
  });

  test("is what an answer looks like: a schema of it takes the answer and refuses a number for a decimal", async () => {
    const { paths } = await documented();
    const said = paths["/workspace"]?.get?.responses["200"]?.content["application/json"]?.schema;
    const answered = z.fromJSONSchema(said ?? {});
    const { json } = await api.ask("GET", "/workspace");
    expect(answered.safeParse(json).success).toBe(true);
    const numbers = { ...z.record(z.string(), z.unknown()).parse(json), moneyRate: 7.3 };
    expect(answered.safeParse(numbers).success).toBe(false);
  });
});

describe("an address the interface does not have", () => {
  test("answers a problem whatever the method", async () => {
    for (const method of METHODS) {
      const refused = await api.refused(404, method, "/nothing/of/the/kind");
      expect(refused.detail).toContain("no such address");
    }
  });

  test("HEAD answers as GET without a body", async () => {
    const { status, json } = await api.ask("HEAD", "/workspace");
    expect([status, json]).toEqual([200, ""]);
  });
});

test("health says that the database answers and how far its tables are", async () => {
  const { status, json } = await api.ask("GET", "/health");
  expect(status).toBe(200);
  expect(json).toMatchObject({
    ok: true,
    database: expect.stringMatching(/^PostgreSQL 1[5-9]/),
    migrations: { applied: expect.any(Number), newest: expect.stringMatching(/^2\d{13}_/) },
    version: expect.stringMatching(/^\d+\.\d+\.\d+/),
  });
});
