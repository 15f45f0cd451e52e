import { type LocalDate, within } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import { groupedBy, materialOf } from "../exposure/exposure-facts.ts";
import { type Money, money, subtract, sum } from "../money/money.ts";
import { movingAverageCost } from "../stock/average-cost.ts";
import {
  type CostedFlow,
  type CostedLot,
  type CostFlow,
  costFlow,
  FlowRunsDry,
  totalIn,
} from "../stock/cost-flow.ts";
import { fifoCost } from "../stock/fifo-cost.ts";
import { lotAccount } from "../stock/lot-account.ts";
import { lotCost } from "../stock/lot-cost.ts";
import type { SavingsFacts } from "./savings.ts";

/** What left in a period cost, and what is left at its end costs, by one formula. Home currency. */
export type BookCost = Readonly<{ issued: Money; left: Money }>;

/**
 * One material's stock for a bookkeeper by three formulas of IAS 2. issued: units that left within the period, left: units
 * in stock at its end. null: a lot's cost is not known, or stock that is only ordered was used.
 */
export type BookCosts = Readonly<{
  materialId: string;
  issued: Decimal;
  left: Decimal;
  byLot: BookCost | null;
  fifo: BookCost | null;
  average: BookCost | null;
}>;

type Period = Readonly<{ from: LocalDate | null; until: LocalDate }>;

function ofPeriod({ issues, left }: CostedFlow, { from, until }: Period): BookCost {
  const own = issues.filter(({ on }) => within(on, from, until));
  const { currency } = left.cost;
  return {
    issued: sum(
      own.map(({ cost }) => cost),
      currency,
    ),
    left: left.cost,
  };
}

/** Each unit at its own lot's cost, as everywhere else in the books; what is left is what came in less what left. */
function byLot(
  lots: readonly CostedLot[],
  flow: CostFlow,
  { from, until }: Period,
  nothing: Money,
): BookCost {
  const gone = lots.flatMap(({ lot, cost, events }) => lotAccount(lot, cost, events, until).withdrawals);
  const of = (some: typeof gone) =>
    sum(
      some.map(({ cost }) => cost),
      nothing.currency,
    );
  return {
    issued: of(gone.filter(({ event }) => within(event.on, from, until))),
    left: subtract(totalIn(flow, nothing.currency).cost, of(gone)),
  };
}

/**
 * What stock cost by specific identification (the rule of every other figure), first in first out, and moving average,
 * side by side, material by material. Units: home currency. Rounds: as the formulas do. Source: IAS 2 paragraphs 23-27, rules.md R9.
 */
export function bookCosts(facts: SavingsFacts, period: Period): BookCosts[] {
  const { until } = period;
  const { homeCurrency } = facts.valuation;
  const nothing = money(0, homeCurrency);
  const events = groupedBy(facts.events, (event) => event.lotId);
  const materials = groupedBy(
    facts.lots.filter(({ orderedOn }) => orderedOn <= until),
    ({ materialId }) => materialId,
  );
  return [...materials].map(([materialId, lots]): BookCosts => {
    const material = materialOf(facts, materialId);
    const costs = lots.map((lot) => lotCost(lot, material, facts.valuation, until));
    const costed = lots.flatMap((lot, index): CostedLot[] => {
      const cost = costs[index];
      return [{ lot, cost: cost?.known ? cost.cost : nothing, events: events.get(lot.id) ?? [] }];
    });
    const flow = costFlow(costed, until);
    let issued = ZERO;
    let stock = ZERO;
    for (const move of flow) {
      stock = move.way === "in" ? stock.plus(move.quantity) : stock.minus(move.quantity);
      if (move.way === "out" && within(move.on, period.from, until)) issued = issued.plus(move.quantity);
    }
    const known = costs.every((cost) => cost.known);
    const by = (formula: () => CostedFlow): BookCost | null => {
      if (!known) return null;
      try {
        return ofPeriod(formula(), period);
      } catch (error) {
        if (error instanceof FlowRunsDry) return null;
        throw error;
      }
    };
    return {
      materialId,
      issued,
      left: stock,
      byLot: known ? byLot(costed, flow, period, nothing) : null,
      fifo: by(() => fifoCost(flow, homeCurrency)),
      average: by(() => movingAverageCost(flow, homeCurrency)),
    };
  });
}
