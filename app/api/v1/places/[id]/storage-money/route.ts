import { chargePlace } from "../../../../../../lib/data/stock-place-acts.ts";
import { apiStockAct } from "../../../../../../lib/show/api-stock-act.ts";
import { made } from "../../../_answers/outcome.ts";
import { does, resource } from "../../../_answers/resource.ts";
import * as operations from "../../../_operations/places.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.chargePlace, async ({ scope, part, body: { id, entry } }) =>
    made(await chargePlace(scope, part("id"), id, entry), apiStockAct),
  ),
);
