import type * as z from "zod";
import {
  amount,
  choice,
  currency,
  day,
  fields,
  id,
  inOrder,
  listOf,
  note,
  quantity,
  quantityOrZero,
  withRules,
} from "../entry-fields.ts";
import { SPACE_MEASURES } from "./place.ts";

const reason = note().nullable().default(null);

/** From one requirement to another at its own cost. lotId null: from the lots set aside for it, the oldest first. */
export const transferEntry = withRules(
  fields({
    fromRequirementId: id(),
    toRequirementId: id(),
    lotId: id().nullable().default(null),
    quantity: quantity(),
    on: day(),
    reason,
  }),
  [
    {
      path: "toRequirementId",
      code: "same-requirement",
      broken: ({ fromRequirementId: from, toRequirementId: to }) => typeof from === "string" && from === to,
    },
  ],
);
export type TransferEntry = z.output<typeof transferEntry>;

/** What was counted of each lot in one place at the end of a day; a lot left out was not counted. */
export const placeCountEntry = fields({
  on: day(),
  counts: listOf(fields({ lotId: id(), quantity: quantityOrZero() }), 500),
  reason,
});
export type PlaceCountEntry = z.output<typeof placeCountEntry>;

/** What a place cost from a day until a day, both counted, shared over what lay there by the room it took and how long. */
export const placeMoneyEntry = withRules(
  fields({
    amount: amount(),
    currency: currency(),
    from: day(),
    until: day(),
    shareBy: choice(SPACE_MEASURES).prefault("volume"),
    reason,
  }),
  [inOrder("from", "until")],
);
export type PlaceMoneyEntry = z.output<typeof placeMoneyEntry>;

/** So much of a draw came back from the site unused. */
export const unusedEntry = fields({ quantity: quantity(), reason });
export type UnusedEntry = z.output<typeof unusedEntry>;

/** What is over at the end of a project; unused: what of its draws came back from the site. */
export const leftoversEntry = fields({
  projectId: id(),
  on: day(),
  unused: listOf(fields({ eventId: id(), quantity: quantity() }), 500).default([]),
  reason,
});
export type LeftoversEntry = z.output<typeof leftoversEntry>;

/** Some of what was ordered has come in. placeId: where it is put, if not where the lot was said to go. */
export const receiptEntry = fields({
  quantity: quantity(),
  on: day(),
  placeId: id().nullable().default(null),
});
export type ReceiptEntry = z.output<typeof receiptEntry>;

/** Money paid on a lot, in the currency of its receipt; home: what the card was charged. */
export const paymentEntry = fields({ amount: amount(), on: day(), home: amount().nullable().default(null) });
export type PaymentEntry = z.output<typeof paymentEntry>;
