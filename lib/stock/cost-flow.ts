import type { LocalDate } from "../calendar/local-date.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { type Money, money } from "../money/money.ts";
import type { Lot, StockEvent } from "./lot.ts";
import { withdrawalCost } from "./lot-state.ts";

/** What came in at a cost for the whole of it. quantity above zero; cost in minor units. */
export type CostIn = Readonly<{ way: "in"; id: string; on: LocalDate; quantity: Decimal; cost: Money }>;
/** What was issued: drawn, returned, sold, written off, missed. */
export type CostOut = Readonly<{ way: "out"; id: string; on: LocalDate; quantity: Decimal }>;
/** The movements of one material, in the order they count in: by day, what comes in before what goes out. */
export type CostFlow = readonly (CostIn | CostOut)[];

/** What an issue cost by a formula; what is left and at which cost. Together: what came in, to the cent. */
export type CostedFlow = Readonly<{
  issues: readonly Readonly<{ id: string; on: LocalDate; quantity: Decimal; cost: Money }>[];
  left: Readonly<{ quantity: Decimal; cost: Money }>;
}>;

/** More was issued than had come in by then: a flow of one material's lots cannot say this. */
export class FlowRunsDry extends Error {
  constructor({ id, on }: CostOut) {
    super(`the issue ${id} on ${on} takes more than has come in by then: make the flow with costFlow`);
    this.name = "FlowRunsDry";
  }
}

const LEAVES: ReadonlySet<StockEvent["kind"]> = new Set([
  "drawn",
  "returned",
  "sold",
  "written-off",
  "missing",
]);

/** A lot and what it cost, home currency, unrounded; its own events. */
export type CostedLot = Readonly<{ lot: Lot; cost: Money; events: readonly StockEvent[] }>;

function flowOf({ lot, cost, events }: CostedLot, day: LocalDate): (CostIn | CostOut)[] {
  let before = ZERO;
  const came = [...lot.receipts]
    .filter(({ on }) => on <= day)
    .sort((a, b) => a.on.localeCompare(b.on))
    .map(({ quantity, on }, index): CostIn => {
      const own = withdrawalCost(cost, lot.quantity, before, quantity);
      before = before.plus(quantity);
      return { way: "in", id: `${lot.id} ${index}`, on, quantity, cost: own };
    });
  const later = events.filter((event) => event.lotId === lot.id && event.on <= day);
  return [
    ...came,
    ...later.flatMap((event): (CostIn | CostOut)[] => {
      const { id, on, quantity } = event;
      if (event.kind === "found") return [{ way: "in", id, on, quantity, cost: money(ZERO, cost.currency) }];
      return LEAVES.has(event.kind) ? [{ way: "out", id, on, quantity }] : [];
    }),
  ];
}

/**
 * The movements of one material up to the end of a day, from its lots: what came in at its part of the lot's cost (what was
 * found at none), what left. What is on order is not in stock yet and not in it. Within a day: in before out, then the order of
 * recording. Units: purchase units, home currency. Rounds: a receipt's part to the minor unit, so that a lot's parts are its
 * cost. Source: IAS 2 paragraphs 9-11 and 23-27.
 */
export function costFlow(lots: readonly CostedLot[], day: LocalDate): CostFlow {
  const order = new Map<string, number>();
  for (const { events } of lots) for (const { id, sequence } of events) order.set(id, sequence);
  return lots
    .flatMap((one) => flowOf(one, day))
    .sort((a, b) => {
      if (a.on !== b.on) return a.on < b.on ? -1 : 1;
      if (a.way !== b.way) return a.way === "in" ? -1 : 1;
      return (order.get(a.id) ?? 0) - (order.get(b.id) ?? 0);
    });
}

/** All that came in: quantity and cost. */
export function totalIn(flow: CostFlow, currency: CurrencyCode): { quantity: Decimal; cost: Money } {
  let quantity = ZERO;
  let cost = ZERO;
  for (const move of flow) {
    if (move.way === "out") continue;
    quantity = quantity.plus(move.quantity);
    cost = cost.plus(move.cost.amount);
  }
  return { quantity, cost: money(cost, currency) };
}
