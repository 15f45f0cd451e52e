import * as z from "zod";
import type { Material } from "../materials/material.ts";
import type { Valuation } from "../prices/valuation.ts";
import { type Disposal, wasteWeight } from "../projects/disposal.ts";
import { disposalCost } from "../projects/disposal-cost.ts";
import {
  currencyShape,
  dayShape,
  decimalShape,
  enteredDigits,
  exactDigits,
  exactDigitsOrNull,
  momentShape,
  moneyShape,
  totalDigits,
} from "./api-fields.ts";

export const disposalShape = z.strictObject({
  id: z.string(),
  projectId: z.string(),
  kind: z.string(),
  on: dayShape,
  feeBasis: z.string(),
  fee: decimalShape,
  least: decimalShape.nullable(),
  loads: decimalShape.nullable(),
  hauling: decimalShape,
  currency: currencyShape,
  taxIncluded: z.boolean(),
  taxRegion: z.string().nullable(),
  weight: z.strictObject({ value: decimalShape, unit: z.string() }).nullable().describe("as weighed"),
  materialId: z.string().nullable(),
  quantity: decimalShape.nullable(),
  note: z.string().nullable(),
  undoneAt: momentShape.nullable(),
  weighs: z
    .strictObject({
      kilograms: decimalShape,
      from: z.enum(["weighed", "material"]),
      source: z.string().nullable(),
    })
    .nullable()
    .describe("null: not known"),
  cost: moneyShape.nullable().describe("all in, home currency; null: not known"),
  cash: moneyShape.nullable().describe("with the tax that comes back"),
  unknown: z.string().nullable().describe("why the cost is not known"),
});

/** Waste gotten rid of, what it weighs and what it cost. Rounds: cost and cash, to the minor unit. */
export function apiDisposal(
  disposal: Disposal & Readonly<{ undoneAt?: string | null }>,
  material: Material | null,
  valuation: Valuation,
): z.output<typeof disposalShape> {
  const { currency, weight } = disposal;
  const cost = disposalCost(disposal, material, valuation);
  const weighs = wasteWeight(disposal, material);
  const entered = (amount: typeof disposal.fee) => enteredDigits(amount, currency);
  return {
    id: disposal.id,
    projectId: disposal.projectId,
    kind: disposal.kind,
    on: disposal.on,
    feeBasis: disposal.feeBasis,
    fee: entered(disposal.fee),
    least: disposal.least === null ? null : entered(disposal.least),
    loads: exactDigitsOrNull(disposal.loads),
    hauling: entered(disposal.hauling),
    currency,
    taxIncluded: disposal.taxIncluded,
    taxRegion: disposal.taxRegion,
    weight: weight === null ? null : { value: exactDigits(weight.value), unit: weight.unit },
    materialId: disposal.materialId,
    quantity: exactDigitsOrNull(disposal.quantity),
    note: disposal.note,
    undoneAt: disposal.undoneAt ?? null,
    weighs: weighs === null ? null : { ...weighs, kilograms: exactDigits(weighs.kilograms) },
    cost: cost.known ? { amount: totalDigits(cost.cost), currency: cost.cost.currency } : null,
    cash: cost.known ? { amount: totalDigits(cost.cash), currency: cost.cash.currency } : null,
    unknown: cost.known ? null : cost.reason,
  };
}
