import { Decimal, decimal, ZERO } from "../decimal.ts";
import { type CurrencyCode, MINOR_UNITS } from "../money/currencies.ts";
import { type Money, roundToMinorUnit } from "../money/money.ts";

/**
 * A billed total laid back on the exact parts it was rounded from, in whole minor units that sum to it.
 *     part(i) = exact(i) cut down to the minor unit; the units left over go to the largest remainders, the earlier first
 * Unlike `split` (lib/money) the parts may be refunds: exact parts of either sign. Rounds: the total once, half up.
 * No parts: nothing to lay it on, an empty list.
 */
export function apportion<C extends CurrencyCode>(total: Money<C>, exact: readonly Decimal[]): Money<C>[] {
  const unit = decimal(10).pow(-MINOR_UNITS[total.currency]);
  const parts = exact.map((part, index) => {
    const units = part.dividedBy(unit).toSignificantDigits(30, Decimal.ROUND_HALF_UP);
    return { index, units: units.floor(), remainder: units.minus(units.floor()) };
  });
  let left = roundToMinorUnit(total).amount.dividedBy(unit);
  for (const { units } of parts) left = left.minus(units);
  const order = [...parts].sort((a, b) => b.remainder.comparedTo(a.remainder) || a.index - b.index);
  const most = order.length === 0 ? ZERO : left.dividedToIntegerBy(order.length);
  const rest = left.minus(most.times(order.length));
  const shares = parts.map(({ units }) => units.plus(most));
  const step = rest.isNegative() ? -1 : 1;
  const gaining = step === 1 ? order : order.reverse();
  for (const { index } of gaining.slice(0, rest.abs().toNumber()))
    shares[index] = (shares[index] ?? ZERO).plus(step);
  return shares.map((share) => ({ amount: share.times(unit), currency: total.currency }));
}
