import "server-only";
import type { Written } from "../fault.ts";
import { countDifference } from "../stock/counted.ts";
import type { StockEvent } from "../stock/lot.ts";
import { NO_PLACE, type StockCountEntry } from "../stock/stock-event-entry.ts";
import { inWorkspace, type Scope } from "./client.ts";
import { countedDay, dayFaults } from "./day-faults.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import { insertEvent } from "./stock-event-insert.ts";
import { eventWithin, liveEventsOf } from "./stock-event-rows.ts";
import { lockedLot } from "./stock-lock.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { accepted, NOT_THERE, refused } from "./written.ts";

/**
 * How many of a lot are there: records what was found or is missing; null when the books agree, and then nothing is
 * recorded. not-there when the lot is not. Faults: day-ahead, day-too-early (on) and those of `insertEvent`.
 */
export function addStockCount(
  scope: Scope,
  lotId: string,
  id: string,
  count: StockCountEntry,
): Promise<Written<StockEvent | null>> {
  const hash = entryHash({ lotId, count });
  return inWorkspace(scope, async (tx) => {
    const lot = await lockedLot(tx, lotId);
    const stored = () => eventWithin(tx, id);
    return createdOnce<StockEvent | null>(tx, { table: "stock_event", id, hash, stored }, async () => {
      if (lot === null) return NOT_THERE;
      const today = todayOf(await workspaceWithin(tx));
      const faults = dayFaults("on", count.on, today);
      if (faults.length > 0) return refused(faults);
      const on = countedDay(count.on, today);
      const difference = countDifference(lot, await liveEventsOf(tx, lotId), on, count.quantity);
      if (difference === null) return accepted(null);
      const entry = {
        ...difference,
        on,
        requirementId: null,
        amount: null,
        reason: count.reason,
        ...NO_PLACE,
      };
      return insertEvent(tx, lot, { id, entry, hash }, today);
    });
  });
}
