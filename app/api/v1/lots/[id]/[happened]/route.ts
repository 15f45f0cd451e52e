import { addStockEvent } from "../../../../../../lib/data/stock-events.ts";
import { apiStockEvent } from "../../../../../../lib/show/api-lot.ts";
import { made } from "../../../_answers/outcome.ts";
import { byWord, does, resource } from "../../../_answers/resource.ts";
import { addStockEvent as adding, HAPPENINGS, type Happened } from "../../../_operations/stock-events.ts";

const add = (happened: Happened) =>
  does(adding(happened), async ({ scope, part, body: { id, entry } }) =>
    made(await addStockEvent(scope, part("id"), id, entry), apiStockEvent),
  );

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  byWord("happened", "POST", new Map(HAPPENINGS.map((happened) => [happened, add(happened)]))),
);
