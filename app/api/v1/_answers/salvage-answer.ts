import type { LocalDate } from "../../../../lib/calendar/local-date.ts";
import type { Scope } from "../../../../lib/data/client.ts";
import type { StoredDisposal } from "../../../../lib/data/disposals.ts";
import { valuationOf } from "../../../../lib/data/facts.ts";
import { materialsOf } from "../../../../lib/data/materials.ts";
import type { Salvage } from "../../../../lib/data/salvage.ts";
import { eventsOf } from "../../../../lib/data/stock-events.ts";
import { apiDisposal } from "../../../../lib/show/api-disposal.ts";
import { apiSalvage } from "../../../../lib/show/api-salvage.ts";

/** How salvage is answered: with where its lot's quantity is on a day. */
export async function salvageAnswer(scope: Scope, lotId: string, day: LocalDate) {
  const events = await eventsOf(scope, lotId);
  return ({ lot, detail }: Salvage) => apiSalvage(lot, detail, events, day);
}

/** How waste is answered: with what it cost. */
export async function disposalAnswer(scope: Scope) {
  const valuation = await valuationOf(scope);
  const known = [...(await materialsOf(scope)), ...(await materialsOf(scope, { archived: true }))];
  const materials = new Map(known.map((one) => [one.id, one]));
  return (one: StoredDisposal) => apiDisposal(one, materials.get(one.materialId ?? "") ?? null, valuation);
}
