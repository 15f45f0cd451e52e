import { daysBetween, type LocalDate } from "../calendar/local-date.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import type { Terms } from "../prices/observation.ts";
import type { PriceFell } from "../stock/price-fell.ts";
import { type CountText, countText } from "./count-text.ts";
import { dayText } from "./day-text.ts";
import { moneyText, unitPriceText } from "./money-text.ts";

/** A lot whose store asks less now, for reading. adjust, giveBack: last days to ask for the difference, or to hand it back; null: past or not said. */
export type PriceFellText = Readonly<{
  lotId: string;
  materialId: string;
  storeId: string;
  unit: PurchaseUnit;
  terms: Terms;
  seenDays: number;
  stale: boolean;
  paid: string;
  offered: string;
  quantity: CountText;
  money: string;
  adjust: string | null;
  giveBack: string | null;
  daysLeft: number;
}>;

/** "The price fell since you bought", as text. Rounds: for reading. */
export function priceFellText(fell: PriceFell, day: LocalDate, locale: string): PriceFellText {
  const { lotId, materialId, storeId, offer, adjustUntil, returnUntil } = fell;
  return {
    lotId,
    materialId,
    storeId,
    unit: offer.unit,
    terms: offer.terms,
    seenDays: daysBetween(offer.seenOn, day),
    stale: offer.stale,
    paid: unitPriceText(fell.paid, locale),
    offered: unitPriceText(fell.offered, locale),
    quantity: countText(fell.quantity, locale),
    money: moneyText(fell.money, locale),
    adjust: adjustUntil === null ? null : dayText(adjustUntil, locale),
    giveBack: returnUntil === null ? null : dayText(returnUntil, locale),
    daysLeft: daysBetween(day, fell.lastDay),
  };
}
