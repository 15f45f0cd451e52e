import type * as z from "zod";
import { ONE } from "../decimal.ts";
import {
  amount,
  choice,
  currency,
  day,
  fields,
  flag,
  id,
  inOrder,
  listOf,
  name,
  notAbove,
  note,
  purchaseUnit,
  quantity,
  type Rule,
  withRules,
} from "../entry-fields.ts";
import type { Fault } from "../fault.ts";
import { money } from "../money/money.ts";
import { regionCode } from "../tax/tax-region-entry.ts";
import { feeEntry } from "./fee-entry.ts";
import { type Observation, TERMS } from "./observation.ts";

/** What can be corrected later (R11); a wrong store or material is deleted and entered anew. */
const correctable = {
  seenOn: day(),
  terms: choice(TERMS),
  amount: amount().nullable(),
  currency: currency(),
  per: fields({ quantity: quantity(), unit: purchaseUnit() }),
  taxIncluded: flag(),
  taxRegion: regionCode().nullable(),
  exemptFrom: listOf(name()),
  minQuantity: quantity().nullable(),
  maxQuantity: quantity().nullable(),
  packSize: quantity().nullable(),
  from: day().nullable(),
  until: day().nullable(),
  fees: listOf(feeEntry, 20),
  note: note().nullable(),
};

const absent = (value: unknown): boolean => value === null || value === undefined;
const priced = ({ terms }: { terms?: unknown }): boolean =>
  terms !== "none-left" && typeof terms === "string";

/** Rules between the fields of a sighting, by its terms. */
const RULES: readonly Rule[] = [
  inOrder("from", "until"),
  notAbove("minQuantity", "maxQuantity"),
  { path: "until", code: "until-required", broken: (seen) => seen.terms === "quote" && absent(seen.until) },
  {
    path: "minQuantity",
    code: "missing",
    broken: (seen) => seen.terms === "quantity-break" && absent(seen.minQuantity),
  },
  { path: "amount", code: "missing", broken: (seen) => priced(seen) && absent(seen.amount) },
  { path: "currency", code: "missing", broken: (seen) => priced(seen) && absent(seen.currency) },
  { path: "per", code: "missing", broken: (seen) => priced(seen) && absent(seen.per) },
  { path: "taxIncluded", code: "missing", broken: (seen) => priced(seen) && absent(seen.taxIncluded) },
  {
    path: "amount",
    code: "amount-not-expected",
    broken: (seen) => seen.terms === "none-left" && !absent(seen.amount),
  },
];

/** An observation as first seen: the same fields as Observation, without its id. */
export const observationEntry = withRules(
  fields({
    materialId: id(),
    storeId: id(),
    ...correctable,
    amount: correctable.amount.default(null),
    currency: correctable.currency.nullable().default(null),
    per: correctable.per.nullable().default(null),
    taxIncluded: correctable.taxIncluded.nullable().default(null),
    taxRegion: correctable.taxRegion.default(null),
    exemptFrom: correctable.exemptFrom.default([]),
    minQuantity: correctable.minQuantity.default(null),
    maxQuantity: correctable.maxQuantity.default(null),
    packSize: correctable.packSize.default(null),
    from: correctable.from.default(null),
    until: correctable.until.default(null),
    fees: correctable.fees.default([]),
    note: correctable.note.default(null),
  }),
  RULES,
).transform(
  ({ amount: seen, currency: code, per, taxIncluded, ...entry }): Omit<Observation, "id"> => ({
    ...entry,
    amount: seen === null || code === null ? null : money(seen, code),
    // "None left" has no price: what one would have bought does not matter.
    per: per ?? { quantity: ONE, unit: "each" },
    taxIncluded: taxIncluded ?? false,
  }),
);
export type ObservationEntry = z.output<typeof observationEntry>;

/** Corrected fields of an observation and why. amount without currency: the currency seen stays. */
export const observationCorrection = fields({
  ...fields(correctable).partial().shape,
  reason: note(),
});
export type ObservationCorrection = z.output<typeof observationCorrection>;

/**
 * An observation with a correction applied; every fault between its fields, as in observationEntry.
 * Source: rule R11, "a corrected fact counts corrected on every day".
 */
export function corrected(
  seen: Observation,
  { reason: _, amount: newAmount, currency: newCurrency, ...changes }: ObservationCorrection,
): { ok: true; value: Observation } | { ok: false; faults: Fault[] } {
  const value = newAmount === undefined ? (seen.amount?.amount ?? null) : newAmount;
  const code = newCurrency ?? seen.amount?.currency ?? null;
  const whole = { ...seen, ...changes };
  const faults = RULES.filter((rule) => rule.broken({ ...whole, amount: value, currency: code }));
  if (faults.length > 0)
    return { ok: false, faults: faults.map((rule) => ({ path: rule.path, code: rule.code })) };
  return {
    ok: true,
    value: { ...whole, amount: value === null || code === null ? null : money(value, code) },
  };
}
