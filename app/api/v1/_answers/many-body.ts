import type * as z from "zod";
import type { Fault } from "../../../../lib/fault.ts";
import { type Body, isObject, type JsonSchema, jsonSchema, type Read, readAs } from "./body.ts";
import { type New, readNew, withId } from "./new-body.ts";
import { TEN_MEGABYTES } from "./read-body.ts";

/** One entry of many: read, or refused by itself. id: the caller's. */
export type OneOfMany<T> = Readonly<{ index: number; id: string | null; read: Read<T> }>;
export type OneOrMany<T> =
  | Readonly<{ many: false; one: T }>
  | Readonly<{ many: true; entries: readonly OneOfMany<T>[] }>;

function readMany<T>(
  readOne: (raw: unknown) => Read<T>,
  { entries, ...others }: Readonly<Record<string, unknown>>,
  most: number,
): Read<OneOrMany<T>> {
  const faults: Fault[] = Object.keys(others).map((path) => ({ path, code: "unknown-field" }));
  if (!Array.isArray(entries))
    return { ok: false, faults: [{ path: "entries", code: "not-a-list" }, ...faults] };
  if (entries.length > most) faults.unshift({ path: "entries", code: "too-many" });
  if (faults.length > 0) return { ok: false, faults };
  const read = entries.map((entry: unknown, index) => {
    const id = isObject(entry) && typeof entry.id === "string" ? entry.id : null;
    return { index, id, read: readOne(entry) };
  });
  return { ok: true, value: { many: true, entries: read } };
}

function body<T>(
  readOne: (raw: unknown) => Read<T>,
  schemaOfOne: () => JsonSchema,
  most: number,
): Body<OneOrMany<T>> {
  return {
    read: (raw) => {
      if (isObject(raw) && "entries" in raw) return readMany(readOne, raw, most);
      const one = readOne(raw);
      return one.ok ? { ok: true, value: { many: false, one: one.value } } : one;
    },
    limit: TEN_MEGABYTES,
    schema: () => ({
      anyOf: [
        schemaOfOne(),
        {
          type: "object",
          properties: { entries: { type: "array", items: schemaOfOne(), maxItems: most } },
          required: ["entries"],
          additionalProperties: false,
        },
      ],
    }),
  };
}

/** A body that makes one thing, or many as { entries: [...] }, each standing alone. Ids may be given. */
export function newOrManyBody<S extends z.ZodType>(
  schema: S,
  most = 1000,
): Body<OneOrMany<New<z.output<S>>>> {
  const readOne = (raw: unknown) => readNew((rest) => readAs(schema, rest), raw);
  return body(readOne, () => withId(jsonSchema(schema, "input")), most);
}

/** The same for things without ids, which are known by their content. */
export function oneOrManyBody<S extends z.ZodType>(schema: S, most: number): Body<OneOrMany<z.output<S>>> {
  return body(
    (raw) => readAs(schema, raw),
    () => jsonSchema(schema, "input"),
    most,
  );
}
