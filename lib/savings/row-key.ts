import type { SavingRow } from "./savings-figures.ts";

/** What a row is known by in an address: its lot, then what took it out of the lot, or the requirement it is held for. */
export function rowKey({
  lotId,
  eventId,
  requirementId,
}: Pick<SavingRow, "lotId" | "eventId" | "requirementId">): string {
  return `${lotId}~${eventId ?? requirementId}`;
}

/** The lot's id in such a key. */
export function lotOfRowKey(key: string): string {
  return key.slice(0, Math.max(0, key.indexOf("~")));
}
