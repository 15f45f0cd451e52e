import type * as z from "zod";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import {
  amount,
  amountOrZero,
  choice,
  currency,
  day,
  days,
  fields,
  flag,
  id,
  inOrder,
  listOf,
  name,
  note,
  percent,
  quantity,
  type Rule,
  share,
  withRules,
} from "../entry-fields.ts";
import { feeEntry } from "../prices/fee-entry.ts";
import { TERMS } from "../prices/observation.ts";
import { regionCode } from "../tax/tax-region-entry.ts";
import { LOT_ORIGINS, type Payment, type Receipt } from "./lot.ts";

const paid = fields({
  amount: amountOrZero(),
  currency: currency(),
  taxIncluded: flag(),
  taxRegion: regionCode().nullable().default(null),
  exemptFrom: listOf(name()).default([]),
  fees: listOf(feeEntry, 20).default([]),
  taxes: listOf(fields({ name: name(), amount: amountOrZero() }), 20)
    .nullable()
    .default(null),
});

/** Nothing paid yet is a payment of 0 on the day ordered. */
const payment = fields({ amount: amountOrZero(), on: day(), home: amount().nullable().default(null) });

const absent = (value: unknown): boolean => value === null || value === undefined;

/** Zero is a price for what was salvaged or left over, and for a gift, which says so (R9). */
function boughtForNothing({ origin, paid: receipt, givenFree }: Readonly<Record<string, unknown>>): boolean {
  if (!absent(givenFree)) return false;
  const bought = origin === "bought" || origin === "special-order";
  const said = receipt as { amount?: { isZero?: () => boolean } } | null | undefined;
  return bought && said?.amount?.isZero?.() === true;
}

const RULES: readonly Rule[] = [
  inOrder("orderedOn", "acquiredOn"),
  inOrder("orderedOn", "expectedOn"),
  inOrder("orderedOn", "returnableUntil"),
  inOrder("orderedOn", "adjustableUntil"),
  { path: "paid", code: "missing", broken: (lot) => absent(lot.paid) && absent(lot.observationId) },
  { path: "paid.amount", code: "free-asked", broken: boughtForNothing },
];

/**
 * A new lot: paid for the whole quantity, or an observation whose price it copies (then paid is null).
 * acquiredOn left out: received on the day ordered; null: not received yet. payments left out: all on orderedOn.
 * placeId or storedAt (a place's name, found or made): where it is put. What is agreed beside the price (`Agreed`), where
 * left out, is copied from the store. givenFree: why nothing was paid for what was bought; otherCurrency: why it was paid in
 * another currency than the store's.
 */
export const lotEntry = withRules(
  fields({
    materialId: id(),
    origin: choice(LOT_ORIGINS),
    storeId: id().nullable().default(null),
    terms: choice(TERMS).nullable().default(null),
    observationId: id().nullable().default(null),
    quantity: quantity(),
    paid: paid.nullable().default(null),
    paidHome: amount().nullable().default(null),
    orderedOn: day(),
    acquiredOn: day().nullable().optional(),
    payments: listOf(payment).default([]),
    condition: share().prefault("1"),
    placeId: id().nullable().optional(),
    storedAt: name().nullable().default(null),
    expectedOn: day().nullable().optional(),
    leadDays: days().nullable().optional(),
    returnableUntil: day().nullable().optional(),
    adjustableUntil: day().nullable().optional(),
    restockingPercent: percent().nullable().optional(),
    givenFree: note().nullable().optional(),
    otherCurrency: note().nullable().optional(),
    note: note().nullable().default(null),
  }),
  RULES,
).transform(({ acquiredOn, ...lot }) => {
  const on: LocalDate | null = acquiredOn === undefined ? lot.orderedOn : acquiredOn;
  const receipts: readonly Receipt[] = on === null ? [] : [{ quantity: lot.quantity, on }];
  const payments: readonly Payment[] = lot.payments;
  const home: Decimal | null = lot.paidHome;
  return { ...lot, payments, paidHome: home, receipts };
});
export type LotEntry = z.output<typeof lotEntry>;
