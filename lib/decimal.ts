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

/** Text, whole number or decimal to Decimal. Throws: DecimalError (decimal.js) when the text is not a number. */
export function decimal(value: string | number | Decimal): Decimal {
  return new Decimal(value);
}

export const ZERO = new Decimal(0);
export const ONE = new Decimal(1);
export const HUNDRED = new Decimal(100);

/** Half up to a number of decimal places. Rounds: once, here. */
export function roundHalfUp(value: Decimal, places: number): Decimal {
  return value.toDecimalPlaces(places, Decimal.ROUND_HALF_UP);
}
