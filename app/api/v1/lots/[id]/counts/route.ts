import { addStockCount } from "../../../../../../lib/data/stock-counts.ts";
import { apiStockEvent } from "../../../../../../lib/show/api-lot.ts";
import { made } from "../../../_answers/outcome.ts";
import { does, resource } from "../../../_answers/resource.ts";
import { addStockCount as addingCount } from "../../../_operations/stock-events.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(addingCount, async ({ scope, part, body: { id, entry } }) =>
    made(await addStockCount(scope, part("id"), id, entry), (event) => ({
      event: event === null ? null : apiStockEvent(event),
    })),
  ),
);
