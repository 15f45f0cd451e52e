import * as z from "zod";
import {
  amount,
  amountIn,
  choice,
  currency,
  day,
  days,
  fields,
  flag,
  inOrder,
  listOf,
  name,
  percent,
  quantityOrZero,
  withRules,
} from "../entry-fields.ts";
import { CATEGORIES } from "../materials/material.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import { money } from "../money/money.ts";
import { regionCode } from "../tax/tax-region-entry.ts";

const dated = { from: day().nullable().default(null), until: day().nullable().default(null) };

const discount = withRules(
  fields({ category: choice(CATEGORIES).nullable().default(null), percent: percent(), ...dated }),
  [inOrder("from", "until")],
);

const importCharge = withRules(
  fields({
    name: name(),
    percent: percent(1000),
    perOrder: amount().nullable().default(null),
    recoverable: flag().default(false),
    ...dated,
  }),
  [inOrder("from", "until")],
);

const shape = {
  name: name(),
  taxRegion: regionCode(),
  currency: currency(),
  tripCost: amountIn().nullable(),
  pricesIncludeTax: flag(),
  distanceKm: quantityOrZero().nullable(),
  discounts: listOf(discount),
  importCharges: listOf(importCharge).nullable(),
  returnDays: days().nullable(),
  priceAdjustmentDays: days().nullable(),
  restockingPercent: percent().nullable(),
  leadDays: days().nullable(),
};
type TripCost = z.output<typeof shape.tripCost>;

function tripCostIn(given: TripCost, own: CurrencyCode) {
  return given === null ? null : money(given.amount, given.currency ?? own);
}

/** A new store. A tripCost without a currency is in the store's own; importCharges null: not confirmed yet (R3). */
export const storeEntry = fields({
  ...shape,
  tripCost: shape.tripCost.default(null),
  pricesIncludeTax: shape.pricesIncludeTax.default(false),
  distanceKm: shape.distanceKm.default(null),
  discounts: shape.discounts.default([]),
  importCharges: shape.importCharges.default(null),
  returnDays: shape.returnDays.default(null),
  priceAdjustmentDays: shape.priceAdjustmentDays.default(null),
  restockingPercent: shape.restockingPercent.default(null),
  leadDays: shape.leadDays.default(null),
}).transform((entry) => ({ ...entry, tripCost: tripCostIn(entry.tripCost, entry.currency) }));
export type StoreEntry = z.output<typeof storeEntry>;

/** Changed fields of a store. A tripCost must name its currency unless the store's currency is in the same change. */
export const storePatch = fields(shape)
  .partial()
  .transform(({ tripCost, ...patch }, context): Partial<StoreEntry> => {
    if (tripCost === undefined) return patch;
    const own = tripCost?.currency ?? patch.currency;
    if (tripCost === null) return { ...patch, tripCost: null };
    if (own !== undefined) return { ...patch, tripCost: tripCostIn(tripCost, own) };
    context.issues.push({
      code: "custom",
      message: "missing",
      path: ["tripCost", "currency"],
      input: tripCost,
    });
    return z.NEVER;
  });
export type StorePatch = z.output<typeof storePatch>;
