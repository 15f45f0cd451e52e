import { lot } from "../../../../../../lib/data/lots.ts";
import { eventsOf } from "../../../../../../lib/data/stock-events.ts";
import { apiStockEvent } from "../../../../../../lib/show/api-lot.ts";
import { found } from "../../../_answers/outcome.ts";
import { does, resource } from "../../../_answers/resource.ts";
import { listStockEvents } from "../../../_operations/stock-events.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(listStockEvents, async ({ scope, part, query }) => {
    const events = await eventsOf(scope, part("id"), { includeUndone: query.undone });
    return found(await lot(scope, part("id")), () => ({ items: events.map(apiStockEvent) }));
  }),
);
