import * as z from "zod";
import type { Store } from "../prices/store.ts";
import {
  currencyShape,
  dayShape,
  decimalShape,
  enteredMoney,
  exactDigits,
  exactDigitsOrNull,
  moneyShape,
  spanShape,
} from "./api-fields.ts";

export const storeShape = z.strictObject({
  id: z.string(),
  name: z.string(),
  taxRegion: z.string(),
  currency: currencyShape,
  tripCost: moneyShape.nullable(),
  pricesIncludeTax: z.boolean(),
  distanceKm: decimalShape.nullable(),
  discounts: z.array(
    z.strictObject({ category: z.string().nullable(), percent: decimalShape, ...spanShape }),
  ),
  importCharges: z
    .array(
      z.strictObject({
        name: z.string(),
        percent: decimalShape,
        perOrder: decimalShape.nullable(),
        recoverable: z.boolean(),
        ...spanShape,
      }),
    )
    .nullable()
    .describe("null: not confirmed, so a foreign store is never the best offer"),
  returnDays: z.int().nullable().describe("copied into what is bought here, as the three below"),
  priceAdjustmentDays: z.int().nullable(),
  restockingPercent: decimalShape.nullable(),
  leadDays: z.int().nullable(),
  archivedOn: dayShape.nullable(),
});

/** A store as it is kept. */
export function apiStore(store: Store): z.output<typeof storeShape> {
  const { id, name, taxRegion, currency, pricesIncludeTax, archivedOn } = store;
  return {
    id,
    name,
    taxRegion,
    currency,
    tripCost: store.tripCost === null ? null : enteredMoney(store.tripCost),
    pricesIncludeTax,
    distanceKm: exactDigitsOrNull(store.distanceKm),
    discounts: store.discounts.map(({ category, percent, from, until }) => ({
      category,
      percent: exactDigits(percent),
      from,
      until,
    })),
    importCharges:
      store.importCharges?.map((charge) => ({
        name: charge.name,
        percent: exactDigits(charge.percent),
        perOrder: exactDigitsOrNull(charge.perOrder),
        recoverable: charge.recoverable,
        from: charge.from,
        until: charge.until,
      })) ?? null,
    returnDays: store.returnDays,
    priceAdjustmentDays: store.priceAdjustmentDays,
    restockingPercent: exactDigitsOrNull(store.restockingPercent),
    leadDays: store.leadDays,
    archivedOn,
  };
}
