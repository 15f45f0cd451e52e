import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { Written } from "../fault.ts";
import { faultsOfLot } from "../stock/ledger.ts";
import type { Lot } from "../stock/lot.ts";
import { salvagePaid } from "../stock/salvage.ts";
import type { SalvageCorrection } from "../stock/salvage-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { countedDay } from "./day-faults.ts";
import type { StoredLot } from "./lot-rows.ts";
import { materialWithin } from "./material-rows.ts";
import { dateOf, digits } from "./rows.ts";
import { aroundFaults, detailColumns, quantityOf, type Salvage, storedSalvage } from "./salvage.ts";
import { salvageWithin } from "./salvage-rows.ts";
import { liveEventsOf } from "./stock-event-rows.ts";
import { lockedLot } from "./stock-lock.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { accepted, fault, NOT_THERE, refused } from "./written.ts";

/** The lot as corrected: all of it came in on the day it was got. */
function correctedLot(lot: StoredLot, entry: SalvageCorrection, quantity: Decimal, on: LocalDate): Lot {
  return {
    ...lot,
    quantity,
    paid: salvagePaid(entry),
    orderedOn: on,
    receipts: [{ quantity, on }],
    condition: entry.condition,
    note: entry.note,
  };
}

/** One receipt of the whole takes the place of whatever receipts there are; the others count as undone. */
async function receiveOnce(tx: Tx, lot: StoredLot, quantity: Decimal, on: LocalDate): Promise<void> {
  const [first, ...others] = lot.receipts;
  const data = { quantity: digits(quantity), onDay: dateOf(on) };
  await tx.lotReceipt.updateMany({
    where: { id: { in: others.flatMap(({ id }) => (id === undefined ? [] : [id])) } },
    data: { undoneAt: new Date() },
  });
  if (first === undefined)
    await tx.lotReceipt.create({ data: { ...data, lotId: lot.id }, select: { id: true } });
  else await tx.lotReceipt.updateMany({ where: { id: first.id }, data });
}

/**
 * Salvage corrected: everything but its material and where it lies, as the entry says it now; the change log keeps what was.
 * Cost, quantity and condition of the lot follow, on every day (R11). Not there: no such live lot. Faults: those of
 * `addSalvage`; not-salvage; event-in-the-way, what happened to the lot that would then be impossible.
 */
export function correctSalvage(
  scope: Scope,
  lotId: string,
  entry: SalvageCorrection,
): Promise<Written<Salvage>> {
  return inWorkspace(scope, async (tx) => {
    const lot = await lockedLot(tx, lotId);
    const material = lot === null ? null : await materialWithin(tx, lot.materialId);
    if (lot === null || material === null) return NOT_THERE;
    if ((await salvageWithin(tx, lotId)) === null) return refused([fault("", "not-salvage")]);
    const today = todayOf(await workspaceWithin(tx));
    const around = await aroundFaults(tx, entry, today);
    const quantity = quantityOf(entry, material);
    if (!("toFixed" in quantity)) return refused([...quantity, ...around]);
    if (!quantity.greaterThan(0)) return refused([fault("quantity", "not-positive"), ...around]);
    const on = countedDay(entry.on, today);
    const next = correctedLot(lot, entry, quantity, on);
    const faults = [...around, ...faultsOfLot(next, await liveEventsOf(tx, lotId))];
    if (faults.length > 0) return refused(faults);
    const { amount, currency } = next.paid;
    // No more may come in than the lot has, at no moment: a smaller receipt goes first, a larger lot.
    const shrinks = quantity.lessThan(lot.quantity);
    if (shrinks) await receiveOnce(tx, lot, quantity, on);
    await tx.lot.updateMany({
      where: { id: lotId },
      data: {
        quantity: digits(quantity),
        paidAmount: digits(amount),
        paidCurrency: currency,
        orderedOn: dateOf(on),
        condition: digits(entry.condition),
        note: entry.note,
      },
    });
    if (!shrinks) await receiveOnce(tx, lot, quantity, on);
    await tx.salvage.updateMany({ where: { lotId }, data: detailColumns(entry) });
    const stored = await storedSalvage(tx, lotId);
    return stored === null ? NOT_THERE : accepted(stored);
  });
}
