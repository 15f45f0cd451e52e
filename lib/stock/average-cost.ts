import { type Decimal, ZERO } from "../decimal.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { type Money, money, roundToMinorUnit, subtract } from "../money/money.ts";
import { type CostedFlow, type CostFlow, type CostOut, FlowRunsDry, totalIn } from "./cost-flow.ts";
import { withdrawalCost } from "./lot-state.ts";

type Issue = CostedFlow["issues"][number];

/**
 * Moving weighted average: an issue bears the average cost of what is in stock just before it.
 *     cost of an issue = cost in stock x quantity / quantity in stock;  both go down by it
 * Units: purchase units; money in minor units of one currency. Rounds: each issue once, half up; the rest stays in stock, so issues
 * and what is left add up to what came in; the last of the stock bears all that is left. @throws {FlowRunsDry}. Source: IAS 2
 * paragraph 27.
 */
export function movingAverageCost(flow: CostFlow, currency: CurrencyCode): CostedFlow {
  let quantity = ZERO;
  let cost: Money = money(ZERO, currency);
  const issues: Issue[] = [];
  for (const move of flow) {
    if (move.way === "in") {
      quantity = quantity.plus(move.quantity);
      cost = money(cost.amount.plus(move.cost.amount), currency);
      continue;
    }
    if (move.quantity.greaterThan(quantity)) throw new FlowRunsDry(move);
    const own = move.quantity.equals(quantity)
      ? cost
      : roundToMinorUnit(money(cost.amount.times(move.quantity).dividedBy(quantity), currency));
    issues.push(issueOf(move, own));
    quantity = quantity.minus(move.quantity);
    cost = subtract(cost, own);
  }
  return { issues, left: { quantity, cost } };
}

/**
 * Periodic weighted average: every issue of the period bears the average of all that was in stock and came in during it.
 *     average = sum of cost in / sum of quantity in;  cost of an issue = quantity x average
 * flow: the period's, what was in stock before it coming in first. Units: purchase units; money in minor units of one currency. Rounds:
 * the running cost of the issues, half up, so that issues and what is left add up to what came in. @throws {FlowRunsDry} when more
 * was issued than came in over the whole period. Source: IAS 2 paragraph 27 (an average on a periodic basis).
 */
export function periodicAverageCost(flow: CostFlow, currency: CurrencyCode): CostedFlow {
  const came = totalIn(flow, currency);
  let taken = ZERO;
  const issues: Issue[] = [];
  for (const move of flow) {
    if (move.way === "in") continue;
    if (taken.plus(move.quantity).greaterThan(came.quantity)) throw new FlowRunsDry(move);
    issues.push(issueOf(move, withdrawalCost(came.cost, came.quantity, taken, move.quantity)));
    taken = taken.plus(move.quantity);
  }
  const quantity = came.quantity.minus(taken);
  const cost = quantity.isZero()
    ? subtract(came.cost, totalOf(issues, currency))
    : withdrawalCost(came.cost, came.quantity, taken, quantity);
  return { issues, left: { quantity, cost } };
}

function issueOf({ id, on, quantity }: CostOut, cost: Money): Issue {
  return { id, on, quantity, cost };
}

function totalOf(issues: readonly Issue[], currency: CurrencyCode): Money {
  const total = issues.reduce<Decimal>((sum, { cost }) => sum.plus(cost.amount), ZERO);
  return money(total, currency);
}
