import { type Decimal, ONE, roundUpToStep, ZERO } from "../decimal.ts";

/** Up to the next whole number. Rounds: once, here. */
export function wholeUp(value: Decimal): Decimal {
  return roundUpToStep(value, ONE);
}

/** Down to the whole number below. Rounds: once, here. */
export function wholeDown(value: Decimal): Decimal {
  const down = roundUpToStep(value.negated(), ONE).negated();
  return down.isZero() ? ZERO : down;
}

/**
 * Pieces at a spacing along an extent, one at each end.
 *     ceil(extent / spacing) + 1
 * Units: extent and spacing alike; result in pieces. Rounds: up, once. Source: common practice of framing.
 */
export function atSpacing(extent: Decimal, spacing: Decimal): Decimal {
  return wholeUp(extent.dividedBy(spacing)).plus(ONE);
}
