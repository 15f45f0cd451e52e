import type { LocalDate } from "../calendar/local-date.ts";
import { groupedBy } from "../exposure/exposure-facts.ts";
import type { Material } from "../materials/material.ts";
import { money } from "../money/money.ts";
import { split } from "../money/split.ts";
import type { Lot, StockEvent } from "../stock/lot.ts";
import { type Stay, stayIn } from "../stock/place-charge.ts";
import { spaceOf } from "../stock/space-of.ts";
import type { PlaceMoneyEntry } from "../stock/stock-act-entry.ts";
import { moneyText } from "./money-text.ts";

type Stock = Readonly<{
  lots: readonly Lot[];
  events: readonly StockEvent[];
  materials: ReadonlyMap<string, Material>;
}>;

/** What a lot would bear of a place's cost, and the last day it lay there. */
export type PlaceShareText = Readonly<{
  lotId: string;
  materialId: string;
  amount: string;
  lastDay: LocalDate;
}>;
export type PlaceSharesText = Readonly<{
  shares: readonly PlaceShareText[];
  /** A material whose size is not known: nothing can be shared by it. */
  unknown: string | null;
}>;

/**
 * What a place cost over some days, shared over what lay there, before it is booked: by room x days, to the cent, as `chargePlace`
 * books it. Rounds: shares by the largest remainder, so that they add up. Source: rules.md R10.
 */
export function placeShares(
  placeId: string,
  { lots, events, materials }: Stock,
  { amount, currency, from, until, shareBy }: PlaceMoneyEntry,
  locale: string,
): PlaceSharesText {
  const own = groupedBy(events, ({ lotId }) => lotId);
  const stays: { lot: Lot; stay: Stay }[] = [];
  // In the order in which they are booked: a cent left over goes to the same lot.
  for (const lot of [...lots].sort((a, b) => (a.id < b.id ? -1 : 1))) {
    const material = materials.get(lot.materialId);
    if (material === undefined) continue;
    const of = { lot, events: own.get(lot.id) ?? [] };
    const stay = stayIn(placeId, of, { from, until }, (quantity) => spaceOf(material, quantity, shareBy));
    if (stay === "unknown") return { shares: [], unknown: material.id };
    if (stay !== null) stays.push({ lot, stay });
  }
  if (stays.length === 0) return { shares: [], unknown: null };
  const parts = split(
    money(amount, currency),
    stays.map(({ stay }) => stay.weight),
  );
  const shares = stays.flatMap(({ lot, stay }, at) => {
    const part = parts[at];
    if (part === undefined || part.amount.isZero()) return [];
    const text = moneyText(part, locale, { currency: true });
    return [{ lotId: lot.id, materialId: lot.materialId, amount: text, lastDay: stay.lastDay }];
  });
  return { shares, unknown: null };
}
