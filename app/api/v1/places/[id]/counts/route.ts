import { countPlace } from "../../../../../../lib/data/stock-place-acts.ts";
import { apiStockAct } from "../../../../../../lib/show/api-stock-act.ts";
import { made } from "../../../_answers/outcome.ts";
import { does, resource } from "../../../_answers/resource.ts";
import * as operations from "../../../_operations/places.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.countPlace, async ({ scope, part, body: { id, entry } }) =>
    made(await countPlace(scope, part("id"), id, entry), apiStockAct),
  ),
);
