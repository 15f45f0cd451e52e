import type { ExposureTotals } from "../exposure/exposure-figures.ts";
import { add, type Money } from "../money/money.ts";
import { moneyText, wholeMoneyText } from "./money-text.ts";

/** Under, over or on budget: the word that stands beside the figure, so that a sign is never alone. */
export type VarianceText = Readonly<{ side: "under" | "over" | "on"; amount: string; about: string }>;

/** A project's or the workspace's totals as text. null: not known or not given. */
export type TotalsText = Readonly<{
  currency: string;
  lockedCost: string;
  costToFinish: string;
  /** Without cents, for a headline. */
  aboutToFinish: string;
  perOrderCharges: string | null;
  /** Cost to finish and charges per order together: what is still to pay. */
  toFinishWithCharges: string;
  estimate: string;
  budget: string | null;
  variance: VarianceText | null;
  unrealisedSaving: string | null;
  restsOnStale: string | null;
  restsOnLapsing: string | null;
  unpricedLines: number;
  tenPercent: string;
  complete: boolean;
  nothingToBuy: boolean;
}>;

function varianceText(value: Money, locale: string): VarianceText {
  const size = { amount: value.amount.abs(), currency: value.currency };
  const side = value.amount.isZero() ? "on" : value.amount.isNegative() ? "over" : "under";
  return { side, amount: moneyText(size, locale), about: wholeMoneyText(size, locale) };
}

/** Totals for reading. Rounds: nothing further; the totals are in minor units already. */
export function totalsText(totals: ExposureTotals, locale: string): TotalsText {
  const some = (value: Money) => (value.amount.isZero() ? null : moneyText(value, locale));
  return {
    currency: totals.costToFinish.currency,
    lockedCost: moneyText(totals.lockedCost, locale),
    costToFinish: moneyText(totals.costToFinish, locale),
    aboutToFinish: wholeMoneyText(totals.costToFinish, locale),
    perOrderCharges: some(totals.perOrderCharges),
    toFinishWithCharges: moneyText(add(totals.costToFinish, totals.perOrderCharges), locale),
    estimate: moneyText(totals.estimateAtCompletion, locale),
    budget: totals.budget === null ? null : moneyText(totals.budget, locale),
    variance: totals.variance === null ? null : varianceText(totals.variance, locale),
    unrealisedSaving:
      totals.unrealisedSaving === null ? null : moneyText(totals.unrealisedSaving, locale, { signed: true }),
    restsOnStale: some(totals.restsOnStale),
    restsOnLapsing: some(totals.restsOnLapsing),
    unpricedLines: totals.unpricedLines,
    tenPercent: moneyText(totals.tenPercent, locale),
    complete: totals.complete,
    nothingToBuy: totals.costToFinish.amount.isZero() && totals.unpricedLines === 0,
  };
}
