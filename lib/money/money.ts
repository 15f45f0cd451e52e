import { type Decimal, decimal, roundHalfUp, ZERO } from "../decimal.ts";
import { type CurrencyCode, MINOR_UNITS } from "./currencies.ts";

/** An exact amount in one currency. Rounded only when shown or billed, never in between. */
export type Money<C extends CurrencyCode = CurrencyCode> = Readonly<{ amount: Decimal; currency: C }>;

/** Two currencies met where only one may stand: convert one with `lib/rates` first. */
export class CurrencyMismatch extends Error {
  constructor(left: string, right: string) {
    super(`cannot put ${left} and ${right} together: convert one of them with a dated exchange rate first`);
    this.name = "CurrencyMismatch";
  }
}

/** An amount in a currency, unrounded. Throws: DecimalError when the text is no number. */
export function money<C extends CurrencyCode>(amount: string | number | Decimal, currency: C): Money<C> {
  return { amount: decimal(amount), currency };
}

function same(left: Money, right: Money): void {
  if (left.currency !== right.currency) throw new CurrencyMismatch(left.currency, right.currency);
}

/** Sum of two amounts of one currency. Rounds: never. @throws {CurrencyMismatch} when they differ at run time. */
export function add<C extends CurrencyCode>(left: Money<C>, right: Money<NoInfer<C>>): Money<C> {
  same(left, right);
  return { amount: left.amount.plus(right.amount), currency: left.currency };
}

/** Difference of two amounts of one currency. Rounds: never. @throws {CurrencyMismatch} */
export function subtract<C extends CurrencyCode>(left: Money<C>, right: Money<NoInfer<C>>): Money<C> {
  same(left, right);
  return { amount: left.amount.minus(right.amount), currency: left.currency };
}

/** An amount times a bare number. Rounds: never. */
export function times<C extends CurrencyCode>(value: Money<C>, factor: Decimal | string | number): Money<C> {
  return { amount: value.amount.times(factor), currency: value.currency };
}

/** The sum of a list; zero of the currency for an empty one. Rounds: never. @throws {CurrencyMismatch} */
export function sum<C extends CurrencyCode>(values: readonly Money<NoInfer<C>>[], currency: C): Money<C> {
  return values.reduce<Money<C>>((total, value) => add(total, value), { amount: ZERO, currency });
}

/** Half up, away from zero, to the currency's ISO 4217 minor unit: the one rounding of a line or a bill's tax (R1). */
export function roundToMinorUnit<C extends CurrencyCode>(value: Money<C>): Money<C> {
  return { amount: roundHalfUp(value.amount, MINOR_UNITS[value.currency]), currency: value.currency };
}
