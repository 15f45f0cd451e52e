import type { LocalDate } from "../calendar/local-date.ts";
import { ZERO } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import { type Money, money, subtract } from "../money/money.ts";
import type { Valuation } from "../prices/valuation.ts";
import { movingAverageCost, periodicAverageCost } from "./average-cost.ts";
import { type CostedFlow, type CostedLot, costFlow, totalIn } from "./cost-flow.ts";
import { fifoCost } from "./fifo-cost.ts";
import type { Lot, StockEvent } from "./lot.ts";
import { lotAccount } from "./lot-account.ts";
import { lotCost } from "./lot-cost.ts";

/** What the goods of one material cost by each formula of IAS 2. ownCost: each lot's own, the one this program keeps books by. */
export const COST_METHODS = ["own-cost", "first-in-first-out", "moving-average", "periodic-average"] as const;
export type CostMethod = (typeof COST_METHODS)[number];

/** known false: lots whose cost is not known; nothing is said then. */
export type CostByMethod =
  | Readonly<{
      known: true;
      came: ReturnType<typeof totalIn>;
      methods: Readonly<Record<CostMethod, CostedFlow>>;
    }>
  | Readonly<{ known: false; lotIds: readonly string[] }>;

/** Specific identification: what left each lot took of that lot's cost. */
function ownCost(lots: readonly CostedLot[], came: ReturnType<typeof totalIn>, day: LocalDate): CostedFlow {
  const issues = lots
    .flatMap(({ lot, cost, events }) => lotAccount(lot, cost, events, day).withdrawals)
    .sort((a, b) => a.event.on.localeCompare(b.event.on) || a.event.sequence - b.event.sequence)
    .map(({ event, quantity, cost }) => ({ id: event.id, on: event.on, quantity, cost }));
  const { currency } = came.cost;
  const spent = issues.reduce<Money>((sum, { cost }) => money(sum.amount.plus(cost.amount), currency), {
    amount: ZERO,
    currency,
  });
  const gone = issues.reduce((sum, { quantity }) => sum.plus(quantity), ZERO);
  return { issues, left: { quantity: came.quantity.minus(gone), cost: subtract(came.cost, spent) } };
}

/**
 * What was issued of one material and what is left, by every formula, up to the end of a day: for the bookkeeper, beside the
 * lots' own costs that all other figures use. The periodic average takes all up to the day as one period. By each of them what
 * came in is what was issued and what is left, to the cent.
 * Units: purchase units, home currency. Rounds: as `costFlow` and the formulas. Source: IAS 2 paragraphs 23-27.
 */
export function costByMethod(
  material: Material,
  stock: Readonly<{ lots: readonly Lot[]; events: readonly StockEvent[] }>,
  valuation: Valuation,
  day: LocalDate,
): CostByMethod {
  const own = stock.lots.filter((lot) => lot.materialId === material.id && lot.orderedOn <= day);
  const unknown: string[] = [];
  const lots = own.flatMap((lot): CostedLot[] => {
    const cost = lotCost(lot, material, valuation, day);
    if (!cost.known) {
      unknown.push(lot.id);
      return [];
    }
    return [{ lot, cost: cost.cost, events: stock.events.filter((event) => event.lotId === lot.id) }];
  });
  if (unknown.length > 0) return { known: false, lotIds: unknown };
  const currency = valuation.homeCurrency;
  const flow = costFlow(lots, day);
  const came = totalIn(flow, currency);
  return {
    known: true,
    came,
    methods: {
      "own-cost": ownCost(lots, came, day),
      "first-in-first-out": fifoCost(flow, currency),
      "moving-average": movingAverageCost(flow, currency),
      "periodic-average": periodicAverageCost(flow, currency),
    },
  };
}
