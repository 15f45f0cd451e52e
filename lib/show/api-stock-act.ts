import * as z from "zod";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { Leftover } from "../stock/leftovers.ts";
import type { PriceFell } from "../stock/price-fell.ts";
import { STOCK_ACT_KINDS, type StockAct } from "../stock/stock-act.ts";
import {
  dayShape,
  decimalShape,
  exactDigits,
  momentShape,
  totalDigits,
  unitPriceDigits,
} from "./api-fields.ts";
import { apiStockEvent, stockEventShape } from "./api-lot.ts";

export const stockActShape = z.strictObject({
  id: z.string(),
  kind: z.enum(STOCK_ACT_KINDS),
  on: dayShape,
  reason: z.string().nullable(),
  events: z.array(stockEventShape).describe("what it made of lots"),
  undoes: z.array(z.string()).describe("ids of earlier events it took back"),
  undoneAt: momentShape.nullable(),
});

/** What was done as one. Rounds: never. */
export function apiStockAct(act: StockAct): z.output<typeof stockActShape> {
  const { id, kind, on, reason, events, undoes, undoneAt } = act;
  return { id, kind, on, reason, events: events.map(apiStockEvent), undoes: [...undoes], undoneAt };
}

export const leftoverShape = z.strictObject({
  lotId: z.string(),
  requirementId: z.string(),
  quantity: decimalShape,
});

/** What a project has set aside and not drawn of a lot. Rounds: never. */
export function apiLeftover({ lotId, requirementId, quantity }: Leftover): z.output<typeof leftoverShape> {
  return { lotId, requirementId, quantity: exactDigits(quantity) };
}

export const receiptShape = z.strictObject({
  id: z.string(),
  lotId: z.string(),
  quantity: decimalShape,
  on: dayShape,
  placeId: z.string().nullable(),
  undoneAt: momentShape.nullable(),
});

type KeptReceipt = Readonly<{
  id: string;
  lotId: string;
  quantity: Decimal;
  on: LocalDate;
  placeId: string | null;
  undoneAt: string | null;
}>;

/** What came in of a lot on a day. Rounds: never. */
export function apiReceipt(receipt: KeptReceipt): z.output<typeof receiptShape> {
  return { ...receipt, quantity: exactDigits(receipt.quantity) };
}

export const paymentShape = z.strictObject({
  id: z.string(),
  lotId: z.string(),
  amount: decimalShape.describe("in the currency of the lot's receipt"),
  on: dayShape,
  home: decimalShape.nullable().describe("what the card was charged, home currency"),
  undoneAt: momentShape.nullable(),
});

type KeptPayment = Readonly<{
  id: string;
  lotId: string;
  amount: Decimal;
  on: LocalDate;
  home: Decimal | null;
  undoneAt: string | null;
}>;

/** What was paid on a lot on a day. Rounds: never. */
export function apiPayment(payment: KeptPayment): z.output<typeof paymentShape> {
  const { amount, home } = payment;
  return { ...payment, amount: exactDigits(amount), home: home === null ? null : exactDigits(home) };
}

export const priceFellShape = z.strictObject({
  lotId: z.string(),
  materialId: z.string(),
  storeId: z.string(),
  observationId: z.string(),
  paid: decimalShape.describe("one purchase unit, all in, home currency, to 6 places for reading"),
  offered: decimalShape,
  quantity: decimalShape.describe("of what is on hand, what the offer covers"),
  money: decimalShape.describe("what asking is worth, home currency"),
  adjustUntil: dayShape.nullable().describe("last day the difference is paid back"),
  returnUntil: dayShape.nullable().describe("last day it is taken back"),
  lastDay: dayShape,
  stale: z.boolean(),
});

/** A lot whose store asks less now. Rounds: unit prices to 6 places for reading; money comes from the unrounded ones. */
export function apiPriceFell(fell: PriceFell): z.output<typeof priceFellShape> {
  const { lotId, materialId, storeId, offer, adjustUntil, returnUntil, lastDay } = fell;
  return {
    lotId,
    materialId,
    storeId,
    observationId: offer.observationId,
    paid: unitPriceDigits(fell.paid),
    offered: unitPriceDigits(fell.offered),
    quantity: exactDigits(fell.quantity),
    money: totalDigits(fell.money),
    adjustUntil,
    returnUntil,
    lastDay,
    stale: offer.stale,
  };
}
