import * as z from "zod";
import { day, fields, id, note } from "../../../../lib/entry-fields.ts";

const MOST = 1000;
const USUAL = 100;

const limit = z
  .string()
  .regex(/^\d{1,4}$/, "not-a-number")
  .transform(Number)
  .pipe(z.int().min(1, "not-positive").max(MOST, "too-large"))
  .prefault(String(USUAL));

/** Parts of a query: how much of a list, from where, and as of which day. */
export const pageQuery = { limit, cursor: note().optional() };
export const asOfQuery = { asOf: day().optional() };
export const idQuery = id();
export const listQuery = fields(pageQuery);

/** A list in an answer, and where it goes on. */
export function pageShape<S extends z.ZodType>(item: S) {
  return z.strictObject({
    items: z.array(item),
    nextCursor: z.string().nullable().describe("null: this is the end"),
  });
}

/** The part of a list after the cursor, which is the key of the last one of the part before. */
export function pageOf<T>(
  all: readonly T[],
  keyOf: (one: T) => string,
  asked: Readonly<{ limit: number; cursor?: string }>,
): { items: readonly T[]; nextCursor: string | null } {
  const from = asked.cursor === undefined ? 0 : all.findIndex((one) => keyOf(one) === asked.cursor) + 1;
  const items = all.slice(from, from + asked.limit);
  const last = items.at(-1);
  return { items, nextCursor: last === undefined || from + asked.limit >= all.length ? null : keyOf(last) };
}
