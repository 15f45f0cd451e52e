import { fields } from "../../../../lib/entry-fields.ts";
import { materialEntry, materialPatch } from "../../../../lib/materials/material-entry.ts";
import { materialShape } from "../../../../lib/show/api-material.ts";
import { plainBody } from "../_answers/body.ts";
import { oneOrManyShape } from "../_answers/many-answer.ts";
import { newOrManyBody } from "../_answers/many-body.ts";
import { bare, operation } from "../_answers/operation.ts";
import { pageQuery, pageShape, yesOrNo } from "../_answers/page.ts";

export const listMaterials = operation({
  ...bare,
  method: "GET",
  path: "/materials",
  summary: "Materials, by id",
  query: fields({ ...pageQuery, archived: yesOrNo("the archived ones instead") }),
  answer: pageShape(materialShape),
});

export const addMaterials = operation({
  ...bare,
  method: "POST",
  path: "/materials",
  summary: "A material, or many",
  body: newOrManyBody(materialEntry),
  answer: oneOrManyShape(materialShape),
  makes: true,
});

const one = { ...bare, path: "/materials/{id}", answer: materialShape };

export const readMaterial = operation({ ...one, method: "GET", summary: "A material, an archived one too" });

export const changeMaterial = operation({
  ...one,
  method: "PATCH",
  summary: "Changes a material; what is left out stays, dimensions are replaced as a whole",
  body: plainBody(materialPatch),
});

export const archiveMaterial = operation({
  ...one,
  method: "DELETE",
  summary: "Archives a material: out of the lists; its prices, lots and requirements stay",
});

export const restoreMaterial = operation({
  ...one,
  method: "POST",
  path: "/materials/{id}/restore",
  summary: "Takes a material out of the archive",
});
