import { type Decimal, HUNDRED, ONE } from "../decimal.ts";

/** Where an index stands; its base stands at 100. */
export type IndexLevel = Readonly<{ level: Decimal }>;
/** A difference of two levels, in index points: 126 is six points over 120. Never a percent. */
export type IndexPoints = Readonly<{ points: Decimal }>;
/** A change in percent of the earlier value: 126 is 5 % over 120. Never index points. */
export type PercentChange = Readonly<{ percent: Decimal }>;

/** @throws {RangeError} when a level is zero or below: nothing can be measured against it. */
function above(level: IndexLevel): Decimal {
  if (!level.level.greaterThan(0))
    throw new RangeError(`an index cannot stand at ${level.level}: leave such a value out`);
  return level.level;
}

/** A ratio to the base as a level: 100 x ratio. Units: index, base = 100. Rounds: never. */
export function levelOf(ratio: Decimal): IndexLevel {
  return { level: ratio.times(HUNDRED) };
}

/** Index points between two levels: later - earlier. Rounds: never. Source: how statistical offices tell points from percent (trade.md I1). */
export function pointsBetween(earlier: IndexLevel, later: IndexLevel): IndexPoints {
  return { points: later.level.minus(earlier.level) };
}

/** Percent between two levels: 100 x (later - earlier) / earlier. Rounds: never (division to 40 digits). @throws {RangeError} when earlier is not above zero. Source: as `pointsBetween`. */
export function percentBetween(earlier: IndexLevel, later: IndexLevel): PercentChange {
  return { percent: later.level.minus(earlier.level).times(HUNDRED).dividedBy(above(earlier)) };
}

/** The same movement with another base: 100 x level / base. Units: index, base = 100. Rounds: never (division to 40 digits). @throws {RangeError} when base is not above zero. */
export function rebased(level: IndexLevel, base: IndexLevel): IndexLevel {
  return levelOf(level.level.dividedBy(above(base)));
}

/**
 * A nominal change without the general rise of prices: 100 x ((1 + nominal) / (1 + inflation) - 1), each as a share.
 * Units: percent. Rounds: never (division to 40 digits). @throws {RangeError} when inflation is -100 % or below.
 */
export function realChange(nominal: PercentChange, inflation: PercentChange): PercentChange {
  const share = ({ percent }: PercentChange) => ONE.plus(percent.dividedBy(HUNDRED));
  const ratio = share(nominal).dividedBy(above({ level: share(inflation) }));
  return { percent: ratio.minus(ONE).times(HUNDRED) };
}
