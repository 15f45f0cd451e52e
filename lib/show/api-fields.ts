import * as z from "zod";
import { type Decimal, roundHalfUp } from "../decimal.ts";
import { type CurrencyCode, MINOR_UNITS } from "../money/currencies.ts";
import { type Money, roundToMinorUnit } from "../money/money.ts";

/** How many places a unit price has in an answer at most (R1). */
const UNIT_PRICE_PLACES = 6;

/** Shapes of single fields in answers of the interface. Decimals are text. */
export const decimalShape = z.string().regex(/^-?\d+(\.\d+)?$/);
export const dayShape = z.iso.date();
export const momentShape = z.iso.datetime({ offset: true });
export const currencyShape = z.string().length(3);
export const spanShape = { from: dayShape.nullable(), until: dayShape.nullable() };
export const moneyShape = z.strictObject({ amount: decimalShape, currency: currencyShape });
export const unitPriceShape = z.strictObject({
  amount: decimalShape,
  currency: currencyShape,
  unit: z.string(),
});

/** A decimal as plain digits, exact. Rounds: never. */
export function exactDigits(value: Decimal): string {
  return value.toFixed();
}

/** The same for what may be absent. */
export function exactDigitsOrNull(value: Decimal | null): string | null {
  return value === null ? null : value.toFixed();
}

function padded(value: Decimal, currency: CurrencyCode): string {
  return value.toFixed(Math.max(value.decimalPlaces(), MINOR_UNITS[currency]));
}

/** An amount as entered, with at least the places of its currency: "41.9" is "41.90". Rounds: never. */
export function enteredDigits(amount: Decimal, currency: CurrencyCode): string {
  return padded(amount, currency);
}

/** A total. Rounds: to the minor unit, half up. */
export function totalDigits(value: Money): string {
  return roundToMinorUnit(value).amount.toFixed(MINOR_UNITS[value.currency]);
}

/** The same for what may not be known. */
export function totalDigitsOrNull(value: Money | null): string | null {
  return value === null ? null : totalDigits(value);
}

/** A unit price for reading. Rounds: to 6 places, half up; totals never come from it. */
export function unitPriceDigits(value: Money): string {
  return padded(roundHalfUp(value.amount, UNIT_PRICE_PLACES), value.currency);
}

/** An amount as entered, with its currency. Rounds: never. */
export function enteredMoney(value: Money): z.output<typeof moneyShape> {
  return { amount: enteredDigits(value.amount, value.currency), currency: value.currency };
}
