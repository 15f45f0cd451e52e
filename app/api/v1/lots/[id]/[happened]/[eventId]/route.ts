import { undoStockEvent } from "../../../../../../../lib/data/stock-events.ts";
import { apiStockEvent } from "../../../../../../../lib/show/api-lot.ts";
import { isEventOf } from "../../../../_answers/event-of.ts";
import { changed } from "../../../../_answers/outcome.ts";
import { NOT_THERE } from "../../../../_answers/problem.ts";
import { byWord, does, resource } from "../../../../_answers/resource.ts";
import { UNDOABLES, type Undoable, undoStockEvent as undoing } from "../../../../_operations/stock-events.ts";

const undo = (happened: Undoable) =>
  does(undoing(happened), async ({ scope, part }) => {
    if (!(await isEventOf(scope, part("id"), happened, part("eventId")))) return NOT_THERE;
    return changed(await undoStockEvent(scope, part("eventId")), apiStockEvent);
  });

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  byWord("happened", "DELETE", new Map(UNDOABLES.map((happened) => [happened, undo(happened)]))),
);
