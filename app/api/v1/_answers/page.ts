import * as z from "zod";
import { choice, day, fields, id, note } from "../../../../lib/entry-fields.ts";

const MOST = 1000;
const USUAL = 100;

const limit = z
  .string()
  .regex(/^\d{1,4}$/, "not-a-number")
  .transform(Number)
  .pipe(z.int().min(1, "not-positive").max(MOST, "too-large"))
  .prefault(String(USUAL))
  .meta({ description: `how many, 1 to ${MOST}; usually ${USUAL}` });

const CURSOR = "nextCursor of the page before";

/** Parts of a query: how much of a list and from where, by id or by another key. */
export const pageQuery = { limit, cursor: id().optional().meta({ description: CURSOR }) };
export const keyedPageQuery = { limit, cursor: note().optional().meta({ description: CURSOR }) };
/** The day an answer is asked as of; today when left out. */
export const asOfQuery = { asOf: day().optional().meta({ description: "as of the end of this day" }) };
export const idQuery = id();
export const listQuery = fields(pageQuery);

/** Yes or no in a query, no when left out. */
export function yesOrNo(description: string) {
  return choice(["true", "false"])
    .transform((said) => said === "true")
    .prefault("false")
    .meta({ description });
}

/** A list in an answer, and where it goes on. */
export function pageShape<S extends z.ZodType>(item: S) {
  return z.strictObject({
    items: z.array(item),
    nextCursor: z.string().nullable().describe("null: this is the end"),
  });
}

const inTextOrder = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/**
 * The part of a list after the cursor, in the order of its keys. The cursor is the key of the last one of the part
 * before: what is added or taken away meanwhile moves nothing else, even when it is that one.
 */
export function pageOf<T>(
  all: readonly T[],
  keyOf: (one: T) => string,
  asked: Readonly<{ limit: number; cursor?: string }>,
): { items: T[]; nextCursor: string | null } {
  const { limit: most, cursor } = asked;
  const rest = all
    .filter((one) => cursor === undefined || keyOf(one) > cursor)
    .sort((a, b) => inTextOrder(keyOf(a), keyOf(b)));
  const items = rest.slice(0, most);
  const last = items.at(-1);
  return { items, nextCursor: last === undefined || rest.length <= most ? null : keyOf(last) };
}
