import { HUNDRED } from "../decimal.ts";
import type { BasketPoint, ProjectBasket } from "../exposure/basket.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { money } from "../money/money.ts";
import type { BasketIndex, KnownItem, MissingFromBasket } from "../prices/basket-index.ts";
import { type IndexLevel, percentBetween, pointsBetween } from "../prices/index-levels.ts";
import { contributions } from "../prices/index-numbers.ts";
import { dayText } from "./day-text.ts";
import { changeText, INDEX_PLACES, levelText, pointsText } from "./index-text.ts";
import { moneyText, quantityText, unitPriceText } from "./money-text.ts";
import { percentText } from "./percent-text.ts";

const BASE: IndexLevel = { level: HUNDRED };

/** What an index rests on, as text. share: of the cost at the base, in percent; null: nothing has a price there. */
export type CoverageText = Readonly<{
  whole: boolean;
  known: number;
  of: number;
  share: string | null;
  missing: readonly Readonly<{ materialId: string; missing: MissingFromBasket }>[];
}>;
/** A material's part. quantityExact: decimal text, for the form of the unit. */
export type ContributionRow = Readonly<{
  materialId: string;
  quantity: string;
  quantityExact: string;
  before: string;
  now: string;
  percent: string;
  points: string;
}>;
/** A day of the index; points and percent against the row before it, null where the two rest on other materials. */
export type BasketDayRow = Readonly<{
  day: string;
  level: string | null;
  points: string | null;
  percent: string | null;
  known: number;
  of: number;
}>;
/** The index of the day against its base, as text; null: not known. */
export type BasketNow = Readonly<{
  level: string;
  points: string;
  percent: string;
  way: "more" | "less" | "same";
  before: string;
  now: string;
  rows: readonly ContributionRow[];
}>;
export type BasketText = Readonly<{
  base: string;
  day: string;
  now: BasketNow | null;
  coverage: CoverageText;
  days: readonly BasketDayRow[];
}>;

function coverageText({ coverage }: BasketIndex, locale: string): CoverageText {
  const { known, missing, whole, shareOfBaseCost: share } = coverage;
  return {
    whole,
    known: known.length,
    of: known.length + missing.length,
    share: share === null ? null : percentText(share.times(HUNDRED), locale, { places: 1 }),
    missing: missing.map(({ key, missing: why }) => ({ materialId: key, missing: why })),
  };
}

/** The parts that add up to the index's change as shown. */
function contributionRows(
  known: readonly KnownItem[],
  currency: CurrencyCode,
  locale: string,
): ContributionRow[] {
  const parts = contributions(known, INDEX_PLACES) ?? [];
  return known.flatMap((item, index): ContributionRow[] => {
    const points = parts[index];
    if (points === undefined) return [];
    const change = percentBetween({ level: item.basePrice }, { level: item.price });
    return [
      {
        materialId: item.key,
        quantity: quantityText(item.quantity, locale),
        quantityExact: item.quantity.toFixed(),
        before: unitPriceText(money(item.basePrice, currency), locale),
        now: unitPriceText(money(item.price, currency), locale),
        percent: changeText(change, locale),
        points: pointsText(points, locale),
      },
    ];
  });
}

function nowText(index: BasketIndex, currency: CurrencyCode, locale: string): BasketNow | null {
  if (!index.known) return null;
  const change = percentBetween(BASE, index.level);
  return {
    level: levelText(index.level, locale),
    points: pointsText(pointsBetween(BASE, index.level), locale),
    percent: changeText(change, locale),
    way: change.percent.isZero() ? "same" : change.percent.isNegative() ? "less" : "more",
    before: moneyText(money(index.baseCost, currency), locale),
    now: moneyText(money(index.cost, currency), locale),
    rows: contributionRows(index.coverage.known, currency, locale),
  };
}

function dayRow({ day, index, sinceBefore }: BasketPoint, locale: string): BasketDayRow {
  const { known, missing } = index.coverage;
  return {
    day: dayText(day, locale),
    level: index.known ? levelText(index.level, locale) : null,
    points: sinceBefore === null ? null : pointsText(sinceBefore.points, locale),
    percent: sinceBefore === null ? null : changeText(sinceBefore.percent, locale),
    known: known.length,
    of: known.length + missing.length,
  };
}

/**
 * A project's basket index as text: the day against the base, what each material brings, and day by day, the newest first.
 * Index points and percents keep apart: points bare, percents with their sign. Rounds: levels, points and percents to
 * INDEX_PLACES; contributions so that they sum to the change as shown (`contributions`); costs to the minor unit.
 */
export function basketText(basket: ProjectBasket, currency: CurrencyCode, locale: string): BasketText {
  const days = basket.points.map((point) => dayRow(point, locale));
  return {
    base: dayText(basket.base, locale),
    day: dayText(basket.day, locale),
    now: nowText(basket.now, currency, locale),
    coverage: coverageText(basket.now, locale),
    days: days.reverse(),
  };
}
