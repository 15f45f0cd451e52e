import * as z from "zod";
import { COST_METHODS, type CostByMethod } from "../stock/cost-methods.ts";
import { currencyShape, dayShape, decimalShape, exactDigits, totalDigits } from "./api-fields.ts";

const costed = z.strictObject({ quantity: decimalShape, cost: decimalShape });

export const costsShape = z.strictObject({
  currency: currencyShape,
  cameIn: costed.nullable().describe("null: the cost of a lot is not known"),
  unknownLots: z.array(z.string()),
  methods: z.array(
    z.strictObject({
      method: z.enum(COST_METHODS),
      issues: z.array(z.strictObject({ eventId: z.string(), on: dayShape, ...costed.shape })),
      left: costed,
    }),
  ),
});

/** What the goods of a material cost by each formula. Rounds: nothing further; money is in minor units. */
export function apiCosts(
  costs: CostByMethod,
  currency: z.output<typeof currencyShape>,
): z.output<typeof costsShape> {
  if (!costs.known) return { currency, cameIn: null, unknownLots: [...costs.lotIds], methods: [] };
  const { came, methods } = costs;
  return {
    currency,
    cameIn: { quantity: exactDigits(came.quantity), cost: totalDigits(came.cost) },
    unknownLots: [],
    methods: COST_METHODS.map((method) => {
      const { issues, left } = methods[method];
      return {
        method,
        issues: issues.map(({ id, on, quantity, cost }) => ({
          eventId: id,
          on,
          quantity: exactDigits(quantity),
          cost: totalDigits(cost),
        })),
        left: { quantity: exactDigits(left.quantity), cost: totalDigits(left.cost) },
      };
    }),
  };
}
