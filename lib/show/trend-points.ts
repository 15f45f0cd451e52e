import { daysBetween, type LocalDate, plusDays } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { ExposureFacts } from "../exposure/exposure-facts.ts";
import type { Material } from "../materials/material.ts";
import type { UnitCode } from "../measure/units.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import type { Terms } from "../prices/observation.ts";
import type { NoPriceReason } from "../prices/offer.ts";
import { priceSeries, type SeriesPoint } from "../prices/series.ts";
import { dayText } from "./day-text.ts";
import { unitPriceText } from "./money-text.ts";

/** What a trend is asked in. days: how far back from the day; null: everything. */
export type TrendAsked = Readonly<{
  day: LocalDate;
  days: number | null;
  unit: UnitCode;
  currency: "home" | "as-seen" | CurrencyCode;
}>;

/** How a price is drawn: shelf on the store's line, a receipt with a cross, anything cheaper by its terms as a square. */
export type PointKind = "shelf" | "special" | "paid";

/** One price as seen, as text, with its place for drawing. value: unrounded, per one of the unit asked for. */
export type TrendPoint = Readonly<{
  key: string;
  seenOn: LocalDate;
  day: string;
  storeId: string;
  storeName: string;
  terms: Terms;
  kind: PointKind;
  currency: CurrencyCode;
  value: Decimal;
  price: string;
  beforeImportCharges: boolean;
}>;

/** Prices that cannot be drawn, by their reason. */
export type NotDrawn = Readonly<{ reason: NoPriceReason; count: number }>;

/** The first day a trend reaches back to; null: the beginning. */
export function trendStart({ day, days }: Pick<TrendAsked, "day" | "days">): LocalDate | null {
  return days === null ? null : plusDays(day, -days);
}

function kindOf(terms: Terms): PointKind {
  return terms === "shelf" || terms === "paid" ? terms : "special";
}

function notDrawn(points: readonly SeriesPoint[]): NotDrawn[] {
  const counts = new Map<NoPriceReason, number>();
  for (const point of points)
    if (!point.known && point.terms !== "none-left")
      counts.set(point.reason, (counts.get(point.reason) ?? 0) + 1);
  return [...counts].map(([reason, count]) => ({ reason, count }));
}

/**
 * The prices of a material in a period, each valued on the day it was seen (`priceSeries`), the oldest first; and how many
 * cannot be valued, by reason ("none left" has no price and is none of them). Rounds: the text only, for reading.
 */
export function trendPoints(
  { observations, valuation }: Pick<ExposureFacts, "observations" | "valuation">,
  material: Material,
  asked: TrendAsked,
  locale: string,
): Readonly<{ points: TrendPoint[]; notDrawn: NotDrawn[] }> {
  const terms = {
    from: trendStart(asked),
    until: asked.day,
    unit: asked.unit,
    currency: asked.currency,
  };
  const series = priceSeries(observations, material, valuation, terms);
  const points = series.flatMap((point): TrendPoint[] =>
    point.known
      ? [
          {
            key: point.observationId,
            seenOn: point.seenOn,
            day: dayText(point.seenOn, locale),
            storeId: point.storeId,
            storeName: valuation.stores.get(point.storeId)?.name ?? "–",
            terms: point.terms,
            kind: kindOf(point.terms),
            currency: point.price.currency,
            value: point.price.amount,
            price: unitPriceText(point.price, locale),
            beforeImportCharges: point.beforeImportCharges,
          },
        ]
      : [],
  );
  return { points, notDrawn: notDrawn(series) };
}

/** The period that shows enough without being asked: a year, when at least `enough` prices were seen within it, else all. */
export function usualPeriod(
  observations: readonly Readonly<{ seenOn: LocalDate }>[],
  day: LocalDate,
  enough = 6,
): 365 | null {
  return observations.filter(({ seenOn }) => daysBetween(seenOn, day) <= 365).length >= enough ? 365 : null;
}
