import "server-only";
import { Decimal, ZERO } from "../decimal.ts";
import type { Written } from "../fault.ts";
import { lotState } from "../stock/lot-state.ts";
import type { TransferEntry } from "../stock/stock-act-entry.ts";
import { NO_PLACE } from "../stock/stock-event-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { countedDay, dayFaults } from "./day-faults.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import { lotsFor } from "./gathered.ts";
import { Prisma } from "./generated/client.ts";
import { LIVE_LOTS, lotsWithin, type StoredLot } from "./lot-rows.ts";
import { requirementWithin } from "./requirement-rows.ts";
import { type ActEvent, liveByLot, performAct } from "./stock-act-insert.ts";
import { actWithin, type StoredAct } from "./stock-act-rows.ts";
import { lockedLots } from "./stock-lock.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { fault, refused } from "./written.ts";

type Holding = Readonly<{ lot: StoredLot; quantity: Decimal }>;

/** So much of what is set aside, the oldest lots first; what is not covered is left over. */
function taken(holdings: readonly Holding[], wanted: Decimal): { takes: Holding[]; rest: Decimal } {
  let rest = wanted;
  const takes: Holding[] = [];
  for (const { lot, quantity } of holdings) {
    const take = Decimal.min(rest, quantity);
    if (take.isZero()) continue;
    takes.push({ lot, quantity: take });
    rest = rest.minus(take);
  }
  return { takes, rest };
}

/** The lots a requirement has something set aside of, locked, the oldest first; one of them when it is named. */
async function lotsHeldFor(tx: Tx, requirementId: string, lotId: string | null) {
  const own = await lotsWithin(tx, Prisma.sql`${LIVE_LOTS} AND ${lotsFor([requirementId])}`);
  const named = own.filter((lot) => lotId === null || lot.id === lotId).reverse();
  const locked = await lockedLots(
    tx,
    named.map(({ id }) => id),
  );
  const oldestFirst = new Map<string, StoredLot>();
  for (const { id } of named) {
    const lot = locked.get(id);
    if (lot !== undefined) oldestFirst.set(id, lot);
  }
  return oldestFirst;
}

/**
 * Moves what is set aside for one requirement to another, at its own cost: released and allocated in one act, undone as one.
 * Faults: not-there (fromRequirementId, toRequirementId), wrong-material (toRequirementId), more-than-allocated (quantity,
 * with `has`), day-ahead, event-in-the-way (on). Source: rules.md R9 (moves change project, never quantity or cost).
 */
export function moveBetween(scope: Scope, id: string, entry: TransferEntry): Promise<Written<StoredAct>> {
  const hash = entryHash(entry);
  return inWorkspace(scope, (tx) =>
    createdOnce(tx, { table: "stock_act", id, hash, stored: () => actWithin(tx, id) }, async () => {
      const { fromRequirementId: from, toRequirementId: to, reason } = entry;
      const today = todayOf(await workspaceWithin(tx));
      const on = countedDay(entry.on, today);
      const faults = [
        ...dayFaults("on", entry.on, today),
        ...((await requirementWithin(tx, from)) === null ? [fault("fromRequirementId", "not-there")] : []),
        ...((await requirementWithin(tx, to)) === null ? [fault("toRequirementId", "not-there")] : []),
      ];
      if (faults.length > 0) return refused(faults);
      const lots = await lotsHeldFor(tx, from, entry.lotId);
      const live = await liveByLot(tx, lots);
      const holdings = [...lots.values()].map((lot) => {
        const { allocated } = lotState(lot, live.get(lot.id) ?? [], on);
        return { lot, quantity: allocated.get(from) ?? ZERO };
      });
      const { takes, rest } = taken(holdings, entry.quantity);
      const has = entry.quantity.minus(rest).toFixed();
      if (!rest.isZero()) return refused([fault("quantity", "more-than-allocated", { has })]);
      const makes = takes.flatMap(({ lot, quantity }): ActEvent[] => {
        const shared = { quantity, on, amount: null, reason, ...NO_PLACE };
        return [
          { lot, under: "", entry: { kind: "released", requirementId: from, ...shared } },
          { lot, under: "", entry: { kind: "allocated", requirementId: to, ...shared } },
        ];
      });
      const plan = { id, kind: "moved-between", on, reason, hash, undoes: [], makes } as const;
      const written = await performAct(tx, plan, lots, today);
      return written.ok || written.why !== "faults" ? written : refused(written.faults.map(toRequirement));
    }),
  );
}

/** The other requirement is what an allocation's fault is about. */
function toRequirement<F extends { path: string }>(found: F): F {
  return found.path === "requirementId" ? { ...found, path: "toRequirementId" } : found;
}
