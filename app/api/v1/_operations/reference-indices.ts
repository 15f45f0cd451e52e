import { fields } from "../../../../lib/entry-fields.ts";
import { referenceIndexEntry } from "../../../../lib/indices/reference-index-entry.ts";
import { indexValueShape, referenceIndexShape } from "../../../../lib/show/api-index.ts";
import { oneOrManyShape } from "../_answers/many-answer.ts";
import { newOrManyBody } from "../_answers/many-body.ts";
import { bare, operation } from "../_answers/operation.ts";
import { asOfQuery, keyedPageQuery, listQuery, pageShape } from "../_answers/page.ts";

export const listReferenceIndices = operation({
  ...bare,
  method: "GET",
  path: "/reference-indices",
  summary: "Reference indices, by id",
  query: listQuery,
  answer: pageShape(referenceIndexShape),
});

export const addReferenceIndices = operation({
  ...bare,
  method: "POST",
  path: "/reference-indices",
  summary: "A reference index without values yet, or many",
  body: newOrManyBody(referenceIndexEntry),
  answer: oneOrManyShape(referenceIndexShape),
  makes: true,
});

export const listIndexValues = operation({
  ...bare,
  method: "GET",
  path: "/reference-indices/{id}/values",
  summary: "The values of an index as they had been published by a day, by month",
  query: fields({ ...keyedPageQuery, ...asOfQuery }),
  answer: pageShape(indexValueShape),
});
