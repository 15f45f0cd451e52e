import { undeleteLot } from "../../../../../../lib/data/lots.ts";
import { eventsOf } from "../../../../../../lib/data/stock-events.ts";
import { apiLot } from "../../../../../../lib/show/api-lot.ts";
import { changed } from "../../../_answers/outcome.ts";
import { does, resource } from "../../../_answers/resource.ts";
import { restoreLot } from "../../../_operations/lots.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(restoreLot, async ({ scope, part, today }) => {
    const events = await eventsOf(scope, part("id"));
    return changed(await undeleteLot(scope, part("id")), (one) => apiLot(one, events, today));
  }),
);
