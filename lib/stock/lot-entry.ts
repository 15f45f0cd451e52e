import type * as z from "zod";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import {
  amount,
  amountOrZero,
  choice,
  currency,
  day,
  fields,
  flag,
  id,
  inOrder,
  listOf,
  name,
  note,
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
});

const payment = fields({ amount: amount(), on: day(), home: amount().nullable().default(null) });

const absent = (value: unknown): boolean => value === null || value === undefined;

/** Zero is a price only for what was salvaged or left over (R9). */
function boughtForNothing({ origin, paid: receipt }: Readonly<Record<string, unknown>>): boolean {
  const bought = origin === "bought" || origin === "special-order";
  const said = receipt as { amount?: { isZero?: () => boolean } } | null | undefined;
  return bought && said?.amount?.isZero?.() === true;
}

const RULES: readonly Rule[] = [
  inOrder("orderedOn", "acquiredOn"),
  { path: "paid", code: "missing", broken: (lot) => absent(lot.paid) && absent(lot.observationId) },
  { path: "paid.amount", code: "free-only-for-salvage", broken: boughtForNothing },
];

/**
 * A new lot: paid for the whole quantity, or an observation whose price it copies (then paid is null).
 * acquiredOn left out: received on the day ordered; null: not received yet. payments left out: all on orderedOn.
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
    storedAt: name().nullable().default(null),
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
