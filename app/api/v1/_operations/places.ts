import { fields, id } from "../../../../lib/entry-fields.ts";
import { fitsShape, placeContentsShape, placeShape } from "../../../../lib/show/api-place.ts";
import { stockActShape } from "../../../../lib/show/api-stock-act.ts";
import { placeEntry, placePatch } from "../../../../lib/stock/place-entry.ts";
import { placeCountEntry, placeMoneyEntry } from "../../../../lib/stock/stock-act-entry.ts";
import { plainBody } from "../_answers/body.ts";
import { oneOrManyShape } from "../_answers/many-answer.ts";
import { newOrManyBody } from "../_answers/many-body.ts";
import { newBody } from "../_answers/new-body.ts";
import { bare, operation } from "../_answers/operation.ts";
import { asOfQuery, pageQuery, pageShape, yesOrNo } from "../_answers/page.ts";

export const listPlaces = operation({
  ...bare,
  method: "GET",
  path: "/places",
  summary: "Places stock lies in, by id",
  query: fields({ ...pageQuery, archived: yesOrNo("the archived ones instead") }),
  answer: pageShape(placeShape),
});

export const addPlaces = operation({
  ...bare,
  method: "POST",
  path: "/places",
  summary: "A place, or many; limits as value and unit",
  body: newOrManyBody(placeEntry),
  answer: oneOrManyShape(placeShape),
  makes: true,
});

const one = { ...bare, path: "/places/{id}", answer: placeShape };

export const readPlace = operation({
  ...one,
  method: "GET",
  summary: "A place, an archived one too: what lies there on a day, how full it is, what that weighs",
  query: fields(asOfQuery),
  answer: placeContentsShape,
});

export const changePlace = operation({
  ...one,
  method: "PATCH",
  summary: "Changes a place; what is left out stays, null takes a limit away",
  body: plainBody(placePatch),
});

export const archivePlace = operation({
  ...one,
  method: "DELETE",
  summary: "Archives a place: out of the lists, nothing is moved there; what lies there stays",
});

export const restorePlace = operation({
  ...one,
  method: "POST",
  path: "/places/{id}/restore",
  summary: "Takes a place out of the archive",
});

export const readFits = operation({
  ...bare,
  method: "GET",
  path: "/places/{id}/fits",
  summary: "How many more of a material fit in a place beside what lies there",
  query: fields({ ...asOfQuery, materialId: id() }),
  answer: fitsShape,
});

export const countPlace = operation({
  ...bare,
  method: "POST",
  path: "/places/{id}/counts",
  summary: "A stock-take of a place: what is found or missing there follows, as one act",
  body: newBody(placeCountEntry),
  answer: stockActShape,
  makes: true,
});

export const chargePlace = operation({
  ...bare,
  method: "POST",
  path: "/places/{id}/storage-money",
  summary: "What a place cost over some days, shared to the cent over what lay there, as one act",
  body: newBody(placeMoneyEntry),
  answer: stockActShape,
  makes: true,
});
