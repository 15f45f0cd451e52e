import { ONE } from "../decimal.ts";
import type { Observation } from "../prices/observation.ts";
import type { Bill, BilledLine } from "./bill.ts";
import type { LineAmounts } from "./line-amounts.ts";

/** A line as a price seen: everything of an observation but its id. */
export type PriceSeen = Omit<Observation, "id">;

/**
 * The price a line shows: on a receipt what was "paid", which is history; on a quote an offer until its last day.
 *     amount = net of the line, per the line's quantity: exactly what was asked, the discount in it
 * A quote holds for what was quoted or more, unless it says any quantity; its fees beside the lines are charges per order,
 * those of a receipt are not prices (R4). quantity: in the material's purchase unit. Rounds: never.
 * null: nothing is asked, or goods were handed back: no price. Source: rules.md R4, R5.
 */
export function priceSeen(
  bill: Bill,
  line: BilledLine,
  amounts: LineAmounts,
  quantity: Observation["minQuantity"],
): PriceSeen | null {
  const { net } = amounts;
  if (line.materialId === null || !net.amount.greaterThan(0)) return null;
  const quote = bill.kind === "quote";
  const perUnit = line.fees.map((fee) => ({ ...fee, basis: "unit" as const, freeFrom: null }));
  const perOrder = bill.fees.map((fee) => ({ ...fee, basis: "order" as const, freeFrom: null }));
  return {
    materialId: line.materialId,
    storeId: bill.storeId,
    seenOn: bill.on,
    terms: quote ? "quote" : "paid",
    amount: net,
    per: { quantity: line.quantity, unit: line.unit },
    taxIncluded: bill.taxIncluded,
    taxRegion: bill.taxRegion,
    exemptFrom: line.exemptFrom,
    minQuantity: quote && !bill.anyQuantity ? (quantity ?? ONE) : null,
    maxQuantity: null,
    packSize: null,
    from: null,
    until: quote ? bill.until : null,
    fees: quote ? [...perUnit, ...perOrder] : perUnit,
    note: null,
  };
}
