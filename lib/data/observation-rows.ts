import "server-only";
import type { PurchaseUnit } from "../measure/units.ts";
import type { Fee, Observation, Terms } from "../prices/observation.ts";
import {
  type Columns,
  dateOf,
  dateOrNull,
  dayOrNull,
  decimalOrNull,
  digits,
  digitsOrNull,
  moneyOrNull,
  storedDay,
  storedDecimal,
} from "./rows.ts";

/** A fee as it is stored: amounts as text. */
export type StoredFee = Readonly<{
  name: string;
  amount: string | null;
  percent: string | null;
  basis: Fee["basis"];
  freeFrom: string | null;
  taxable: boolean;
}>;

export type ObservationRow = Readonly<{
  id: string;
  material_id: string;
  store_id: string;
  seen_on: string;
  terms: Terms;
  amount: string | null;
  currency: string | null;
  per_quantity: string;
  per_unit: PurchaseUnit;
  tax_included: boolean;
  tax_region: string | null;
  exempt_from: readonly string[];
  min_quantity: string | null;
  max_quantity: string | null;
  pack_size: string | null;
  from_day: string | null;
  until_day: string | null;
  fees: readonly StoredFee[];
  note: string | null;
}>;

/** The columns of an ObservationRow, of a table called o. */
export const OBSERVATION: Columns<ObservationRow> = {
  id: "o.id",
  material_id: "o.material_id",
  store_id: "o.store_id",
  seen_on: "o.seen_on",
  terms: "o.terms",
  amount: "o.amount::text",
  currency: "o.currency",
  per_quantity: "o.per_quantity::text",
  per_unit: "o.per_unit",
  tax_included: "o.tax_included",
  tax_region: "o.tax_region",
  exempt_from: "o.exempt_from",
  min_quantity: "o.min_quantity::text",
  max_quantity: "o.max_quantity::text",
  pack_size: "o.pack_size::text",
  from_day: "o.from_day",
  until_day: "o.until_day",
  fees: "o.fees",
  note: "o.note",
};

/** A stored fee as our value. */
export function feeOfStored(fee: StoredFee): Fee {
  return {
    ...fee,
    amount: decimalOrNull(fee.amount),
    percent: decimalOrNull(fee.percent),
    freeFrom: decimalOrNull(fee.freeFrom),
  };
}

/** A fee as the column keeps it: amounts as decimal text. */
export function storedFee({ name, amount, percent, basis, freeFrom, taxable }: Fee): StoredFee {
  return {
    name,
    amount: digitsOrNull(amount),
    percent: digitsOrNull(percent),
    basis,
    freeFrom: digitsOrNull(freeFrom),
    taxable,
  };
}

/** A row of the table as our value, every figure exactly as seen. */
export function observationOfRow(row: ObservationRow): Observation {
  return {
    id: row.id,
    materialId: row.material_id,
    storeId: row.store_id,
    seenOn: storedDay(row.seen_on),
    terms: row.terms,
    amount: moneyOrNull(row.amount, row.currency),
    per: { quantity: storedDecimal(row.per_quantity), unit: row.per_unit },
    taxIncluded: row.tax_included,
    taxRegion: row.tax_region,
    exemptFrom: row.exempt_from,
    minQuantity: decimalOrNull(row.min_quantity),
    maxQuantity: decimalOrNull(row.max_quantity),
    packSize: decimalOrNull(row.pack_size),
    from: dayOrNull(row.from_day),
    until: dayOrNull(row.until_day),
    fees: row.fees.map(feeOfStored),
    note: row.note,
  };
}

/** The columns of an observation that can be corrected, for Prisma. */
export function correctableColumns(seen: Observation) {
  return {
    seenOn: dateOf(seen.seenOn),
    terms: seen.terms,
    amount: digitsOrNull(seen.amount?.amount ?? null),
    currency: seen.amount?.currency ?? null,
    perQuantity: digits(seen.per.quantity),
    perUnit: seen.per.unit,
    taxIncluded: seen.taxIncluded,
    taxRegion: seen.taxRegion,
    exemptFrom: [...seen.exemptFrom],
    minQuantity: digitsOrNull(seen.minQuantity),
    maxQuantity: digitsOrNull(seen.maxQuantity),
    packSize: digitsOrNull(seen.packSize),
    fromDay: dateOrNull(seen.from),
    untilDay: dateOrNull(seen.until),
    fees: seen.fees.map(storedFee),
    note: seen.note,
  };
}
