import * as z from "zod";
import { type Fault, faultsOf } from "../../../../lib/fault.ts";
import { ONE_MEGABYTE } from "./read-body.ts";

/** What a read body is: the value, or all its faults. */
export type Read<T> = Readonly<{ ok: true; value: T }> | Readonly<{ ok: false; faults: readonly Fault[] }>;
export type JsonSchema = Readonly<Record<string, unknown>>;

/** How a request's body is read, how large it may be, and how the document describes it (null: there is none). */
export type Body<T> = Readonly<{
  read: (raw: unknown) => Read<T>;
  limit: number;
  schema: (() => JsonSchema) | null;
}>;

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

export function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** A body that is the schema and nothing else. */
export function plainBody<S extends z.ZodType>(schema: S): Body<z.output<S>> {
  return {
    read: (raw) => readAs(schema, raw),
    limit: ONE_MEGABYTE,
    schema: () => jsonSchema(schema, "input"),
  };
}

/** No body at all. */
export const noBody: Body<null> = { read: () => ({ ok: true, value: null }), limit: 0, schema: null };
