import { Decimal, decimal, ZERO } from "../decimal.ts";
import type { RequirementExposure } from "../exposure/exposure-figures.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import { type CountText, countText } from "./count-text.ts";
import type { FreeLot } from "./free-lots.ts";

/** So much of a lot that lies free and could be set aside for a need. */
export type FreeForNeed = Readonly<{
  requirementId: string;
  lotId: string;
  materialId: string;
  unit: PurchaseUnit;
  quantity: CountText;
}>;

/**
 * What of the free lots could be set aside for what is open, the oldest lot first, each bit of stock offered once.
 *     for a need: the smaller of what is left free and what is still open
 * Units: purchase units of the needs' own materials; lots of others are not looked at. Rounds: for reading.
 */
export function freeForNeeds(
  lines: readonly RequirementExposure[],
  free: readonly FreeLot[],
  locale: string,
): FreeForNeed[] {
  const left = new Map(free.map(({ lotId, freeExact }) => [lotId, decimal(freeExact)]));
  return lines.flatMap(({ requirementId, materialId, unit, open }) => {
    let wanted = open;
    return free.flatMap((lot): FreeForNeed[] => {
      const there = left.get(lot.lotId) ?? ZERO;
      const quantity = Decimal.min(there, wanted);
      if (lot.materialId !== materialId || quantity.isZero()) return [];
      left.set(lot.lotId, there.minus(quantity));
      wanted = wanted.minus(quantity);
      return [{ requirementId, lotId: lot.lotId, materialId, unit, quantity: countText(quantity, locale) }];
    });
  });
}
