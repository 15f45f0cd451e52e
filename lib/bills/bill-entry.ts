import type { LocalDate } from "../calendar/local-date.ts";
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
  percent,
  purchaseUnit,
  quantity,
  type Rule,
  withRules,
} from "../entry-fields.ts";
import { regionCode } from "../tax/tax-region-entry.ts";
import { BILL_KINDS, type Bill, SHARE_BASES, TAX_ROUNDINGS } from "./bill.ts";

const absent = (value: unknown): boolean => value === null || value === undefined;

/** Whether goods handed back are said to be of a lot. */
function isOfLot(returned: unknown): boolean {
  const of = (returned ?? {}) as { lotId?: unknown; ofThisBill?: unknown };
  return !absent(of.lotId) || of.ofThisBill === true;
}

/** An amount or a percent, one of the two. */
const ONE_OF_BOTH: readonly Rule[] = [
  { path: "amount", code: "missing", broken: (one) => absent(one.amount) && absent(one.percent) },
  {
    path: "amount",
    code: "amount-not-expected",
    broken: (one) => !absent(one.amount) && !absent(one.percent),
  },
];

const amountOrPercent = {
  amount: amountOrZero().nullable().default(null),
  percent: percent().nullable().default(null),
};

const billedFee = withRules(fields({ name: name(), ...amountOrPercent, taxable: flag() }), ONE_OF_BOTH);
const discount = withRules(fields(amountOrPercent), ONE_OF_BOTH);
const handedBack = withRules(
  fields({
    ...amountOrPercent,
    taxable: flag().default(true),
    lotId: id().nullable().default(null),
    ofThisBill: flag().default(false),
  }),
  [
    ...ONE_OF_BOTH,
    { path: "lotId", code: "unknown-choice", broken: (one) => one.ofThisBill === true && !absent(one.lotId) },
  ],
);

const line = withRules(
  fields({
    materialId: id().nullable().default(null),
    text: name().nullable().default(null),
    quantity: quantity(),
    unit: purchaseUnit(),
    price: fields({
      amount: amount(),
      per: fields({
        quantity: quantity().prefault("1"),
        unit: purchaseUnit().nullable().default(null),
      }).prefault({}),
    }),
    discount: discount.nullable().default(null),
    exemptFrom: listOf(name(), 20).default([]),
    fees: listOf(billedFee, 20).default([]),
    returned: handedBack.nullable().default(null),
    keepPrice: flag().default(true),
    keepLot: flag().nullable().default(null),
  }),
  [
    { path: "materialId", code: "missing", broken: (one) => absent(one.materialId) && absent(one.text) },
    { path: "materialId", code: "missing", broken: (one) => absent(one.materialId) && isOfLot(one.returned) },
  ],
);

const RULES: readonly Rule[] = [
  inOrder("on", "until"),
  inOrder("on", "receivedOn"),
  { path: "until", code: "until-required", broken: (bill) => bill.kind === "quote" && absent(bill.until) },
  {
    path: "lines",
    code: "missing",
    broken: (bill) => Array.isArray(bill.lines) && bill.lines.length === 0,
  },
];

/**
 * A receipt or a quote. A line names a material or says in words what it is; its price is for one of its unit unless `per`
 * says otherwise ("3 for 20"). A line handed back may say of which lot: it then leaves that lot. receivedOn left out: received on its day; null: not received yet. taxRounding left out: as
 * the store's last bill, else per bill, each component by itself. keepLot left out: a receipt's materials become stock.
 */
export const billEntry = withRules(
  fields({
    kind: choice(BILL_KINDS).prefault("receipt"),
    storeId: id(),
    on: day(),
    until: day().nullable().default(null),
    currency: currency(),
    taxRegion: regionCode().nullable().default(null),
    taxIncluded: flag().default(false),
    taxRounding: choice(TAX_ROUNDINGS).nullable().default(null),
    shareBy: choice(SHARE_BASES).prefault("value"),
    paidInCash: flag().default(false),
    lines: listOf(line, 200),
    fees: listOf(billedFee, 20).default([]),
    deposits: listOf(
      fields({
        name: name(),
        amount: amount(),
        taxable: flag().default(false),
        forfeited: flag().default(false),
      }),
      20,
    ).default([]),
    rebates: listOf(fields({ name: name(), amount: amount() }), 20).default([]),
    printedTotal: amountOrZero().nullable().default(null),
    paidHome: amount().nullable().default(null),
    anyQuantity: flag().default(false),
    receivedOn: day().nullable().optional(),
    storedAt: name().nullable().default(null),
    note: note().nullable().default(null),
  }),
  RULES,
).transform(({ receivedOn, lines, ...bill }) => {
  const on: LocalDate | null = receivedOn === undefined ? bill.on : receivedOn;
  return {
    ...bill,
    receivedOn: on,
    lines: lines.map((one) => ({
      ...one,
      price: { amount: one.price.amount, per: { ...one.price.per, unit: one.price.per.unit ?? one.unit } },
      keepPrice: one.keepPrice && one.materialId !== null && one.returned === null,
      keepLot: (one.keepLot ?? bill.kind === "receipt") && one.materialId !== null && one.returned === null,
    })),
  };
});

/** taxRounding null: the store's last bill says, or nothing does. */
export type BillEntry = Omit<Bill, "taxRounding"> & Readonly<{ taxRounding: Bill["taxRounding"] | null }>;
