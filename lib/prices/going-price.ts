import { DAY_LIMITS } from "../calendar/day-limits.ts";
import { daysBetween, type LocalDate } from "../calendar/local-date.ts";
import { type Decimal, decimal } from "../decimal.ts";
import { purchaseStep } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import { money } from "../money/money.ts";
import { allInPrice } from "./all-in-price.ts";
import { lacksImportCharges } from "./foreign-store.ts";
import { tierOf } from "./in-force.ts";
import type { Observation } from "./observation.ts";
import type { GoingPrice } from "./offer.ts";
import { bySighting, recheckDays, seenDay } from "./seen-day.ts";
import type { Valuation } from "./valuation.ts";

type Priced = Readonly<{ observation: Observation; price: Decimal }>;

/**
 * What one store gives a going price. value: home currency per purchase unit, as of the day; before: the sighting it is, or
 * the one on the near side where it is drawn between two; after: the one on the far side.
 */
export type GoingSource = Readonly<{ value: Decimal; before: Priced; after: Priced | null }>;
/** A going price with what each store gave it, none where it is not known. */
export type SourcedGoingPrice = Readonly<{ going: GoingPrice; sources: readonly GoingSource[] }>;

const NOT_KNOWN: SourcedGoingPrice = { going: { known: false }, sources: [] };

/** One store's shelf prices for its smallest quantity, oldest first. */
type Shelf = readonly Readonly<{ observation: Observation; seen: LocalDate }>[];

/** Stores that count on the day, each with its shelf sightings known on `knownOn`. */
function shelves(
  day: LocalDate,
  knownOn: LocalDate,
  observations: readonly Observation[],
  material: Material,
  valuation: Valuation,
): Shelf[] {
  const stores = new Map<string, Observation[]>();
  for (const observation of observations) {
    if (observation.materialId !== material.id || observation.terms !== "shelf") continue;
    const store = valuation.stores.get(observation.storeId);
    if (store === undefined || lacksImportCharges(store, valuation)) continue;
    if (store.archivedOn !== null && store.archivedOn <= day) continue;
    if (seenDay(observation, valuation) > knownOn) continue;
    const seen = stores.get(store.id);
    if (seen) seen.push(observation);
    else stores.set(store.id, [observation]);
  }
  const step = purchaseStep(material.purchaseUnit);
  return [...stores.values()].map((sightings) => {
    const known = sightings.filter((observation) => seenDay(observation, valuation) <= day);
    const tiers = (known.length > 0 ? known : sightings).map((observation) => tierOf(observation, step));
    const smallest = tiers.reduce((least, tier) => (tier.lessThan(least) ? tier : least));
    return sightings
      .filter((observation) => tierOf(observation, step).equals(smallest))
      .sort(bySighting)
      .map((observation) => ({ observation, seen: seenDay(observation, valuation) }));
  });
}

/** Middle of the values; of an even count the mean of the middle two, unrounded. */
function median(values: readonly Decimal[]): Decimal | null {
  const sorted = [...values].sort((a, b) => a.comparedTo(b));
  const upper = sorted[sorted.length >> 1];
  const lower = sorted[(sorted.length - 1) >> 1];
  return upper === undefined || lower === undefined ? null : upper.plus(lower).dividedBy(decimal(2));
}

/** The newest sighting whose price has begun on the day, however old. */
function newestOn(shelf: Shelf, day: LocalDate): Shelf[number] | undefined {
  return shelf.findLast(({ observation, seen }) => seen <= day && (observation.from ?? day) <= day);
}

/**
 * The going price of a material on a day (R7): the median over stores of each store's newest shelf price for its smallest
 * quantity, all in as of the day, without order charges.
 *     fresh         no older than the recheck interval, or within its stated end
 *     interpolated  none fresh, and a past day: linear by days between a store's shelf prices on either side, at most
 *                   three recheck intervals apart
 *     older         none of these: no older than three recheck intervals
 * What is older than a year is no price (R5): none of the three reaches further back.
 * knownOn: the day it is looked at from. Sightings after `day` and up to it serve to interpolate only, so that the answer
 * as of the day itself never changes by what is seen later (R11). Foreign stores count once their import charges are
 * confirmed. Units: home currency per purchase unit. Rounds: never. None: not known. Source: rules.md R7.
 */
export function sourcedGoingPriceOn(
  day: LocalDate,
  observations: readonly Observation[],
  material: Material,
  valuation: Valuation,
  knownOn: LocalDate = day,
): SourcedGoingPrice {
  const interval = recheckDays(material, valuation);
  const longest = Math.min(interval * DAY_LIMITS.recheckIntervals, DAY_LIMITS.price);
  const stores = shelves(day, knownOn > day ? knownOn : day, observations, material, valuation);
  const priceOf = (observation: Observation): Decimal | null => {
    const price = allInPrice(observation, material, valuation, day);
    return price.known ? price.price.amount : null;
  };
  const newest = stores
    .flatMap((shelf) => newestOn(shelf, day) ?? [])
    .filter(({ seen }) => daysBetween(seen, day) <= DAY_LIMITS.price);
  const asSeen = ({ observation }: Shelf[number]): GoingSource | null => {
    const price = priceOf(observation);
    return price === null ? null : { value: price, before: { observation, price }, after: null };
  };
  const over = (
    found: readonly (GoingSource | null)[],
    kind: "fresh" | "older" | "interpolated",
  ): SourcedGoingPrice | null => {
    const sources = found.filter((source) => source !== null);
    const middle = median(sources.map(({ value }) => value));
    if (middle === null) return null;
    const price = money(middle, valuation.homeCurrency);
    return {
      going: { known: true, price, unit: material.purchaseUnit, stores: sources.length, kind },
      sources,
    };
  };
  const ended = ({ observation }: Shelf[number]) => observation.until !== null && observation.until < day;
  const fresh = newest.filter(
    (one) => !ended(one) && (one.observation.until !== null || daysBetween(one.seen, day) <= interval),
  );
  const between = (shelf: Shelf): GoingSource | null => {
    const before = newestOn(shelf, day);
    const after = shelf.find(({ seen }) => seen > day);
    if (before === undefined || after === undefined) return null;
    const apart = daysBetween(before.seen, after.seen);
    const left = priceOf(before.observation);
    const right = priceOf(after.observation);
    if (apart > longest || left === null || right === null) return null;
    return {
      value: left.plus(right.minus(left).times(daysBetween(before.seen, day)).dividedBy(apart)),
      before: { observation: before.observation, price: left },
      after: { observation: after.observation, price: right },
    };
  };
  return (
    over(fresh.map(asSeen), "fresh") ??
    over(stores.map(between), "interpolated") ??
    over(newest.filter(({ seen }) => daysBetween(seen, day) <= longest).map(asSeen), "older") ??
    NOT_KNOWN
  );
}

/** The going price alone: see `sourcedGoingPriceOn`. Units: home currency per purchase unit. Rounds: never. Source: rules.md R7. */
export function goingPriceOn(
  day: LocalDate,
  observations: readonly Observation[],
  material: Material,
  valuation: Valuation,
  knownOn: LocalDate = day,
): GoingPrice {
  return sourcedGoingPriceOn(day, observations, material, valuation, knownOn).going;
}
