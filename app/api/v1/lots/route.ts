import { addLot, lotsOf } from "../../../../lib/data/lots.ts";
import { liveEventsOfLots } from "../../../../lib/data/stock-events.ts";
import { apiLot } from "../../../../lib/show/api-lot.ts";
import { asOfDay } from "../_answers/as-of.ts";
import { created } from "../_answers/created.ts";
import { pageOf } from "../_answers/page.ts";
import { does, resource } from "../_answers/resource.ts";
import { addLots, listLots } from "../_operations/lots.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(listLots, async ({ scope, query, today }) => {
    const day = asOfDay(query.asOf, today);
    if (typeof day !== "string") return day;
    const { items, nextCursor } = pageOf(await lotsOf(scope, query), ({ id }) => id, query);
    const events = await liveEventsOfLots(
      scope,
      items.map(({ id }) => id),
    );
    return { status: 200, value: { items: items.map((lot) => apiLot(lot, events, day)), nextCursor } };
  }),
  does(addLots, async ({ scope, body, today }) => {
    const events = body.many ? [] : await liveEventsOfLots(scope, [body.one.id]);
    return created(
      body,
      ({ id, entry }) => addLot(scope, id, entry),
      (lot) => apiLot(lot, events, today),
    );
  }),
);
