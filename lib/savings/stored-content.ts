import * as z from "zod";
import { isLocalDate } from "../calendar/local-date.ts";
import { Decimal, decimal } from "../decimal.ts";
import { PURCHASE_UNITS } from "../measure/units.ts";
import { isCurrencyCode } from "../money/currencies.ts";
import { TERMS } from "../prices/observation.ts";
import { LOT_ORIGINS } from "../stock/lot.ts";
import type { ReportContent } from "./report-content.ts";
import { SAVING_KINDS } from "./savings-figures.ts";

const day = z.string().refine(isLocalDate);
const id = z.string();
const digits = z
  .string()
  .regex(/^-?\d+(\.\d+)?$/)
  .transform((text) => decimal(text));
const currency = z.string().refine(isCurrencyCode);
const amount = z.strictObject({ amount: digits, currency });
const count = z.int().nonnegative();

const row = z.strictObject({
  lotId: id,
  eventId: id.nullable(),
  materialId: id,
  requirementId: id.nullable(),
  projectId: id.nullable(),
  kind: z.enum(SAVING_KINDS),
  state: z.enum(["realised", "unrealised", "not-known"]),
  quantity: digits,
  acquiredOn: day,
  on: day.nullable(),
  paid: amount.nullable(),
  goingAtAcquisition: amount.nullable(),
  goingAtDraw: amount.nullable(),
  interpolated: z.boolean(),
  received: amount.nullable(),
  discount: amount.nullable(),
  timing: amount.nullable(),
  carrying: amount.nullable(),
  saving: amount.nullable(),
  strictSaving: amount.nullable(),
  source: z.enum([...LOT_ORIGINS, ...TERMS, "choice-of-store"]),
  missing: z.boolean(),
  beforeCarrying: z.boolean(),
});
const source = z.strictObject({
  observationId: id,
  materialId: id,
  storeId: id,
  seenOn: day,
  amount: amount.nullable(),
  per: z.strictObject({ quantity: digits, unit: z.enum(PURCHASE_UNITS) }),
  taxIncluded: z.boolean(),
  rows: count,
});
const lot = z.strictObject({
  id,
  materialId: id,
  origin: z.enum(LOT_ORIGINS),
  storeId: id.nullable(),
  orderedOn: day,
  quantity: digits,
  paid: amount,
  taxIncluded: z.boolean(),
});
const book = z.strictObject({ issued: amount, left: amount });
const books = z.strictObject({
  materialId: id,
  issued: digits,
  left: digits,
  byLot: book.nullable(),
  fifo: book.nullable(),
  average: book.nullable(),
});
const asked = z.strictObject({
  from: day.nullable(),
  until: day.nullable(),
  projectId: id.nullable(),
  materialId: id.nullable(),
  currency: currency.nullable(),
  day,
});
const content = z.strictObject({
  asked,
  homeCurrency: currency,
  currency,
  rate: z.strictObject({ rate: digits, on: day, source: z.string() }).nullable(),
  noRateFor: currency.nullable(),
  rows: z.array(row),
  marks: z.array(z.strictObject({ on: day, unrealised: amount, notKnown: count })),
  sources: z.array(source),
  lots: z.array(lot),
  moneyRates: z.array(z.strictObject({ percent: digits, from: day.nullable() })),
  books: z.array(books),
  names: z.record(id, z.string()),
  units: z.record(id, z.enum(PURCHASE_UNITS)),
});

/** A report as plain JSON values: every Decimal as text with all its digits. Rounds: never. */
export function storedContent(report: ReportContent): unknown {
  const plain = (value: unknown): unknown => {
    if (value instanceof Decimal) return value.toFixed();
    if (Array.isArray(value)) return value.map(plain);
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, plain(inner)]));
  };
  return plain(report);
}

/** What `storedContent` made, read again, digit for digit. @throws {z.ZodError} when it is something else. */
export function contentOfStored(stored: unknown): ReportContent {
  return content.parse(stored);
}

/** A stored question. @throws {z.ZodError} when it is something else. */
export function askedOfStored(stored: unknown): ReportContent["asked"] {
  return asked.parse(stored);
}
