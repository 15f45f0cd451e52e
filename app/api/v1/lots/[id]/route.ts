import { deleteLot, lot } from "../../../../../lib/data/lots.ts";
import { eventsOf } from "../../../../../lib/data/stock-events.ts";
import { apiLot } from "../../../../../lib/show/api-lot.ts";
import { asOfDay } from "../../_answers/as-of.ts";
import { changed, found } from "../../_answers/outcome.ts";
import { does, resource } from "../../_answers/resource.ts";
import * as operations from "../../_operations/lots.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.readLot, async ({ scope, part, query, today }) => {
    const day = asOfDay(query.asOf, today);
    if (typeof day !== "string") return day;
    const events = await eventsOf(scope, part("id"));
    return found(await lot(scope, part("id")), (one) => apiLot(one, events, day));
  }),
  does(operations.deleteLot, async ({ scope, part, today }) => {
    const events = await eventsOf(scope, part("id"));
    return changed(await deleteLot(scope, part("id")), (one) => apiLot(one, events, today));
  }),
);
