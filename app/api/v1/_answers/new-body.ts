import { v7 } from "uuid";
import type * as z from "zod";
import { id as idField } from "../../../../lib/entry-fields.ts";
import { type Body, isObject, type JsonSchema, jsonSchema, type Read, readAs } from "./body.ts";
import { ONE_MEGABYTE } from "./read-body.ts";

/** A new thing and its id: the caller's, or one made here. */
export type New<T> = Readonly<{ id: string; entry: T }>;

/** An entry and, beside its fields, its id. `read` reads the fields without it. */
export function readNew<T>(read: (raw: unknown) => Read<T>, raw: unknown): Read<New<T>> {
  const { id: given, ...rest } = isObject(raw) ? raw : {};
  const id = given === undefined ? { ok: true as const, value: v7() } : readAs(idField(), given);
  const entry = read(isObject(raw) ? rest : raw);
  if (id.ok && entry.ok) return { ok: true, value: { id: id.value, entry: entry.value } };
  const idFaults = id.ok ? [] : id.faults.map((fault) => ({ ...fault, path: "id" }));
  return { ok: false, faults: [...idFaults, ...(entry.ok ? [] : entry.faults)] };
}

/** An object's schema with an optional id beside its fields. */
export function withId({ properties, ...described }: JsonSchema): JsonSchema {
  const id = {
    type: "string",
    format: "uuid",
    description: "made by the caller, so that a repeat does no harm",
  };
  return { ...described, properties: { id, ...(isObject(properties) ? properties : {}) } };
}

/** A body that makes a thing; its id may be given. */
export function newBody<S extends z.ZodType>(schema: S): Body<New<z.output<S>>> {
  return {
    read: (raw) => readNew((rest) => readAs(schema, rest), raw),
    limit: ONE_MEGABYTE,
    schema: () => withId(jsonSchema(schema, "input")),
  };
}
