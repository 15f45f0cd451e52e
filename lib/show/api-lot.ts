import * as z from "zod";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { Lot, StockEvent } from "../stock/lot.ts";
import { lotState } from "../stock/lot-state.ts";
import { lyingOn } from "../stock/lying.ts";
import {
  currencyShape,
  dayShape,
  decimalShape,
  enteredDigits,
  exactDigits,
  exactDigitsOrNull,
  momentShape,
} from "./api-fields.ts";
import { apiFee, feeShape } from "./api-observation.ts";

const heldFor = z.array(z.strictObject({ requirementId: z.string(), quantity: decimalShape }));

const stateShape = z.strictObject({
  free: decimalShape,
  allocated: heldFor,
  drawn: heldFor,
  drawnForNone: decimalShape,
  returned: decimalShape,
  sold: decimalShape,
  writtenOff: decimalShape,
  found: decimalShape,
  missing: decimalShape,
  onOrder: decimalShape,
});

export const lotShape = z.strictObject({
  id: z.string(),
  materialId: z.string(),
  origin: z.string(),
  storeId: z.string().nullable(),
  terms: z.string().nullable(),
  observationId: z.string().nullable(),
  quantity: decimalShape,
  paid: z.strictObject({
    amount: decimalShape,
    currency: currencyShape,
    taxIncluded: z.boolean(),
    taxRegion: z.string().nullable(),
    exemptFrom: z.array(z.string()),
    fees: z.array(feeShape),
    taxes: z
      .array(z.strictObject({ name: z.string(), amount: decimalShape }))
      .nullable()
      .describe("as the receipt shows them, of amount and fees; null: reckoned by the rates"),
  }),
  paidHome: decimalShape.nullable().describe("home currency"),
  orderedOn: dayShape,
  acquiredOn: dayShape.nullable().describe("the first day any of it was received"),
  receipts: z.array(
    z.strictObject({
      id: z.string().nullable(),
      quantity: decimalShape,
      on: dayShape,
      placeId: z.string().nullable(),
    }),
  ),
  payments: z.array(
    z.strictObject({
      id: z.string().nullable(),
      amount: decimalShape,
      on: dayShape,
      home: decimalShape.nullable(),
    }),
  ),
  condition: decimalShape,
  placeId: z.string().nullable().describe("where what comes in is put"),
  storedAt: z.string().nullable().describe("that place's name"),
  expectedOn: dayShape.nullable(),
  leadDays: z.int().nullable(),
  returnableUntil: dayShape.nullable(),
  adjustableUntil: dayShape.nullable(),
  restockingPercent: decimalShape.nullable(),
  givenFree: z.string().nullable(),
  otherCurrency: z.string().nullable(),
  note: z.string().nullable(),
  deletedAt: momentShape.nullable(),
  state: stateShape.describe("where its quantity is on the day asked for"),
  lying: z
    .array(z.strictObject({ placeId: z.string().nullable(), quantity: decimalShape }))
    .describe("in which places what is on hand lies on that day; placeId null: on site, not stored"),
});
type KeptLot = Lot & Readonly<{ deletedAt?: string | null }>;

function apiState(lot: Lot, events: readonly StockEvent[], day: LocalDate): z.output<typeof stateShape> {
  const state = lotState(lot, events, day);
  const byRequirement = (held: ReadonlyMap<string, Decimal>) =>
    [...held].map(([requirementId, quantity]) => ({ requirementId, quantity: exactDigits(quantity) }));
  return {
    free: exactDigits(state.free),
    allocated: byRequirement(state.allocated),
    drawn: byRequirement(state.drawn),
    drawnForNone: exactDigits(state.drawnForNone),
    returned: exactDigits(state.returned),
    sold: exactDigits(state.sold),
    writtenOff: exactDigits(state.writtenOff),
    found: exactDigits(state.found),
    missing: exactDigits(state.missing),
    onOrder: exactDigits(state.onOrder),
  };
}

/** A lot as it is kept, and where its quantity is on a day. Rounds: never. */
export function apiLot(
  lot: KeptLot,
  events: readonly StockEvent[],
  day: LocalDate,
): z.output<typeof lotShape> {
  const { id, materialId, origin, storeId, terms, observationId, paid, orderedOn, storedAt, note } = lot;
  const paidText = (amount: Decimal) => enteredDigits(amount, paid.currency);
  return {
    id,
    materialId,
    origin,
    storeId,
    terms,
    observationId,
    quantity: exactDigits(lot.quantity),
    paid: {
      amount: paidText(paid.amount),
      currency: paid.currency,
      taxIncluded: paid.taxIncluded,
      taxRegion: paid.taxRegion,
      exemptFrom: [...paid.exemptFrom],
      fees: paid.fees.map((fee) => apiFee(fee, paid.currency)),
      taxes: paid.taxes?.map(({ name, amount }) => ({ name, amount: paidText(amount) })) ?? null,
    },
    paidHome: lot.paidHome === null ? null : enteredDigits(lot.paidHome.amount, lot.paidHome.currency),
    orderedOn,
    acquiredOn: lot.receipts.map((receipt) => receipt.on).sort()[0] ?? null,
    receipts: lot.receipts.map((receipt) => ({
      id: receipt.id ?? null,
      quantity: exactDigits(receipt.quantity),
      on: receipt.on,
      placeId: receipt.placeId ?? null,
    })),
    payments: lot.payments.map(({ id: paymentId, amount, on, home }) => ({
      id: paymentId ?? null,
      amount: paidText(amount),
      on,
      home: home === null ? null : exactDigits(home),
    })),
    condition: exactDigits(lot.condition),
    placeId: lot.placeId,
    storedAt,
    ...lot.agreed,
    restockingPercent: exactDigitsOrNull(lot.agreed.restockingPercent),
    givenFree: lot.givenFree,
    otherCurrency: lot.otherCurrency,
    note,
    deletedAt: lot.deletedAt ?? null,
    state: apiState(lot, events, day),
    lying: lyingOn(lot, events, day).map(({ placeId, quantity }) => ({
      placeId,
      quantity: exactDigits(quantity),
    })),
  };
}

export const stockEventShape = z.strictObject({
  id: z.string(),
  lotId: z.string(),
  kind: z.string(),
  quantity: decimalShape,
  on: dayShape,
  requirementId: z.string().nullable(),
  amount: decimalShape.nullable(),
  currency: currencyShape.nullable(),
  reason: z.string().nullable(),
  placeId: z.string().nullable(),
  fromPlaceId: z.string().nullable(),
  actId: z.string().nullable().describe("what it was done with, and is undone with"),
  undoneAt: momentShape.nullable(),
});
type KeptEvent = StockEvent & Readonly<{ undoneAt?: string | null }>;

/** One thing that happened to a lot. Rounds: never. */
export function apiStockEvent(event: KeptEvent): z.output<typeof stockEventShape> {
  const { id, lotId, kind, quantity, on, requirementId, amount, reason } = event;
  return {
    id,
    lotId,
    kind,
    quantity: exactDigits(quantity),
    on,
    requirementId,
    amount: amount === null ? null : enteredDigits(amount.amount, amount.currency),
    currency: amount?.currency ?? null,
    reason,
    placeId: event.placeId,
    fromPlaceId: event.fromPlaceId,
    actId: event.actId ?? null,
    undoneAt: event.undoneAt ?? null,
  };
}
