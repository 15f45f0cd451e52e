import { asked, type Query } from "../../../../_workspace/day-asked.ts";

/** The end of an id is enough to tell the lots of one place apart, and keeps an address short. */
const END = 12;

function keyOf(lotId: string): string {
  return lotId.slice(-END);
}

/** What was counted, as one value of an address: so much of each lot. */
export function writtenCounts(counts: readonly Readonly<{ lotId: string; quantity: string }>[]): string {
  return counts.map(({ lotId, quantity }) => `${keyOf(lotId)}:${quantity}`).join("~");
}

/** The counts of an address by the lots of the place; what is no count is left out. */
export async function askedCounts(
  query: Query,
  lotIds: readonly string[],
): Promise<ReadonlyMap<string, string>> {
  const known = new Map(lotIds.map((lotId) => [keyOf(lotId), lotId]));
  const counts = new Map<string, string>();
  for (const part of ((await asked(query, "counts")) ?? "").split("~")) {
    const [key = "", quantity = ""] = part.split(":");
    const lotId = known.get(key);
    if (lotId !== undefined && /^\d{1,9}(\.\d{1,6})?$/.test(quantity)) counts.set(lotId, quantity);
  }
  return counts;
}
