import { takeBackUnused } from "../../../../../../../../lib/data/stock-leftovers.ts";
import { apiStockAct } from "../../../../../../../../lib/show/api-stock-act.ts";
import { isEventOf } from "../../../../../_answers/event-of.ts";
import { made } from "../../../../../_answers/outcome.ts";
import { NOT_THERE } from "../../../../../_answers/problem.ts";
import { byWord, does, resource } from "../../../../../_answers/resource.ts";
import * as operations from "../../../../../_operations/stock-acts.ts";

const unused = does(operations.takeBackUnused, async ({ scope, part, body: { id, entry } }) => {
  if (!(await isEventOf(scope, part("id"), "draws", part("eventId")))) return NOT_THERE;
  return made(await takeBackUnused(scope, part("eventId"), id, entry), apiStockAct);
});

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  byWord("happened", "POST", new Map([["draws", unused]])),
);
