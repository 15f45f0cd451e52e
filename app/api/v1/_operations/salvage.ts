import * as z from "zod";
import { fields } from "../../../../lib/entry-fields.ts";
import { askingPriceShape, salvageShape } from "../../../../lib/show/api-salvage.ts";
import { askingPriceEntry } from "../../../../lib/stock/asking-price-entry.ts";
import { salvageCorrection, salvageEntry } from "../../../../lib/stock/salvage-entry.ts";
import { plainBody } from "../_answers/body.ts";
import { newBody } from "../_answers/new-body.ts";
import { bare, operation } from "../_answers/operation.ts";
import { asOfQuery, pageQuery, pageShape } from "../_answers/page.ts";

export const listSalvage = operation({
  ...bare,
  method: "GET",
  path: "/salvage",
  summary: "Salvaged lots that were counted in, by id, each with what it took to get",
  query: fields({ ...pageQuery, ...asOfQuery }),
  answer: pageShape(salvageShape),
});

export const addSalvage = operation({
  ...bare,
  method: "POST",
  path: "/salvage",
  summary: "Salvage counted in: a tally or a quantity, and what it took to get; makes a lot of this id",
  body: newBody(salvageEntry),
  answer: salvageShape,
  makes: true,
});

export const readSalvage = operation({
  ...bare,
  method: "GET",
  path: "/salvage/{id}",
  summary: "A salvaged lot, by the lot's id, with what it took to get; a deleted one too",
  query: fields(asOfQuery),
  answer: salvageShape,
});

export const correctSalvage = operation({
  ...bare,
  method: "POST",
  path: "/salvage/{id}/corrections",
  summary:
    "All that was counted, anew; cost, quantity and condition of the lot follow, the earlier values stay readable",
  body: plainBody(salvageCorrection),
  answer: salvageShape,
});

export const listAskingPrices = operation({
  ...bare,
  method: "GET",
  path: "/lots/{id}/asking-prices",
  summary: "What is and was asked for one purchase unit of a lot, by day",
  answer: z.strictObject({ items: z.array(askingPriceShape) }),
});

export const addAskingPrice = operation({
  ...bare,
  method: "POST",
  path: "/lots/{id}/asking-prices",
  summary: "What is asked for one purchase unit of a lot from a day on; amount null: no longer for sale",
  body: newBody(askingPriceEntry),
  answer: askingPriceShape,
  makes: true,
});

export const undoAskingPrice = operation({
  ...bare,
  method: "DELETE",
  path: "/lots/{id}/asking-prices/{askingId}",
  summary: "Undoes an asking price: what was asked before counts again; can be restored",
  answer: askingPriceShape,
});

export const restoreAskingPrice = operation({
  ...bare,
  method: "POST",
  path: "/lots/{id}/asking-prices/{askingId}/restore",
  summary: "Brings an undone asking price back",
  answer: askingPriceShape,
});
