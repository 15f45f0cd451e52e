import type * as z from "zod";
import type { AnyOperation } from "../_operations/all.ts";
import { isObject, type JsonSchema, jsonSchema } from "./body.ts";
import { problemShape, TITLES } from "./problem.ts";

const PROBLEM = { $ref: "#/components/schemas/Problem" };

function json(schema: JsonSchema) {
  return { content: { "application/json": { schema } } };
}

/** What can go wrong with an operation, by status. */
function problemsOf({ path, body, makes, query }: AnyOperation): readonly (keyof typeof TITLES)[] {
  const asked = body.schema !== null || Object.keys(propertiesOf(query)).length > 0;
  return [
    ...(body.schema === null ? [] : ([400, 413, 415] as const)),
    403,
    ...(path.includes("{") ? ([404] as const) : []),
    ...(makes ? ([409] as const) : []),
    ...(asked || path.includes("{") ? ([422] as const) : []),
    500,
    503,
  ];
}

function propertiesOf(query: z.ZodType): Readonly<Record<string, JsonSchema>> {
  const { properties } = jsonSchema(query, "input");
  return isObject(properties) ? (properties as Readonly<Record<string, JsonSchema>>) : {};
}

function parametersOf({ path, query }: AnyOperation) {
  const inPath = [...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => ({
    name,
    in: "path",
    required: true,
    schema: { type: "string", format: "uuid" },
  }));
  const required = new Set(jsonSchema(query, "input").required as readonly string[] | undefined);
  const inQuery = Object.entries(propertiesOf(query)).map(([name, schema]) => ({
    name,
    in: "query",
    required: required.has(name),
    schema,
  }));
  return [...inPath, ...inQuery];
}

/** A name for an operation that programs can use: "POST /lots/{id}/draws" is postLotsIdDraws. */
function operationId({ method, path }: AnyOperation): string {
  const words = path.split(/[^A-Za-z0-9]+/).filter((word) => word !== "");
  return method.toLowerCase() + words.map((word) => word.charAt(0).toUpperCase() + word.slice(1)).join("");
}

function described(operation: AnyOperation) {
  const { summary, body, answer, makes } = operation;
  const answered = json(jsonSchema(answer, "output"));
  const problems = problemsOf(operation).map((status) => [
    status,
    { description: TITLES[status], content: { "application/problem+json": { schema: PROBLEM } } },
  ]);
  return {
    operationId: operationId(operation),
    summary,
    parameters: parametersOf(operation),
    ...(body.schema === null ? {} : { requestBody: { required: true, ...json(body.schema()) } }),
    responses: {
      200: {
        description: makes ? "Made before with the same content, or what became of many" : "OK",
        ...answered,
      },
      ...(makes ? { 201: { description: "Made", ...answered } } : {}),
      ...Object.fromEntries(problems),
    },
  };
}

/** The OpenAPI document of some operations, made of the schemas they read and answer with. Source: OpenAPI 3.1.1. */
export function openApi(operations: readonly AnyOperation[], version: string) {
  const paths: Record<string, Record<string, ReturnType<typeof described>>> = {};
  for (const operation of operations) {
    const under = paths[operation.path] ?? {};
    paths[operation.path] = { ...under, [operation.method.toLowerCase()]: described(operation) };
  }
  return {
    openapi: "3.1.1",
    info: {
      title: "Dunnage",
      version,
      description:
        "Amounts, quantities and rates are decimal text, days are YYYY-MM-DD, ids are UUIDs made by the caller or here. " +
        "Problems are RFC 9457 and list every fault. Answers have home currency and unit prices to 6 places for reading; " +
        "totals come from unrounded prices.",
    },
    servers: [{ url: "/api/v1" }],
    paths,
    components: { schemas: { Problem: jsonSchema(problemShape, "output") } },
  };
}
