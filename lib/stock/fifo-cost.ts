import { Decimal, ZERO } from "../decimal.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { type Money, money } from "../money/money.ts";
import { type CostedFlow, type CostFlow, type CostIn, type CostOut, FlowRunsDry } from "./cost-flow.ts";
import { withdrawalCost } from "./lot-state.ts";

/** What came in at once and is not all gone. taken: of it, what has left. */
type Layer = { readonly came: CostIn; taken: Decimal };

function issue(layers: Layer[], out: CostOut): Decimal {
  let rest = out.quantity;
  let cost = ZERO;
  while (rest.greaterThan(0)) {
    const [layer] = layers;
    if (layer === undefined) throw new FlowRunsDry(out);
    const { came, taken } = layer;
    const take = Decimal.min(rest, came.quantity.minus(taken));
    cost = cost.plus(withdrawalCost(came.cost, came.quantity, taken, take).amount);
    layer.taken = taken.plus(take);
    rest = rest.minus(take);
    if (layer.taken.equals(came.quantity)) layers.shift();
  }
  return cost;
}

/**
 * First in, first out: an issue bears the cost of the oldest units not yet issued (perpetual).
 * Units: purchase units; money in minor units of one currency. Rounds: within what came in at once the running cost, half up, so that
 * issues and what is left add up to what came in. @throws {FlowRunsDry}. Source: IAS 2 paragraphs 25 and 27.
 */
export function fifoCost(flow: CostFlow, currency: CurrencyCode): CostedFlow {
  const layers: Layer[] = [];
  const issues: { id: string; on: CostOut["on"]; quantity: Decimal; cost: Money }[] = [];
  for (const move of flow) {
    if (move.way === "in") layers.push({ came: move, taken: ZERO });
    else
      issues.push({
        id: move.id,
        on: move.on,
        quantity: move.quantity,
        cost: money(issue(layers, move), currency),
      });
  }
  let quantity = ZERO;
  let cost = ZERO;
  for (const { came, taken } of layers) {
    const left = came.quantity.minus(taken);
    quantity = quantity.plus(left);
    cost = cost.plus(withdrawalCost(came.cost, came.quantity, taken, left).amount);
  }
  return { issues, left: { quantity, cost: money(cost, currency) } };
}
