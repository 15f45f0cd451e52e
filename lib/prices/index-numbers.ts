import { type Decimal, HUNDRED, ONE, roundHalfUp, ZERO } from "../decimal.ts";
import { type IndexLevel, type IndexPoints, levelOf } from "./index-levels.ts";

/** One material's price at the base and where it is compared: one currency, one unit, both known. */
export type PricedLine = Readonly<{ basePrice: Decimal; price: Decimal }>;
/** The same with how much of it the basket holds, in the unit the prices are for. */
export type BasketLine = PricedLine & Readonly<{ quantity: Decimal }>;
/** The same with the quantity of each side. */
export type TwoBasketsLine = BasketLine & Readonly<{ baseQuantity: Decimal }>;

/** @throws {RangeError} for a price that is no price (zero, below) or a quantity below zero. */
function checked<T extends PricedLine>(lines: readonly T[], quantityOf: (line: T) => Decimal): readonly T[] {
  for (const line of lines) {
    if (!line.basePrice.greaterThan(0) || !line.price.greaterThan(0))
      throw new RangeError("an index needs prices above zero: an unknown price is left out, never 0");
    if (quantityOf(line).lessThan(0)) throw new RangeError("a basket cannot hold less than nothing");
  }
  return lines;
}

/** What the basket costs: sum of quantity x price. Units: the prices' currency. Rounds: never. */
export function basketCost(lines: readonly BasketLine[], side: "basePrice" | "price"): Decimal {
  return lines.reduce((total, line) => total.plus(line.quantity.times(line[side])), ZERO);
}

/** Points that some lines move the index by, together: 100 x sum of q x (p - p0) / cost of the basket at the base. */
function movedBy(some: readonly BasketLine[], baseCost: Decimal): Decimal {
  return basketCost(some, "price").minus(basketCost(some, "basePrice")).times(HUNDRED).dividedBy(baseCost);
}

/**
 * Lowe index: one fixed basket at two sets of prices.
 *     100 x sum(q p) / sum(q p0) = 100 + sum of the contributions
 * Units: index, base = 100. Rounds: never (division to 40 digits). null: no line, or a basket of nothing.
 * @throws {RangeError} for a price not above zero, a quantity below zero.
 * Source: Consumer Price Index Manual and Producer Price Index Manual (IMF, ILO, OECD, UNECE, World Bank), basket indices.
 */
export function loweIndex(lines: readonly BasketLine[]): IndexLevel | null {
  const baseCost = basketCost(
    checked(lines, ({ quantity }) => quantity),
    "basePrice",
  );
  return baseCost.isZero() ? null : { level: HUNDRED.plus(movedBy(lines, baseCost)) };
}

/** Laspeyres index: Lowe with the base's quantities. Units, rounding, errors, source: as `loweIndex`. */
export function laspeyresIndex(lines: readonly TwoBasketsLine[]): IndexLevel | null {
  return loweIndex(lines.map((line) => ({ ...line, quantity: line.baseQuantity })));
}

/** Paasche index: Lowe with the quantities of the other side. Units, rounding, errors, source: as `loweIndex`. */
export function paascheIndex(lines: readonly TwoBasketsLine[]): IndexLevel | null {
  return loweIndex(lines);
}

/**
 * Fisher index: the geometric mean of Laspeyres and Paasche, sqrt(L x P). Turned round it is the inverse.
 * Units: index, base = 100. Rounds: never (root to 40 digits). null: where either is. Errors, source: as `loweIndex`.
 */
export function fisherIndex(lines: readonly TwoBasketsLine[]): IndexLevel | null {
  const laspeyres = laspeyresIndex(lines);
  const paasche = paascheIndex(lines);
  return laspeyres === null || paasche === null
    ? null
    : { level: laspeyres.level.times(paasche.level).sqrt() };
}

/**
 * Jevons index: the geometric mean of the price ratios, no quantities: 100 x (product of p / p0) to the power 1 / n.
 * Units: index, base = 100. Rounds: never (root to 40 digits). null: no line. Errors, source: as `loweIndex`.
 */
export function jevonsIndex(lines: readonly PricedLine[]): IndexLevel | null {
  if (lines.length === 0) return null;
  const product = checked(lines, () => ONE).reduce(
    (so, { price, basePrice }) => so.times(price).dividedBy(basePrice),
    ONE,
  );
  return levelOf(product.pow(ONE.dividedBy(lines.length)));
}

/**
 * What each line of a Lowe index moves it by, in index points: 100 x q (p - p0) / sum(q p0), in the order of the lines.
 * Rounds: each to `places`, half up, such that they sum to the rounded change exactly: a line gets the rounded sum up to
 * and with it less the rounded sum before it, so none is off by more than one in the last place.
 * No lines of any cost: no contribution is known. Errors: as `loweIndex`. Source: as `loweIndex`, contributions to change.
 */
export function contributions(lines: readonly BasketLine[], places = 20): IndexPoints[] | null {
  const baseCost = basketCost(
    checked(lines, ({ quantity }) => quantity),
    "basePrice",
  );
  if (baseCost.isZero()) return null;
  let before = ZERO;
  return lines.map((_, index) => {
    const upTo = roundHalfUp(movedBy(lines.slice(0, index + 1), baseCost), places);
    const points = upTo.minus(before);
    before = upTo;
    return { points };
  });
}
