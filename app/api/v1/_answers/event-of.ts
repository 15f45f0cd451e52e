import type { Scope } from "../../../../lib/data/client.ts";
import { stockEvent } from "../../../../lib/data/stock-events.ts";
import { KINDS_OF, type Undoable } from "../_operations/stock-events.ts";

/** Whether an event is of a lot and of the kind its address says. */
export async function isEventOf(
  scope: Scope,
  lotId: string,
  happened: Undoable,
  eventId: string,
): Promise<boolean> {
  const event = await stockEvent(scope, eventId);
  return event !== null && event.lotId === lotId && KINDS_OF[happened].includes(event.kind);
}
