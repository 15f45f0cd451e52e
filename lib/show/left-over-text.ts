import type { LocalDate } from "../calendar/local-date.ts";
import type { Material } from "../materials/material.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import { type Leftover, leftovers } from "../stock/leftovers.ts";
import type { Lot, StockEvent } from "../stock/lot.ts";
import { type CountText, countText } from "./count-text.ts";

type Stock = Readonly<{
  lots: readonly Lot[];
  events: readonly StockEvent[];
  materials: ReadonlyMap<string, Material>;
}>;

/** So much set aside for a project and not used, for reading. */
export type LeftoverText = Readonly<{
  lotId: string;
  requirementId: string;
  materialId: string;
  unit: PurchaseUnit;
  quantity: CountText;
  orderedOn: LocalDate;
}>;
/** So much used for a project: what came back of it can be said. */
export type ProjectDrawText = LeftoverText & Readonly<{ eventId: string; on: LocalDate }>;

/** What a project has set aside and not used on a day, and what was used for it, the newest first. Rounds: for reading. */
export function projectLeftovers(
  requirementIds: readonly string[],
  { lots, events, materials }: Stock,
  day: LocalDate,
  locale: string,
): Readonly<{ over: readonly LeftoverText[]; draws: readonly ProjectDrawText[] }> {
  const byId = new Map(lots.map((lot) => [lot.id, lot]));
  const named = ({ lotId, requirementId, quantity }: Leftover): LeftoverText[] => {
    const lot = byId.get(lotId);
    const material = lot === undefined ? undefined : materials.get(lot.materialId);
    if (lot === undefined || material === undefined) return [];
    const { materialId, orderedOn } = lot;
    const unit = material.purchaseUnit;
    return [{ lotId, requirementId, materialId, unit, quantity: countText(quantity, locale), orderedOn }];
  };
  const draws = events.flatMap(({ id, kind, lotId, requirementId, quantity, on }) =>
    kind !== "drawn" || requirementId === null || !requirementIds.includes(requirementId) || on > day
      ? []
      : named({ lotId, requirementId, quantity }).map((draw) => ({ ...draw, eventId: id, on })),
  );
  return {
    over: leftovers(requirementIds, lots, events, day).flatMap(named),
    draws: draws.sort((a, b) => b.on.localeCompare(a.on)),
  };
}
