import * as z from "zod";
import { fields, id } from "../../../../lib/entry-fields.ts";
import { observationCorrection, observationEntry } from "../../../../lib/prices/observation-entry.ts";
import { correctionShape, observationShape } from "../../../../lib/show/api-observation.ts";
import { plainBody } from "../_answers/body.ts";
import { oneOrManyShape } from "../_answers/many-answer.ts";
import { newOrManyBody } from "../_answers/many-body.ts";
import { bare, operation } from "../_answers/operation.ts";
import { pageQuery, pageShape, yesOrNo } from "../_answers/page.ts";

const MOST = 20_000;

export const listObservations = operation({
  ...bare,
  method: "GET",
  path: "/observations",
  summary: "Prices seen of a material, the newest first",
  query: fields({ ...pageQuery, materialId: id(), deleted: yesOrNo("deleted ones too") }),
  answer: pageShape(observationShape),
});

export const addObservations = operation({
  ...bare,
  method: "POST",
  path: "/observations",
  summary: "A price as seen, or many",
  body: newOrManyBody(observationEntry, MOST),
  answer: oneOrManyShape(observationShape),
  makes: true,
});

const one = { ...bare, path: "/observations/{id}", answer: observationShape };

export const readObservation = operation({
  ...one,
  method: "GET",
  summary: "A price seen, as corrected since; a deleted one too",
});

export const deleteObservation = operation({
  ...one,
  method: "DELETE",
  summary: "Deletes a price seen: it counts on no day; can be restored",
});

export const restoreObservation = operation({
  ...one,
  method: "POST",
  path: "/observations/{id}/restore",
  summary: "Brings a deleted price back",
});

const corrections = { ...bare, path: "/observations/{id}/corrections" };

export const correctObservation = operation({
  ...corrections,
  method: "POST",
  summary:
    "Corrects figures of a price seen, with a reason; a wrong store or material is deleted and entered anew",
  body: plainBody(observationCorrection),
  answer: observationShape,
});

export const listCorrections = operation({
  ...corrections,
  method: "GET",
  summary: "What a price seen said before each of its corrections, the first correction first",
  answer: z.strictObject({ items: z.array(correctionShape) }),
});
