import type { LocalDate } from "../calendar/local-date.ts";
import { wholeMonths } from "../calendar/whole-months.ts";
import { type Decimal, decimal, roundHalfUp } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import { valuedAsSeen } from "../prices/all-in-price.ts";
import { lacksImportCharges } from "../prices/foreign-store.ts";
import type { Lowest } from "../prices/lowest-since.ts";
import type { Observation } from "../prices/observation.ts";
import { seenDay } from "../prices/seen-day.ts";
import type { Valuation } from "../prices/valuation.ts";

/**
 * What is left of a material's earlier prices to tell since when nothing was as low: how many there are, the first day, and
 * the newest day of each low that no later day went under, the newest first. each: home currency, all in as of its day.
 */
export type PlainEarlier = Readonly<{
  count: number;
  first: LocalDate | null;
  lows: readonly Readonly<{ on: LocalDate; each: string }>[];
}>;

/** before: a day; everything earlier is summed up. New ones apart from used ones. */
export type PlainLows = Readonly<{ before: LocalDate; fresh: PlainEarlier; used: PlainEarlier }>;

/** Places beyond which a difference is the dust of a division; the same as `lowestSince` compares by. */
const PLACES = 20;

type Valued = Readonly<{ on: LocalDate; each: Decimal }>;

/** Earlier prices as `lowestSince` counts them, valued on their own days. */
function valued(seen: Observation, material: Material, valuation: Valuation): Valued | null {
  const store = valuation.stores.get(seen.storeId);
  if (store === undefined || lacksImportCharges(store, valuation)) return null;
  const price = valuedAsSeen(seen, material, valuation);
  return price.known ? { on: seen.seenOn, each: roundHalfUp(price.price.amount, PLACES) } : null;
}

function summedUp(prices: readonly Valued[]): PlainEarlier {
  const newest = [...prices].sort((a, b) => (a.on < b.on ? 1 : a.on > b.on ? -1 : a.each.comparedTo(b.each)));
  const lows: Valued[] = [];
  for (const price of newest) {
    const least = lows.at(-1);
    if (least === undefined || price.each.lessThan(least.each)) lows.push(price);
  }
  return {
    count: prices.length,
    first: newest.at(-1)?.on ?? null,
    lows: lows.map(({ on, each }) => ({ on, each: each.toFixed() })),
  };
}

/** Sums up what was seen of a material before a day. Units: home currency per purchase unit, all in. Rounds: to 20 places. */
export function plainLows(
  history: readonly Observation[],
  before: LocalDate,
  material: Material,
  valuation: Valuation,
): PlainLows {
  const earlier = history.filter((seen) => seen.seenOn < before);
  const of = (used: boolean) =>
    summedUp(
      earlier
        .filter((seen) => (seen.terms === "used") === used)
        .flatMap((seen) => valued(seen, material, valuation) ?? []),
    );
  return { before, fresh: of(false), used: of(true) };
}

/**
 * `lowestSince` from what is left of the earlier prices and the ones seen since. null: the price was seen before the day
 * the earlier ones are summed up to, so it cannot be told. Rounds: months down.
 */
export function lowestAmong(
  logged: Observation,
  lows: PlainLows,
  since: readonly Observation[],
  material: Material,
  valuation: Valuation,
): Lowest | null {
  const on = seenDay(logged, valuation);
  if (on < lows.before) return null;
  const own = valuedAsSeen(logged, material, valuation);
  if (!own.known) return { lowestInMonths: null, lowestEver: false, knownMonths: 0, observations: 0 };
  const price = roundHalfUp(own.price.amount, PLACES);
  const earlier = logged.terms === "used" ? lows.used : lows.fresh;
  const later = since
    .filter((seen) => seen.id !== logged.id && seen.seenOn >= lows.before && seen.seenOn < on)
    .filter((seen) => (seen.terms === "used") === (logged.terms === "used"))
    .flatMap((seen) => valued(seen, material, valuation) ?? []);
  const days = [...later.map((seen) => seen.on), ...(earlier.first === null ? [] : [earlier.first])];
  const first = days.reduce<LocalDate | null>((a, b) => (a === null || b < a ? b : a), null);
  const asLow = [
    ...later.filter(({ each }) => !each.greaterThan(price)).map((seen) => seen.on),
    ...earlier.lows.filter(({ each }) => !decimal(each).greaterThan(price)).map((low) => low.on),
  ].reduce<LocalDate | null>((a, b) => (a === null || b > a ? b : a), null);
  const observations = earlier.count + later.length;
  return {
    lowestInMonths: asLow === null ? null : wholeMonths(asLow, on),
    lowestEver: observations > 0 && asLow === null,
    knownMonths: first === null ? 0 : wholeMonths(first, on),
    observations,
  };
}
