import { dayNumber, type LocalDate } from "../calendar/local-date.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { money } from "../money/money.ts";
import { monthTicks, placeOn, valueAt, valueTicks } from "./axis.ts";
import { monthText } from "./day-text.ts";
import { labelPlaces } from "./label-places.ts";
import { unitPriceText } from "./money-text.ts";
import type { TrendLot } from "./trend-lots.ts";
import type { TrendPoint } from "./trend-points.ts";

/** At most so many stores have a line; the others stand in the table. The series colours are five. */
const MOST_LINES = 5;
/** At most so many prices of a line and kind are drawn. */
const MOST_POINTS = 500;
/** How near two direct labels may stand, as a share of the chart's height. */
const LABEL_GAP = 0.065;

/** A store's line. label: the value beside which its name stands at the end, so that no name covers another. */
export type TrendLine = Readonly<{
  storeId: string;
  name: string;
  label: number;
  beforeImportCharges: boolean;
}>;

/**
 * What is drawn of one day: values by "shelf 0", "special 0", "paid 0" (the number of the line) and "lot"; and the same in
 * words. t: the day as a whole number of days.
 */
export type TrendRow = Readonly<{
  t: number;
  day: string;
  values: Readonly<Record<string, number>>;
  letters: string;
  says: readonly string[];
}>;

/** A chart as plain text and numbers. */
export type TrendChart = Readonly<{
  currency: CurrencyCode;
  lines: readonly TrendLine[];
  /** Stores without a line of their own. */
  otherStores: number;
  lots: readonly Readonly<{ id: string; letter: string }>[];
  rows: readonly TrendRow[];
  days: readonly [number, number];
  dayTicks: readonly Readonly<{ at: number; label: string }>[];
  valueTicks: readonly Readonly<{ at: number; label: string }>[];
}>;

export type TrendChartTerms = Readonly<{
  currency: CurrencyCode;
  from: LocalDate | null;
  day: LocalDate;
  locale: string;
  sayPoint: (point: TrendPoint) => string;
  sayLot: (lot: TrendLot) => string;
}>;

/** So many of a list, evenly, always with the first and the last. */
export function thinned<T>(items: readonly T[], most: number): T[] {
  if (items.length <= most) return [...items];
  const last = items.length - 1;
  return Array.from({ length: most }, (_, index) => Math.round((index * last) / (most - 1))).flatMap((at) =>
    items.slice(at, at + 1),
  );
}

/** The stores with the most prices, at most five, by name. */
function drawnStores(points: readonly TrendPoint[]): string[] {
  const counts = new Map<string, number>();
  for (const { storeId } of points) counts.set(storeId, (counts.get(storeId) ?? 0) + 1);
  const names = new Map(points.map(({ storeId, storeName }) => [storeId, storeName]));
  return [...counts]
    .sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1))
    .slice(0, MOST_LINES)
    .map(([storeId]) => storeId)
    .sort((a, b) => (names.get(a) ?? "").localeCompare(names.get(b) ?? ""));
}

function thinnedByLine(points: readonly TrendPoint[], stores: readonly string[]): TrendPoint[] {
  return stores.flatMap((storeId) =>
    (["shelf", "special", "paid"] as const).flatMap((kind) =>
      thinned(
        points.filter((point) => point.storeId === storeId && point.kind === kind),
        MOST_POINTS,
      ),
    ),
  );
}

type Draft = { day: string; values: Record<string, number>; letters: string; says: string[] };

function rowsOf(
  points: readonly TrendPoint[],
  lots: readonly TrendLot[],
  stores: readonly string[],
  terms: TrendChartTerms,
): TrendRow[] {
  const days = new Map<number, Draft>();
  const draftOf = (on: LocalDate, day: string): Draft => {
    const t = dayNumber(on);
    const draft = days.get(t) ?? { day, values: {}, letters: "", says: [] };
    days.set(t, draft);
    return draft;
  };
  for (const point of points) {
    const draft = draftOf(point.seenOn, point.day);
    draft.values[`${point.kind} ${stores.indexOf(point.storeId)}`] = point.value.toNumber();
    draft.says.push(terms.sayPoint(point));
  }
  for (const lot of lots) {
    const draft = draftOf(lot.orderedOn, lot.day);
    draft.values.lot = lot.value.toNumber();
    draft.letters = [draft.letters, lot.letter].filter(Boolean).join(" ");
    draft.says.push(terms.sayLot(lot));
  }
  return [...days].map(([t, draft]) => ({ t, ...draft })).sort((a, b) => a.t - b.t);
}

/**
 * A chart of the points and lots that are in one currency: up to five stores as lines, everything on one time axis and one
 * price axis with ticks. Units: days since 1970-01-01, the currency per unit asked for. Rounds: to float64, for drawing.
 * null: nothing to draw.
 */
export function trendChart(
  allPoints: readonly TrendPoint[],
  allLots: readonly TrendLot[],
  terms: TrendChartTerms,
): TrendChart | null {
  const points = allPoints.filter(({ currency }) => currency === terms.currency);
  const lots = allLots.filter(({ currency }) => currency === terms.currency);
  const stores = drawnStores(points);
  const drawn = thinnedByLine(points, stores);
  const values = [...drawn, ...lots].map(({ value }) => value);
  const rows = rowsOf(drawn, lots, stores, terms);
  const [first] = rows;
  if (first === undefined) return null;
  const ticks = valueTicks(values);
  const last = dayNumber(terms.day);
  const start =
    terms.from ??
    [...drawn.map(({ seenOn }) => seenOn), ...lots.map((lot) => lot.orderedOn)].sort()[0] ??
    terms.day;
  const ends = stores.map((storeId) => {
    const own = drawn.filter((point) => point.storeId === storeId);
    return own.findLast(({ kind }) => kind === "shelf") ?? own.at(-1);
  });
  const places = labelPlaces(
    ends.map((end) => (end === undefined ? 0 : placeOn(ticks, end.value).toNumber())),
    LABEL_GAP,
  );
  return {
    currency: terms.currency,
    lines: ends.map((end, index) => ({
      storeId: stores[index] ?? "",
      name: end?.storeName ?? "",
      label: valueAt(ticks, places[index] ?? 0),
      beforeImportCharges: end?.beforeImportCharges ?? false,
    })),
    otherStores: new Set(points.map(({ storeId }) => storeId)).size - stores.length,
    lots: lots.map(({ id, letter }) => ({ id, letter })),
    rows,
    days: [dayNumber(start), last],
    dayTicks: monthTicks(start, terms.day).map((on) => ({
      at: dayNumber(on),
      label: monthText(on, terms.locale),
    })),
    valueTicks: ticks.map((tick) => ({
      at: tick.toNumber(),
      label: unitPriceText(money(tick, terms.currency), terms.locale),
    })),
  };
}
