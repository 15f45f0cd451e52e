import { moveBetween } from "../../../../../lib/data/stock-transfers.ts";
import { apiStockAct } from "../../../../../lib/show/api-stock-act.ts";
import { made } from "../../_answers/outcome.ts";
import { does, resource } from "../../_answers/resource.ts";
import * as operations from "../../_operations/stock-acts.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.moveBetween, async ({ scope, body: { id, entry } }) =>
    made(await moveBetween(scope, id, entry), apiStockAct),
  ),
);
