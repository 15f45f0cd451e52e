import DecimalJs from "decimal.js";

/**
 * The one decimal of the project: 40 significant digits, half up (away from zero at a tie).
 * Units: none. Rounds: division and roots to 40 digits. Source: decimal.js; half up is convention 1 of the tax
 * authorities named in tests/references/tax.test.ts.
 */
export const Decimal = DecimalJs.clone({
  precision: 40,
  rounding: DecimalJs.ROUND_HALF_UP,
  toExpNeg: -40,
  toExpPos: 40,
});
export type Decimal = InstanceType<typeof Decimal>;

/** Text, whole number or decimal to Decimal; a Decimal is itself, since none ever changes. Throws: DecimalError (decimal.js) when the text is not a number. */
export function decimal(value: string | number | Decimal): Decimal {
  return value instanceof Decimal ? value : new Decimal(value);
}

export const ZERO = new Decimal(0);
export const ONE = new Decimal(1);
export const HUNDRED = new Decimal(100);

/**
 * Digits beyond the thirtieth dropped. They are what a division that does not end leaves behind (70 / (70 / 3) is
 * 3 and a bit in the fortieth digit); no amount, rate or size of ours has so many. Rounds: half up to 30 digits.
 */
function withoutDivisionDust(value: Decimal): Decimal {
  return value.toSignificantDigits(30, Decimal.ROUND_HALF_UP);
}

/** Half up (away from zero) to a number of decimal places, free of division dust. Rounds: once, here. */
export function roundHalfUp(value: Decimal, places: number): Decimal {
  if (value.decimalPlaces() <= places) return value;
  return withoutDivisionDust(value).toDecimalPlaces(places, Decimal.ROUND_HALF_UP);
}

/** Up to the next whole number of steps, free of division dust; a whole number of steps stays. Rounds: once, here. */
export function roundUpToStep(value: Decimal, step: Decimal): Decimal {
  if (step.equals(ONE) && value.isInteger()) return value;
  return withoutDivisionDust(value.dividedBy(step)).ceil().times(step);
}
