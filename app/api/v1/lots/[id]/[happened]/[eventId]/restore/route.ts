import { redoStockEvent } from "../../../../../../../../lib/data/stock-events.ts";
import { apiStockEvent } from "../../../../../../../../lib/show/api-lot.ts";
import { isEventOf } from "../../../../../_answers/event-of.ts";
import { changed } from "../../../../../_answers/outcome.ts";
import { NOT_THERE } from "../../../../../_answers/problem.ts";
import { byWord, does, resource } from "../../../../../_answers/resource.ts";
import { restoreStockEvent, UNDOABLES, type Undoable } from "../../../../../_operations/stock-events.ts";

const redo = (happened: Undoable) =>
  does(restoreStockEvent(happened), async ({ scope, part }) => {
    if (!(await isEventOf(scope, part("id"), happened, part("eventId")))) return NOT_THERE;
    return changed(await redoStockEvent(scope, part("eventId")), apiStockEvent);
  });

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  byWord("happened", "POST", new Map(UNDOABLES.map((happened) => [happened, redo(happened)]))),
);
