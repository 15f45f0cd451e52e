import { type Decimal, roundHalfUp } from "../decimal.ts";
import { type CurrencyCode, MINOR_UNITS } from "../money/currencies.ts";
import { type Money, roundToMinorUnit } from "../money/money.ts";

/** What crosses to the browser for an amount: decimal text and a code, never a Decimal. */
export type PlainMoney = Readonly<{ amount: string; currency: CurrencyCode }>;

/** An amount as plain values. Rounds: to the minor unit, half up. */
export function plainMoney(value: Money): PlainMoney {
  return {
    amount: roundToMinorUnit(value).amount.toFixed(MINOR_UNITS[value.currency]),
    currency: value.currency,
  };
}

/** Decimal text into the figures of a language, with so many places; the exact digits, never a float. */
export function figureText(
  value: Decimal,
  locale: string,
  least: number,
  most: number,
  signed = false,
): string {
  const exact = roundHalfUp(value, most).toFixed() as Intl.StringNumericLiteral;
  return new Intl.NumberFormat(locale, {
    minimumFractionDigits: least,
    maximumFractionDigits: most,
    signDisplay: signed ? "exceptZero" : "auto",
  }).format(exact);
}

export type MoneyTextOptions = Readonly<{ currency?: boolean; signed?: boolean }>;

/**
 * An amount for reading, e.g. "1,058.65" or "CAD 1,058.65". signed: "+" before a gain.
 * Rounds: to the minor unit, half up.
 */
export function moneyText(value: Money, locale: string, options: MoneyTextOptions = {}): string {
  const places = MINOR_UNITS[value.currency];
  const figures = figureText(value.amount, locale, places, places, options.signed);
  return options.currency ? `${value.currency}\u00a0${figures}` : figures;
}

/** An amount without its cents, for a headline, e.g. "3,420". Rounds: to whole units, half up. */
export function wholeMoneyText(value: Money, locale: string): string {
  return figureText(value.amount, locale, 0, 0);
}

/** A unit price for reading. Rounds: to the minor unit; below one whole unit of money to two places more. */
export function unitPriceText(value: Money, locale: string): string {
  const places = MINOR_UNITS[value.currency];
  const small = value.amount.abs().lessThan(1) && !value.amount.isZero();
  return figureText(value.amount, locale, places, small ? places + 2 : places);
}

/** A quantity for reading, at most three places and no needless zeros. Rounds: half up to 0.001. */
export function quantityText(value: Decimal, locale: string): string {
  return figureText(value, locale, 0, 3);
}
