import { type LocalDate, within } from "../calendar/local-date.ts";
import { type Decimal, ONE } from "../decimal.ts";
import type { ExposureFacts } from "../exposure/exposure-facts.ts";
import { convertFor } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { money } from "../money/money.ts";
import { rateKept } from "../prices/rate-kept.ts";
import { inCurrency } from "../rates/rate-of-day.ts";
import type { Lot } from "../stock/lot.ts";
import { lotCost } from "../stock/lot-cost.ts";
import { dayText } from "./day-text.ts";
import { quantityText, unitPriceText } from "./money-text.ts";
import { type TrendAsked, trendStart } from "./trend-points.ts";

/** A lot acquired in the period, as text, with its place for drawing. letter: its mark in the chart, A for the oldest. */
export type TrendLot = Readonly<{
  id: string;
  letter: string;
  orderedOn: LocalDate;
  day: string;
  origin: Lot["origin"];
  quantity: string;
  /** The same as canonical decimal text, to choose the form of a word by. */
  quantityExact: string;
  currency: CurrencyCode;
  value: Decimal;
  price: string;
  projects: readonly string[];
}>;

const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

/** A to Z, then A2 to Z2 and so on. */
export function markLetter(index: number): string {
  const round = Math.floor(index / LETTERS.length);
  return `${LETTERS.charAt(index % LETTERS.length)}${round === 0 ? "" : round + 1}`;
}

/** The projects a lot was set aside or drawn for by a day, by name, each once. */
function projectsOf(lot: Lot, facts: ExposureFacts, day: LocalDate): string[] {
  const requirements = new Map(facts.requirements.map(({ id, projectId }) => [id, projectId]));
  const names = new Map(facts.projects.map(({ id, name }) => [id, name]));
  const found = facts.events
    .filter(({ lotId, on, requirementId }) => lotId === lot.id && on <= day && requirementId !== null)
    .flatMap(({ requirementId }) => names.get(requirements.get(requirementId ?? "") ?? "") ?? []);
  return [...new Set(found)];
}

/**
 * The lots of a material acquired in a period, the oldest first, each at what it cost per one of a unit:
 *     lot cost / quantity / units in one purchase unit; in another currency by the rate of the day it was ordered
 * One whose cost, or that day's rate, is not known is left out. Rounds: the text only. Source: rules.md R9, R2.
 */
export function trendLots(
  facts: ExposureFacts,
  material: Material,
  asked: TrendAsked,
  locale: string,
): TrendLot[] {
  const { valuation } = facts;
  const inOne = convertFor(material, { value: ONE, unit: material.purchaseUnit }, asked.unit);
  if (!inOne.ok) return [];
  const home = valuation.homeCurrency;
  const currency = asked.currency === "home" || asked.currency === "as-seen" ? home : asked.currency;
  const start = trendStart(asked);
  return facts.lots
    .filter((lot) => lot.materialId === material.id && within(lot.orderedOn, start, asked.day))
    .sort((a, b) =>
      a.orderedOn === b.orderedOn ? (a.id < b.id ? -1 : 1) : a.orderedOn < b.orderedOn ? -1 : 1,
    )
    .flatMap((lot) => {
      const cost = lotCost(lot, material, valuation);
      const rate = rateKept(valuation, home, currency, lot.orderedOn);
      if (!cost.known || !rate.known) return [];
      const whole = currency === home ? cost.cost : inCurrency(cost.cost, currency, rate);
      const each = money(whole.amount.dividedBy(lot.quantity).dividedBy(inOne.value), currency);
      return [{ lot, each }];
    })
    .map(({ lot, each }, index) => ({
      id: lot.id,
      letter: markLetter(index),
      orderedOn: lot.orderedOn,
      day: dayText(lot.orderedOn, locale),
      origin: lot.origin,
      quantity: quantityText(lot.quantity, locale),
      quantityExact: lot.quantity.toFixed(),
      currency,
      value: each.amount,
      price: unitPriceText(each, locale),
      projects: projectsOf(lot, facts, asked.day),
    }));
}
