import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Fault } from "../fault.ts";
import type { Lot } from "../stock/lot.ts";
import { isUsed, mayServe } from "../stock/salvage.ts";
import type { Tx } from "./client.ts";
import { requirementWithin } from "./requirement-rows.ts";
import { fault } from "./written.ts";

/**
 * Salvage, and what was bought used, serves only a requirement that accepts used material on that day. Fault:
 * used-not-accepted (requirementId). A requirement that is not there is another check's.
 */
export async function usedFaults(
  tx: Tx,
  lot: Pick<Lot, "origin" | "terms">,
  requirementId: string | null,
  on: LocalDate,
): Promise<Fault[]> {
  if (requirementId === null || !isUsed(lot)) return [];
  const requirement = await requirementWithin(tx, requirementId);
  return requirement === null || mayServe(lot, requirement, on)
    ? []
    : [fault("requirementId", "used-not-accepted")];
}
