import { v7 } from "uuid";
import * as z from "zod";
import { id as idField } from "../../../../lib/entry-fields.ts";
import { type Fault, faultsOf } from "../../../../lib/fault.ts";
import { ONE_MEGABYTE, TEN_MEGABYTES } from "./read-body.ts";

/** What a read body is: the value, or all its faults. */
export type Read<T> = Readonly<{ ok: true; value: T }> | Readonly<{ ok: false; faults: readonly Fault[] }>;
type JsonSchema = Readonly<Record<string, unknown>>;

/** How a request's body is read, how large it may be, and how the document describes it. */
export type Body<T> = Readonly<{ read: (raw: unknown) => Read<T>; limit: number; schema: () => JsonSchema }>;

/** A zod schema as JSON Schema: of what comes in, or of what goes out. */
export function jsonSchema(schema: z.ZodType, io: "input" | "output"): JsonSchema {
  const { $schema: _, ...described } = z.toJSONSchema(schema, { io, unrepresentable: "any" });
  return described;
}

/** The output of a schema, or every fault. */
export function readAs<S extends z.ZodType>(schema: S, raw: unknown): Read<z.output<S>> {
  const parsed = schema.safeParse(raw);
  return parsed.success ? { ok: true, value: parsed.data } : { ok: false, faults: faultsOf(parsed.error) };
}

/** A body that is the schema and nothing else. */
export function plainBody<S extends z.ZodType>(schema: S): Body<z.output<S>> {
  return {
    read: (raw) => readAs(schema, raw),
    limit: ONE_MEGABYTE,
    schema: () => jsonSchema(schema, "input"),
  };
}

/** A new thing and its id: the caller's, or one made here. */
export type New<T> = Readonly<{ id: string; entry: T }>;

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function readNew<S extends z.ZodType>(schema: S, raw: unknown): Read<New<z.output<S>>> {
  const { id: given, ...rest } = isObject(raw) ? raw : {};
  const id = given === undefined ? { ok: true as const, value: v7() } : readAs(idField(), given);
  const entry = readAs(schema, isObject(raw) ? rest : raw);
  if (id.ok && entry.ok) return { ok: true, value: { id: id.value, entry: entry.value } };
  const idFaults = id.ok ? [] : id.faults.map((fault) => ({ ...fault, path: "id" }));
  return { ok: false, faults: [...idFaults, ...(entry.ok ? [] : entry.faults)] };
}

function newSchema(schema: z.ZodType): JsonSchema {
  const { properties, ...described } = jsonSchema(schema, "input");
  const id = {
    type: "string",
    format: "uuid",
    description: "made by the caller, so that a repeat does no harm",
  };
  return { ...described, properties: { id, ...(isObject(properties) ? properties : {}) } };
}

/** A body that makes a thing; its id may be given. */
export function newBody<S extends z.ZodType>(schema: S): Body<New<z.output<S>>> {
  return { read: (raw) => readNew(schema, raw), limit: ONE_MEGABYTE, schema: () => newSchema(schema) };
}

/** One entry of many: read, or refused by itself. */
export type OneOfMany<T> = Readonly<{ index: number; id: string | null; read: Read<New<T>> }>;
export type OneOrMany<T> =
  | Readonly<{ many: false; one: New<T> }>
  | Readonly<{ many: true; entries: readonly OneOfMany<T>[] }>;

const MOST_ENTRIES = 20_000;

function readMany<S extends z.ZodType>(
  schema: S,
  raw: Readonly<Record<string, unknown>>,
): Read<OneOrMany<z.output<S>>> {
  const { entries, ...others } = raw;
  const faults: Fault[] = Object.keys(others).map((path) => ({ path, code: "unknown-field" }));
  if (!Array.isArray(entries))
    return { ok: false, faults: [{ path: "entries", code: "not-a-list" }, ...faults] };
  if (entries.length > MOST_ENTRIES) faults.unshift({ path: "entries", code: "too-many" });
  if (faults.length > 0) return { ok: false, faults };
  const read = entries.map((entry: unknown, index) => {
    const given = isObject(entry) && typeof entry.id === "string" ? entry.id : null;
    return { index, id: given, read: readNew(schema, entry) };
  });
  return { ok: true, value: { many: true, entries: read } };
}

/** A body that makes one thing, or many as { entries: [...] }, each standing alone. */
export function oneOrManyBody<S extends z.ZodType>(schema: S): Body<OneOrMany<z.output<S>>> {
  return {
    read: (raw) => {
      if (isObject(raw) && "entries" in raw) return readMany(schema, raw);
      const one = readNew(schema, raw);
      return one.ok ? { ok: true, value: { many: false, one: one.value } } : one;
    },
    limit: TEN_MEGABYTES,
    schema: () => ({
      anyOf: [
        newSchema(schema),
        {
          type: "object",
          properties: { entries: { type: "array", items: newSchema(schema), maxItems: MOST_ENTRIES } },
          required: ["entries"],
          additionalProperties: false,
        },
      ],
    }),
  };
}

/** No body at all. */
export const noBody: Body<null> = { read: () => ({ ok: true, value: null }), limit: 0, schema: () => ({}) };
