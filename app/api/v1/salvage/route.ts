import { addSalvage, salvages } from "../../../../lib/data/salvage.ts";
import { liveEventsOfLots } from "../../../../lib/data/stock-events.ts";
import { apiSalvage } from "../../../../lib/show/api-salvage.ts";
import { asOfDay } from "../_answers/as-of.ts";
import { made } from "../_answers/outcome.ts";
import { pageOf } from "../_answers/page.ts";
import { does, resource } from "../_answers/resource.ts";
import { salvageAnswer } from "../_answers/salvage-answer.ts";
import * as operations from "../_operations/salvage.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.listSalvage, async ({ scope, query, today }) => {
    const day = asOfDay(query.asOf, today);
    if (typeof day !== "string") return day;
    const { items, nextCursor } = pageOf(await salvages(scope), ({ lot }) => lot.id, query);
    const events = await liveEventsOfLots(
      scope,
      items.map(({ lot }) => lot.id),
    );
    const answered = items.map(({ lot, detail }) => apiSalvage(lot, detail, events, day));
    return { status: 200, value: { items: answered, nextCursor } };
  }),
  does(operations.addSalvage, async ({ scope, body: { id, entry }, today }) =>
    made(await addSalvage(scope, id, entry), await salvageAnswer(scope, id, today)),
  ),
);
