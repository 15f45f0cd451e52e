import { type Decimal, decimal, ZERO } from "../decimal.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { add, type Money, money, roundToMinorUnit, subtract, sum, times } from "../money/money.ts";
import type { ExposureTotals, RequirementExposure } from "./exposure-figures.ts";

/** The move that a price swing is shown for until there is a band. */
const TENTH = decimal("0.1");

/** Nothing unknown among them: their sum; else null. */
function sumOfKnown(values: readonly (Money | null)[], currency: CurrencyCode): Money | null {
  const known = values.filter((value) => value !== null);
  return known.length < values.length ? null : sum(known, currency);
}

/** Estimate and variance from the parts they are made of (R8). Incomplete, or no budget: no variance. */
function withEstimate(parts: Omit<ExposureTotals, "estimateAtCompletion" | "variance">): ExposureTotals {
  const estimateAtCompletion = add(add(parts.lockedCost, parts.costToFinish), parts.perOrderCharges);
  const variance =
    parts.budget === null || !parts.complete ? null : subtract(parts.budget, estimateAtCompletion);
  return { ...parts, estimateAtCompletion, variance };
}

/**
 * A project's totals: sums of its lines, plus charges per order.
 *     estimate at completion = locked cost + cost to finish + charges per order;  variance = budget - estimate
 * complete is false when a line has no price for all it needs, or a cost or quantity of it cannot be said: then the
 * totals are "at least". tenPercent = cost to finish / 10. Units: home currency.
 * Rounds: tenPercent once; the rest are sums of rounded amounts. Source: rules.md R6, R8.
 */
export function projectTotals(
  lines: readonly RequirementExposure[],
  orderCharges: readonly Readonly<{ amount: Money }>[],
  budget: Money | null,
  currency: CurrencyCode,
): ExposureTotals {
  const of = (amountOf: (line: RequirementExposure) => Money | null): Money => {
    let total: Decimal = ZERO;
    for (const line of lines) total = total.plus(amountOf(line)?.amount ?? ZERO);
    return money(total, currency);
  };
  const costToFinish = of((line) => line.costToFinish);
  const unpricedLines = lines.filter((line) => line.unpriced).length;
  return withEstimate({
    lockedCost: of((line) => line.lockedCost),
    costToFinish,
    perOrderCharges: sum(
      orderCharges.map((charge) => charge.amount),
      currency,
    ),
    budget,
    unrealisedSaving: sumOfKnown(
      lines.map((line) => line.unrealisedSaving),
      currency,
    ),
    restsOnStale: of((line) => line.restsOnStale),
    restsOnLapsing: of((line) => line.restsOnLapsing),
    unpricedLines,
    tenPercent: roundToMinorUnit(times(costToFinish, TENTH)),
    complete: unpricedLines === 0 && lines.every((line) => !line.remarks.includes("lot-cost-unknown")),
  });
}

/**
 * The totals of several projects: a sum of projects is a sum, nothing is bought together (R6). One project without a
 * budget: no budget in all. Units: home currency. Rounds: never.
 */
export function sumOfTotals(projects: readonly ExposureTotals[], currency: CurrencyCode): ExposureTotals {
  const of = (amountOf: (totals: ExposureTotals) => Money): Money => sum(projects.map(amountOf), currency);
  const budget = sumOfKnown(
    projects.map((totals) => totals.budget),
    currency,
  );
  return withEstimate({
    lockedCost: of((totals) => totals.lockedCost),
    costToFinish: of((totals) => totals.costToFinish),
    perOrderCharges: of((totals) => totals.perOrderCharges),
    budget: projects.length === 0 ? null : budget,
    unrealisedSaving: sumOfKnown(
      projects.map((totals) => totals.unrealisedSaving),
      currency,
    ),
    restsOnStale: of((totals) => totals.restsOnStale),
    restsOnLapsing: of((totals) => totals.restsOnLapsing),
    unpricedLines: projects.reduce((total, totals) => total + totals.unpricedLines, 0),
    tenPercent: of((totals) => totals.tenPercent),
    complete: projects.every((totals) => totals.complete),
  });
}
