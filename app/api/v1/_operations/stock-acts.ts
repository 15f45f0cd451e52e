import * as z from "zod";
import { fields, id } from "../../../../lib/entry-fields.ts";
import { costsShape } from "../../../../lib/show/api-costs.ts";
import {
  leftoverShape,
  paymentShape,
  priceFellShape,
  receiptShape,
  stockActShape,
} from "../../../../lib/show/api-stock-act.ts";
import {
  leftoversEntry,
  paymentEntry,
  receiptEntry,
  transferEntry,
  unusedEntry,
} from "../../../../lib/stock/stock-act-entry.ts";
import { newBody } from "../_answers/new-body.ts";
import { bare, operation } from "../_answers/operation.ts";
import { asOfQuery } from "../_answers/page.ts";

const act = { ...bare, method: "POST", answer: stockActShape, makes: true } as const;

export const moveBetween = operation({
  ...act,
  path: "/stock-acts/transfers",
  summary: "Moves what is set aside for one requirement to another, at its own cost, as one act",
  body: newBody(transferEntry),
});

export const returnLeftovers = operation({
  ...act,
  path: "/stock-acts/leftovers",
  summary: "The left-overs of a project back to free stock at cost, unused draws with them, as one act",
  body: newBody(leftoversEntry),
});

export const listLeftovers = operation({
  ...bare,
  method: "GET",
  path: "/stock-acts/leftovers",
  summary: "What a project has set aside and not drawn on a day",
  query: fields({ ...asOfQuery, projectId: id() }),
  answer: z.strictObject({ items: z.array(leftoverShape) }),
});

export const takeBackUnused = operation({
  ...act,
  path: "/lots/{id}/draws/{eventId}/unused",
  summary: "What a draw did not use: undrawn, and the rest drawn again the same day, as one act",
  body: newBody(unusedEntry),
});

const oneAct = { ...bare, path: "/stock-acts/{id}", answer: stockActShape };

export const readStockAct = operation({
  ...oneAct,
  method: "GET",
  summary: "What was done as one, an undone one too",
});

export const undoStockAct = operation({
  ...oneAct,
  method: "DELETE",
  summary: "Undoes an act, all of it; refused while something later needs it; can be restored",
});

export const restoreStockAct = operation({
  ...oneAct,
  method: "POST",
  path: "/stock-acts/{id}/restore",
  summary: "Brings an undone act back, all of it",
});

export const addReceipt = operation({
  ...bare,
  method: "POST",
  path: "/lots/{id}/receipts",
  summary: "Some of what was ordered has come in",
  body: newBody(receiptEntry),
  answer: receiptShape,
  makes: true,
});

const oneReceipt = { ...bare, answer: receiptShape };

export const undoReceipt = operation({
  ...oneReceipt,
  method: "DELETE",
  path: "/lots/{id}/receipts/{receiptId}",
  summary: "Undoes what came in; refused while something was taken of it; can be restored",
});

export const restoreReceipt = operation({
  ...oneReceipt,
  method: "POST",
  path: "/lots/{id}/receipts/{receiptId}/restore",
  summary: "Brings an undone receipt back",
});

export const addPayment = operation({
  ...bare,
  method: "POST",
  path: "/lots/{id}/payments",
  summary: "Money paid on a lot that was ordered with payments: a further part, or the balance",
  body: newBody(paymentEntry),
  answer: paymentShape,
  makes: true,
});

const onePayment = { ...bare, answer: paymentShape };

export const undoPayment = operation({
  ...onePayment,
  method: "DELETE",
  path: "/lots/{id}/payments/{paymentId}",
  summary: "Undoes a payment: it is owed again; can be restored",
});

export const restorePayment = operation({
  ...onePayment,
  method: "POST",
  path: "/lots/{id}/payments/{paymentId}/restore",
  summary: "Brings an undone payment back",
});

export const readCosts = operation({
  ...bare,
  method: "GET",
  path: "/materials/{id}/costs",
  summary:
    "What was issued of a material and what is left, by lot, first in first out, moving and periodic average",
  query: fields(asOfQuery),
  answer: costsShape,
});

export const listPriceFell = operation({
  ...bare,
  method: "GET",
  path: "/stock-acts/price-fell",
  summary: "Lots whose own store asks less now, while the difference is paid back or they are taken back",
  query: fields(asOfQuery),
  answer: z.strictObject({ items: z.array(priceFellShape) }),
});
