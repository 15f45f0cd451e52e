import { billEntry } from "../../../../lib/bills/bill-entry.ts";
import { depositEventEntry } from "../../../../lib/bills/deposit-event-entry.ts";
import { billShape, depositEventShape } from "../../../../lib/show/api-bill-shape.ts";
import { oneOrManyShape } from "../_answers/many-answer.ts";
import { newOrManyBody } from "../_answers/many-body.ts";
import { newBody } from "../_answers/new-body.ts";
import { bare, operation } from "../_answers/operation.ts";
import { listQuery, pageShape } from "../_answers/page.ts";

export const listBills = operation({
  ...bare,
  method: "GET",
  path: "/bills",
  summary: "Receipts and quotes, the newest day first, each with what it comes to",
  query: listQuery,
  answer: pageShape(billShape),
});

export const addBills = operation({
  ...bare,
  method: "POST",
  path: "/bills",
  summary: "A receipt or a quote, or many; its lines are kept as prices seen and as lots in the same step",
  body: newOrManyBody(billEntry),
  answer: oneOrManyShape(billShape),
  makes: true,
});

const one = { ...bare, path: "/bills/{id}", answer: billShape };

export const readBill = operation({
  ...one,
  method: "GET",
  summary: "A receipt or quote and what it comes to; an undone one too",
});

export const undoBill = operation({
  ...one,
  method: "DELETE",
  summary: "Takes a bill back with the prices and lots it made; can be restored",
});

export const restoreBill = operation({
  ...one,
  method: "POST",
  path: "/bills/{id}/restore",
  summary: "Brings an undone bill back with what was undone with it",
});

export const addDepositEvent = operation({
  ...bare,
  method: "POST",
  path: "/bills/{id}/deposit-events",
  summary: "So much of a deposit of a bill given back (cash) or forfeited (cost from that day)",
  body: newBody(depositEventEntry),
  answer: depositEventShape,
  makes: true,
});

export const undoDepositEvent = operation({
  ...bare,
  method: "DELETE",
  path: "/bills/{id}/deposit-events/{eventId}",
  summary: "Undoes what became of a deposit; can be restored",
  answer: depositEventShape,
});

export const restoreDepositEvent = operation({
  ...bare,
  method: "POST",
  path: "/bills/{id}/deposit-events/{eventId}/restore",
  summary: "Brings back what was undone, if so much is still held",
  answer: depositEventShape,
});
