import { type LocalDate, plusDays } from "../calendar/local-date.ts";
import { type IndexValue, valuesAsOf } from "../indices/index-value.ts";
import type { Material } from "../materials/material.ts";
import { goingPriceOn } from "../prices/going-price.ts";
import { percentBetween, pointsBetween, realChange } from "../prices/index-levels.ts";
import type { Observation } from "../prices/observation.ts";
import { realPrice } from "../prices/real-price.ts";
import type { Valuation } from "../prices/valuation.ts";
import { changeText, levelText, pointsText } from "./index-text.ts";
import { unitPriceText } from "./money-text.ts";
import { monthOfYearText } from "./month-of-year-text.ts";

const YEAR = 365;

/** A going price of a year before beside that of the day, in the prices of the index's newest month. */
export type PriceBesideIndex = Readonly<{
  thenOn: LocalDate;
  before: string;
  real: string;
  now: string;
  currency: string;
  thenMonth: string;
  nowMonth: string;
  thenLevel: string;
  nowLevel: string;
  /** Of the index: in percent, and in index points. */
  indexChange: string;
  indexPoints: string;
  /** Of the price: as it stands, and without the index's own change. Both in percent. */
  change: string;
  changeReal: string;
}>;

/**
 * The going price of a year before the day, in the prices of the newest month known on the day: price x index then -> now.
 * The index is taken as it was known on the day (R11), for the month each lies in; null where either price or either month
 * is not known: holes are not filled. Units: home currency per purchase unit. Rounds: the figures shown, half up.
 */
export function priceBesideIndex(
  values: readonly IndexValue[],
  day: LocalDate,
  {
    observations,
    material,
    valuation,
  }: Readonly<{
    observations: readonly Observation[];
    material: Material;
    valuation: Valuation;
  }>,
  locale: string,
): PriceBesideIndex | null {
  const known = valuesAsOf(values, day).filter(({ month }) => month <= day);
  const thenOn = plusDays(day, -YEAR);
  const newest = known.at(-1);
  const own = known.find(({ month }) => month.slice(0, 7) === thenOn.slice(0, 7));
  const then = goingPriceOn(thenOn, observations, material, valuation, day);
  const now = goingPriceOn(day, observations, material, valuation);
  if (newest === undefined || own === undefined || !then.known || !now.known) return null;
  const [ownLevel, newestLevel] = [{ level: own.value }, { level: newest.value }];
  const inflation = percentBetween(ownLevel, newestLevel);
  const nominal = percentBetween({ level: then.price.amount }, { level: now.price.amount });
  return {
    thenOn,
    before: unitPriceText(then.price, locale),
    real: unitPriceText(realPrice(then.price, ownLevel, newestLevel), locale),
    now: unitPriceText(now.price, locale),
    currency: now.price.currency,
    thenMonth: monthOfYearText(own.month, locale),
    nowMonth: monthOfYearText(newest.month, locale),
    thenLevel: levelText(ownLevel, locale),
    nowLevel: levelText(newestLevel, locale),
    indexChange: changeText(inflation, locale),
    indexPoints: pointsText(pointsBetween(ownLevel, newestLevel), locale),
    change: changeText(nominal, locale),
    changeReal: changeText(realChange(nominal, inflation), locale),
  };
}
