import { Decimal, decimal } from "../decimal.ts";
import type { CurrencyCode } from "./currencies.ts";
import { type Money, roundToMinorUnit } from "./money.ts";

/**
 * The smallest coin a cash total is rounded to, where it is larger than the minor unit.
 * Source: Budget 2012 (Canada), "Rounding", and the Royal Canadian Mint's rounding page (CAD); Unicode CLDR,
 * supplementalData, fractions, cashRounding 5 (CAD and CHF).
 */
const SMALLEST_COIN: Readonly<Partial<Record<CurrencyCode, string>>> = { CAD: "0.05", CHF: "0.05" };

/**
 * What is handed over when a total is paid in cash: the nearest five cents in CAD and CHF, elsewhere the total itself.
 * Rounds: the total to its minor unit, then to the nearest coin, half up (no tie can arise from whole cents). For the
 * total of a bill only, never for its lines or taxes, and never when it is paid by card.
 */
export function cashTotal<C extends CurrencyCode>(total: Money<C>): Money<C> {
  const due = roundToMinorUnit(total);
  const coin = SMALLEST_COIN[total.currency];
  if (coin === undefined) return due;
  return { amount: due.amount.toNearest(decimal(coin), Decimal.ROUND_HALF_UP), currency: due.currency };
}
