import { fields } from "../../../../lib/entry-fields.ts";
import { storeEntry, storePatch } from "../../../../lib/prices/store-entry.ts";
import { storeShape } from "../../../../lib/show/api-store.ts";
import { plainBody } from "../_answers/body.ts";
import { oneOrManyShape } from "../_answers/many-answer.ts";
import { newOrManyBody } from "../_answers/many-body.ts";
import { bare, operation } from "../_answers/operation.ts";
import { pageQuery, pageShape, yesOrNo } from "../_answers/page.ts";

export const listStores = operation({
  ...bare,
  method: "GET",
  path: "/stores",
  summary: "Stores, by id",
  query: fields({ ...pageQuery, archived: yesOrNo("the archived ones instead") }),
  answer: pageShape(storeShape),
});

export const addStores = operation({
  ...bare,
  method: "POST",
  path: "/stores",
  summary: "A store, or many",
  body: newOrManyBody(storeEntry),
  answer: oneOrManyShape(storeShape),
  makes: true,
});

const one = { ...bare, path: "/stores/{id}", answer: storeShape };

export const readStore = operation({ ...one, method: "GET", summary: "A store, an archived one too" });

export const changeStore = operation({
  ...one,
  method: "PATCH",
  summary: "Changes a store; what is left out stays, lists are replaced as a whole",
  body: plainBody(storePatch),
});

export const archiveStore = operation({
  ...one,
  method: "DELETE",
  summary: "Archives a store: out of the lists and of the offers from today on; its prices and lots stay",
});

export const restoreStore = operation({
  ...one,
  method: "POST",
  path: "/stores/{id}/restore",
  summary: "Takes a store out of the archive",
});
