import { fields } from "../../../../lib/entry-fields.ts";
import { exchangeRateEntry } from "../../../../lib/rates/exchange-rate-entry.ts";
import { exchangeRateShape, taxRegionShape, workspaceShape } from "../../../../lib/show/api-settings.ts";
import { taxRegionEntry } from "../../../../lib/tax/tax-region-entry.ts";
import { workspaceEntry } from "../../../../lib/tax/workspace-entry.ts";
import { plainBody } from "../_answers/body.ts";
import { oneOrManyShape } from "../_answers/many-answer.ts";
import { oneOrManyBody } from "../_answers/many-body.ts";
import { bare, operation } from "../_answers/operation.ts";
import { keyedPageQuery, pageShape } from "../_answers/page.ts";

const keyedList = fields(keyedPageQuery);
const MOST_RATES = 20_000;

export const readWorkspace = operation({
  ...bare,
  method: "GET",
  path: "/workspace",
  summary: "The settings of the owner's workspace, and what day it is there",
  answer: workspaceShape,
});

export const changeWorkspace = operation({
  ...bare,
  method: "PATCH",
  path: "/workspace",
  summary: "Changes settings; what is left out stays",
  body: plainBody(workspaceEntry),
  answer: workspaceShape,
});

export const listTaxRegions = operation({
  ...bare,
  method: "GET",
  path: "/tax-regions",
  summary: "Tax regions prices can be taxed in: shipped ones and the workspace's own, by code",
  query: keyedList,
  answer: pageShape(taxRegionShape),
});

export const addTaxRegion = operation({
  ...bare,
  method: "POST",
  path: "/tax-regions",
  summary: "A tax region of the workspace's own; its code is its id",
  body: plainBody(taxRegionEntry),
  answer: taxRegionShape,
  makes: true,
});

export const listExchangeRates = operation({
  ...bare,
  method: "GET",
  path: "/exchange-rates",
  summary: "Published exchange rates, by day",
  query: keyedList,
  answer: pageShape(exchangeRateShape),
});

export const addExchangeRates = operation({
  ...bare,
  method: "POST",
  path: "/exchange-rates",
  summary: "A published rate (1 base = rate quote), or many; known by its day, pair and source",
  body: oneOrManyBody(exchangeRateEntry, MOST_RATES),
  answer: oneOrManyShape(exchangeRateShape),
  makes: true,
});
