import * as z from "zod";
import type { Fault } from "../../../../lib/fault.ts";
import { spoken } from "./fault-words.ts";
import type { OneOfMany } from "./many-body.ts";
import { faultShape } from "./problem.ts";
import { USED_ID } from "./used-id.ts";

/** What became of many entries: each is accepted (now, or before with the same content) or refused by itself. */
export const manyShape = z.strictObject({
  accepted: z.array(z.string()).describe("ids, in the order they were sent"),
  rejected: z.array(
    z.strictObject({
      index: z.int().describe("place among the entries, from 0"),
      id: z.string().nullable().describe("null: none was sent"),
      errors: z.array(faultShape),
    }),
  ),
});
export type ManyAnswer = z.output<typeof manyShape>;

/** The shape of one thing or of many. */
export function oneOrManyShape<S extends z.ZodType>(one: S) {
  return z.union([one, manyShape]);
}

/** What one entry of many came to; faults null: nothing is wrong with it. */
export type Came = Readonly<{ id: string; faults: readonly Fault[] | null }>;

/** Writes many; the answers stand in the order of the entries. */
export type AddMany<E> = (entries: readonly E[]) => Promise<readonly Came[]>;

type Rejected = Readonly<{ index: number; why: "faults" | "conflict"; faults: readonly Fault[] }>;

/** What became of entries written together, of which those that were refused are known by their places. */
export function cameOf(ids: readonly string[], rejected: readonly Rejected[]): Came[] {
  const refused = new Map(rejected.map((one) => [one.index, one.why === "faults" ? one.faults : USED_ID]));
  return ids.map((id, index) => ({ id, faults: refused.get(index) ?? null }));
}

/** The answer for many: what could be read is written, and every entry has its own answer. */
export async function manyAnswer<E>(
  entries: readonly OneOfMany<E>[],
  addMany: AddMany<E>,
): Promise<ManyAnswer> {
  const written = [...(await addMany(entries.flatMap(({ read }) => (read.ok ? [read.value] : []))))];
  const answer: ManyAnswer = { accepted: [], rejected: [] };
  for (const { index, id, read } of entries) {
    const one = read.ok ? written.shift() : { id: "", faults: read.faults };
    if (one === undefined) throw new Error("an entry was neither accepted nor refused");
    if (one.faults === null) answer.accepted.push(one.id);
    else answer.rejected.push({ index, id, errors: one.faults.map(spoken) });
  }
  return answer;
}
