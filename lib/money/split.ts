import { type Decimal, decimal, ZERO } from "../decimal.ts";
import { type CurrencyCode, MINOR_UNITS } from "./currencies.ts";
import { type Money, roundToMinorUnit } from "./money.ts";

/**
 * Shares of an amount by weights, each in whole minor units, summing to the rounded amount: nobody loses a cent.
 *     share(i) = amount x weight(i) / sum of weights, cut to the minor unit; the units left over go to the largest
 *     remainders, the earlier first at a tie (largest-remainder method).
 * Rounds: the amount once, half up, to its minor unit. All weights zero: equal weights.
 * Throws: {RangeError} for a negative weight or no weights.
 */
export function split<C extends CurrencyCode>(value: Money<C>, weights: readonly Decimal[]): Money<C>[] {
  if (weights.length === 0) throw new RangeError("an amount cannot be shared among nobody");
  if (weights.some((weight) => weight.isNegative() && !weight.isZero()))
    throw new RangeError("a share cannot have a negative weight");
  const given = weights.reduce((total, weight) => total.plus(weight), ZERO);
  const used = given.isZero() ? weights.map(() => decimal(1)) : weights;
  const total = used.reduce((sum, weight) => sum.plus(weight), ZERO);
  const unit = decimal(10).pow(-MINOR_UNITS[value.currency]);
  const units = roundToMinorUnit(value).amount.dividedBy(unit);
  const exact = used.map((weight) => units.times(weight).dividedBy(total));
  const cut = exact.map((share) => share.trunc());
  let left = units.minus(cut.reduce((sum, share) => sum.plus(share), ZERO));
  const order = exact
    .map((share, index) => ({ index, remainder: share.minus(cut[index] ?? ZERO).abs() }))
    .sort((a, b) => b.remainder.comparedTo(a.remainder) || a.index - b.index);
  const step = units.isNegative() ? decimal(-1) : decimal(1);
  for (const { index } of order) {
    if (left.isZero()) break;
    cut[index] = (cut[index] ?? ZERO).plus(step);
    left = left.minus(step);
  }
  return cut.map((share) => ({ amount: share.times(unit), currency: value.currency }));
}
