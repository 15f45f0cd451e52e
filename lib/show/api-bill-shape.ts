import * as z from "zod";
import { currencyShape, dayShape, decimalShape, momentShape } from "./api-fields.ts";

const eitherShape = { amount: decimalShape.nullable(), percent: decimalShape.nullable() };
export const billedFeeShape = z.strictObject({ name: z.string(), ...eitherShape, taxable: z.boolean() });
export const besideShape = z.strictObject({ name: z.string(), amount: decimalShape, tax: decimalShape });

export const billLineShape = z.strictObject({
  materialId: z.string().nullable(),
  text: z.string().nullable(),
  quantity: decimalShape,
  unit: z.string(),
  price: z.strictObject({
    amount: decimalShape,
    per: z.strictObject({ quantity: decimalShape, unit: z.string() }),
  }),
  discount: z.strictObject(eitherShape).nullable(),
  exemptFrom: z.array(z.string()),
  fees: z.array(billedFeeShape),
  returned: z
    .strictObject({
      ...eitherShape,
      taxable: z.boolean(),
      lotId: z.string().nullable().describe("the lot the goods are of"),
      ofThisBill: z.boolean().describe("they are of a lot this bill makes"),
    })
    .nullable(),
  observationId: z.string().nullable().describe("the price seen it was kept as"),
  lotId: z.string().nullable().describe("the lot it was kept as"),
  stockEventId: z.string().nullable().describe("what goods handed back left their lot with"),
  net: decimalShape.nullable(),
  tax: decimalShape.nullable(),
  cost: decimalShape.nullable().describe("what the line bears of the whole bill, all tax in it"),
});

export const reconciliationShape = z.strictObject({
  state: z.enum(["no-printed-total", "reconciled", "differs"]),
  difference: decimalShape.nullable().describe("printed less reckoned"),
  why: z
    .enum(["another-rounding", "cash-rounding", "tax-included", "tax-not-included", "not-known"])
    .nullable(),
  roundings: z.array(z.string()).describe("ways to round the taxes that come to the printed total"),
});

export const billFiguresShape = z.strictObject({
  subtotal: decimalShape,
  fees: z.array(besideShape),
  deposits: z.array(besideShape),
  taxes: z.array(z.strictObject({ name: z.string(), ratePercent: decimalShape, amount: decimalShape })),
  total: decimalShape,
  due: decimalShape.describe("the total, or its coins where it was paid in cash"),
  refundable: decimalShape,
  rebates: decimalShape,
  cost: decimalShape.describe("as written: without deposits that may come back"),
  givenBack: decimalShape.describe("of the deposits by today, tax in it"),
  forfeited: decimalShape.describe(
    "of the deposits since it was written, tax in it: cost from those days on",
  ),
  held: decimalShape.describe("of the deposits: neither given back nor forfeited yet"),
  reconciliation: reconciliationShape,
});

export const depositEventShape = z.strictObject({
  id: z.string(),
  billId: z.string(),
  deposit: z.int().describe("which of the bill's deposits, 0 for the first"),
  kind: z.enum(["given-back", "forfeited"]),
  amount: decimalShape.describe("before its tax"),
  on: dayShape,
  note: z.string().nullable(),
  undoneAt: momentShape.nullable(),
});

export const billShape = z.strictObject({
  id: z.string(),
  kind: z.string(),
  storeId: z.string(),
  on: dayShape,
  until: dayShape.nullable(),
  currency: currencyShape,
  taxRegion: z.string().nullable(),
  taxIncluded: z.boolean(),
  taxRounding: z.string(),
  shareBy: z.string(),
  paidInCash: z.boolean(),
  lines: z.array(billLineShape),
  fees: z.array(billedFeeShape),
  deposits: z.array(
    z.strictObject({ name: z.string(), amount: decimalShape, taxable: z.boolean(), forfeited: z.boolean() }),
  ),
  rebates: z.array(z.strictObject({ name: z.string(), amount: decimalShape })),
  printedTotal: decimalShape.nullable(),
  paidHome: decimalShape.nullable().describe("home currency"),
  anyQuantity: z.boolean(),
  receivedOn: dayShape.nullable(),
  storedAt: z.string().nullable(),
  note: z.string().nullable(),
  deletedAt: momentShape.nullable(),
  depositEvents: z.array(depositEventShape),
  figures: billFiguresShape.nullable().describe("null: the tax of its day and place is not known"),
});
