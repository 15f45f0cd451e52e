import * as z from "zod";
import { fields } from "../../../../lib/entry-fields.ts";
import { disposalEntry } from "../../../../lib/projects/disposal-entry.ts";
import { disposalShape } from "../../../../lib/show/api-disposal.ts";
import { plainBody } from "../_answers/body.ts";
import { newBody } from "../_answers/new-body.ts";
import { bare, operation } from "../_answers/operation.ts";
import { yesOrNo } from "../_answers/page.ts";

export const listDisposals = operation({
  ...bare,
  method: "GET",
  path: "/projects/{id}/disposals",
  summary: "Waste a project got rid of, the newest first, each with what it cost",
  query: fields({ undone: yesOrNo("undone ones too") }),
  answer: z.strictObject({ items: z.array(disposalShape) }),
});

export const addDisposal = operation({
  ...bare,
  method: "POST",
  path: "/projects/{id}/disposals",
  summary: "Waste gotten rid of: a fee per tonne, per load or flat, and hauling",
  body: newBody(disposalEntry),
  answer: disposalShape,
  makes: true,
});

const one = { ...bare, path: "/disposals/{id}", answer: disposalShape };

export const readDisposal = operation({
  ...one,
  method: "GET",
  summary: "Waste gotten rid of and what it cost; an undone one too",
});

export const undoDisposal = operation({
  ...one,
  method: "DELETE",
  summary: "Undoes a disposal; can be restored",
});

export const correctDisposal = operation({
  ...one,
  method: "POST",
  path: "/disposals/{id}/corrections",
  summary: "All of it anew; the earlier values stay readable",
  body: plainBody(disposalEntry),
});

export const restoreDisposal = operation({
  ...one,
  method: "POST",
  path: "/disposals/{id}/restore",
  summary: "Brings an undone disposal back",
});
