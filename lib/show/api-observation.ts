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
  momentShape,
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
  deletedAt: momentShape.nullable(),
  corrections: z.int().describe("how often it was corrected"),
});
type Kept = Observation & Readonly<{ deletedAt?: string | null; corrections?: number }>;

/** An observation exactly as seen, or as corrected since. Rounds: never. */
export function apiObservation(seen: Kept): z.output<typeof observationShape> {
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
    deletedAt: seen.deletedAt ?? null,
    corrections: seen.corrections ?? 0,
  };
}

export const correctionShape = z.strictObject({
  at: momentShape,
  actor: z.string(),
  reason: z.string(),
  earlier: observationShape.omit({ deletedAt: true, corrections: true }).describe("as it stood before"),
});
type Correction = Readonly<{ at: string; actor: string; reason: string; earlier: Observation }>;

/** What an observation said before a correction, who corrected it and why. Rounds: never. */
export function apiCorrection({ at, actor, reason, earlier }: Correction): z.output<typeof correctionShape> {
  const { deletedAt: _, corrections: __, ...shown } = apiObservation(earlier);
  return { at, actor, reason, earlier: shown };
}
