import type { LocalDate } from "../calendar/local-date.ts";
import { daysBetween } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { WorkspaceExposure } from "../exposure/exposure-figures.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import { add, type Money } from "../money/money.ts";
import type { Offer } from "../prices/offer.ts";
import { moneyText, quantityText, unitPriceText } from "./money-text.ts";

/** One offer that the cost to finish leans on, summed over projects and lines. money: home currency, unrounded. */
export type Leaning = Readonly<{
  offer: Offer;
  quantity: Decimal;
  money: Money;
  projectIds: readonly string[];
}>;

/** The offers that today's cost to finish is made of, each once, with how much of it they carry. Rounds: never. */
export function leanings(exposure: WorkspaceExposure): Leaning[] {
  const found = new Map<string, Leaning>();
  for (const project of exposure.projects)
    for (const take of project.lines.flatMap((line) => line.takes)) {
      const before = found.get(take.offer.observationId);
      found.set(take.offer.observationId, {
        offer: take.offer,
        quantity: before ? before.quantity.plus(take.quantity) : take.quantity,
        money: before ? add(before.money, take.cost) : take.cost,
        projectIds: [...new Set([...(before?.projectIds ?? []), project.projectId])],
      });
    }
  return [...found.values()];
}

/** Days ahead in which a lapse or a needed-by date is called near. Judgement. */
export const NEAR_DAYS = 14;

/** Offers with money on them that lapse within so many days, the first to lapse first. */
export function aboutToLapse(all: readonly Leaning[], day: LocalDate, within = NEAR_DAYS): Leaning[] {
  const left = (found: Leaning) =>
    found.offer.lapsesOn === null ? Infinity : daysBetween(day, found.offer.lapsesOn);
  return all.filter((found) => left(found) <= within).sort((a, b) => left(a) - left(b));
}

/** Stale prices with money on them, the most money first. */
export function staleUnderMoney(all: readonly Leaning[]): Leaning[] {
  return all
    .filter((found) => found.offer.stale || found.offer.staleRate)
    .sort((a, b) => b.money.amount.comparedTo(a.money.amount));
}

/** One leaning as text. */
export type LeaningText = Readonly<{
  observationId: string;
  materialId: string;
  storeId: string;
  unit: PurchaseUnit;
  each: string;
  quantity: string;
  /** The same as canonical decimal text, to choose the form of a word by. */
  quantityExact: string;
  money: string;
  ageDays: number;
  lapsesOn: LocalDate | null;
  daysLeft: number | null;
  projectIds: readonly string[];
}>;

/** A leaning for reading. Rounds: money to the minor unit. */
export function leaningText(found: Leaning, day: LocalDate, locale: string): LeaningText {
  const { offer } = found;
  return {
    observationId: offer.observationId,
    materialId: offer.materialId,
    storeId: offer.storeId,
    unit: offer.unit,
    each: unitPriceText(offer.price, locale),
    quantity: quantityText(found.quantity, locale),
    quantityExact: found.quantity.toFixed(),
    money: moneyText(found.money, locale),
    ageDays: offer.ageDays,
    lapsesOn: offer.lapsesOn,
    daysLeft: offer.lapsesOn === null ? null : daysBetween(day, offer.lapsesOn),
    projectIds: found.projectIds,
  };
}
