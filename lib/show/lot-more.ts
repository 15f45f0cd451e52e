import type { LocalDate } from "../calendar/local-date.ts";
import { groupedBy } from "../exposure/exposure-facts.ts";
import type { Material } from "../materials/material.ts";
import type { StockEvent } from "../stock/lot.ts";
import { lyingOn } from "../stock/lying.ts";
import { type LotDays, lotDays } from "./lot-days.ts";
import type { LotOnDay } from "./lot-text.ts";
import { type LyingText, lyingTexts } from "./place-text.ts";
import { percentOfShare } from "./share-typed.ts";
import { type WeightText, weightText } from "./weight-text.ts";

/** Where a lot lies, what that weighs, the days that press, and its condition where it is not as new. */
export type LotMoreText = Readonly<{
  lying: readonly LyingText[];
  weight: WeightText;
  days: LotDays;
  condition: string | null;
}>;

/** The same of one lot on a day. Weight is of what is on hand, not of what is on order. Rounds: for reading. */
export function lotMore(
  { lot, onHand }: LotOnDay,
  events: readonly StockEvent[],
  material: Material,
  day: LocalDate,
  locale: string,
): LotMoreText {
  const there = onHand.quantity.minus(onHand.onOrder);
  return {
    lying: lyingTexts(lyingOn(lot, events, day), locale),
    weight: weightText(there.isZero() ? [] : [{ material, quantity: there }], locale),
    days: lotDays(lot, material, day, !onHand.onOrder.isZero()),
    condition: lot.condition.equals(1) ? null : percentOfShare(lot.condition, locale),
  };
}

/** The same of many lots, by lot. */
export function lotsMore(
  lots: readonly LotOnDay[],
  {
    events,
    materials,
  }: Readonly<{ events: readonly StockEvent[]; materials: ReadonlyMap<string, Material> }>,
  day: LocalDate,
  locale: string,
): ReadonlyMap<string, LotMoreText> {
  const own = groupedBy(events, ({ lotId }) => lotId);
  const more = new Map<string, LotMoreText>();
  for (const one of lots) {
    const material = materials.get(one.lot.materialId);
    if (material !== undefined)
      more.set(one.lot.id, lotMore(one, own.get(one.lot.id) ?? [], material, day, locale));
  }
  return more;
}
