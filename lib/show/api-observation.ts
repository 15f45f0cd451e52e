import * as z from "zod";
import type { CurrencyCode } from "../money/currencies.ts";
import type { Fee, Observation } from "../prices/observation.ts";
import {
  currencyShape,
  dayShape,
  decimalShape,
  enteredDigits,
  exactDigits,
  exactDigitsOrNull,
  spanShape,
} from "./api-fields.ts";

export const feeShape = z.strictObject({
  name: z.string(),
  amount: decimalShape.nullable(),
  percent: decimalShape.nullable(),
  basis: z.enum(["unit", "order"]),
  freeFrom: decimalShape.nullable(),
  taxable: z.boolean(),
});

/** A fee as entered; its amounts are in `currency`. */
export function apiFee(fee: Fee, currency: CurrencyCode): z.output<typeof feeShape> {
  const text = (value: Fee["amount"]) => (value === null ? null : enteredDigits(value, currency));
  return {
    name: fee.name,
    amount: text(fee.amount),
    percent: exactDigitsOrNull(fee.percent),
    basis: fee.basis,
    freeFrom: text(fee.freeFrom),
    taxable: fee.taxable,
  };
}

export const observationShape = z.strictObject({
  id: z.string(),
  materialId: z.string(),
  storeId: z.string(),
  seenOn: dayShape,
  terms: z.string(),
  amount: decimalShape.nullable(),
  currency: currencyShape.nullable(),
  per: z.strictObject({ quantity: decimalShape, unit: z.string() }),
  taxIncluded: z.boolean(),
  taxRegion: z.string().nullable(),
  exemptFrom: z.array(z.string()),
  minQuantity: decimalShape.nullable(),
  maxQuantity: decimalShape.nullable(),
  packSize: decimalShape.nullable(),
  ...spanShape,
  fees: z.array(feeShape),
  note: z.string().nullable(),
});

/** An observation exactly as seen, or as corrected since. Rounds: never. */
export function apiObservation(seen: Observation): z.output<typeof observationShape> {
  const { id, materialId, storeId, seenOn, terms, amount, per, taxIncluded, taxRegion, from, until, note } =
    seen;
  return {
    id,
    materialId,
    storeId,
    seenOn,
    terms,
    amount: amount === null ? null : enteredDigits(amount.amount, amount.currency),
    currency: amount?.currency ?? null,
    per: { quantity: exactDigits(per.quantity), unit: per.unit },
    taxIncluded,
    taxRegion,
    exemptFrom: [...seen.exemptFrom],
    minQuantity: exactDigitsOrNull(seen.minQuantity),
    maxQuantity: exactDigitsOrNull(seen.maxQuantity),
    packSize: exactDigitsOrNull(seen.packSize),
    from,
    until,
    fees: amount === null ? [] : seen.fees.map((fee) => apiFee(fee, amount.currency)),
    note,
  };
}
