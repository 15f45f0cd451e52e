import { fields, id } from "../../../../lib/entry-fields.ts";
import { lotShape } from "../../../../lib/show/api-lot.ts";
import { lotEntry } from "../../../../lib/stock/lot-entry.ts";
import { oneOrManyShape } from "../_answers/many-answer.ts";
import { newOrManyBody } from "../_answers/many-body.ts";
import { bare, operation } from "../_answers/operation.ts";
import { asOfQuery, pageQuery, pageShape, yesOrNo } from "../_answers/page.ts";

export const listLots = operation({
  ...bare,
  method: "GET",
  path: "/lots",
  summary: "Lots, by id, each with where its quantity is",
  query: fields({
    ...pageQuery,
    ...asOfQuery,
    materialId: id().optional(),
    deleted: yesOrNo("the deleted ones instead"),
  }),
  answer: pageShape(lotShape),
});

export const addLots = operation({
  ...bare,
  method: "POST",
  path: "/lots",
  summary: "A lot of stock as the receipt says, or many; with observationId its price is copied",
  body: newOrManyBody(lotEntry),
  answer: oneOrManyShape(lotShape),
  makes: true,
});

const one = { ...bare, path: "/lots/{id}", answer: lotShape };

export const readLot = operation({
  ...one,
  method: "GET",
  summary: "A lot and where its quantity is on a day; a deleted one too",
  query: fields(asOfQuery),
});

export const deleteLot = operation({
  ...one,
  method: "DELETE",
  summary: "Takes a lot out of the books with everything that happened to it; can be restored",
});

export const restoreLot = operation({
  ...one,
  method: "POST",
  path: "/lots/{id}/restore",
  summary: "Brings a deleted lot back",
});
