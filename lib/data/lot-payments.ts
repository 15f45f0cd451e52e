import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { Written } from "../fault.ts";
import type { PaymentEntry } from "../stock/stock-act-entry.ts";
import { inWorkspace, type Scope, type Tx } from "./client.ts";
import { countedDay, dayFaults } from "./day-faults.ts";
import { createdOnce, entryHash } from "./first-received.ts";
import { Prisma } from "./generated/client.ts";
import { dateOf, decimalOrNull, digits, digitsOrNull, row, storedDay, storedDecimal } from "./rows.ts";
import { lockedLot } from "./stock-lock.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";
import { accepted, fault, NOT_THERE, refused, repeated } from "./written.ts";

/** A payment as it is kept, in the currency of the lot's receipt; home: what the card was charged. */
export type StoredPayment = Readonly<{
  id: string;
  lotId: string;
  amount: Decimal;
  on: LocalDate;
  home: Decimal | null;
  undoneAt: string | null;
}>;

type PaymentRow = Readonly<{
  id: string;
  lot_id: string;
  amount: string;
  on_day: string;
  home: string | null;
  undone_at: string | null;
}>;

async function paymentWithin(tx: Tx, id: string): Promise<StoredPayment | null> {
  const found = await row<PaymentRow>(
    tx,
    Prisma.sql`SELECT id, lot_id, amount::text, on_day, home::text, undone_at FROM lot_payment WHERE id = ${id}::uuid`,
  );
  if (found === null) return null;
  return {
    id: found.id,
    lotId: found.lot_id,
    amount: storedDecimal(found.amount),
    on: storedDay(found.on_day),
    home: decimalOrNull(found.home),
    undoneAt: found.undone_at,
  };
}

/** One payment on a lot, an undone one too; null: not there. */
export function lotPayment(scope: Scope, id: string): Promise<StoredPayment | null> {
  return inWorkspace(scope, (tx) => paymentWithin(tx, id));
}

/**
 * Money paid on a lot that was ordered with payments: a further part, or the balance. not-there when the lot is not. Faults:
 * paid-in-full (amount: a lot without payments was paid when ordered), day-ahead, before-acquisition (on). Source: rules.md R9.
 */
export function addPayment(
  scope: Scope,
  lotId: string,
  id: string,
  entry: PaymentEntry,
): Promise<Written<StoredPayment>> {
  const hash = entryHash({ lotId, ...entry });
  return inWorkspace(scope, async (tx) => {
    const lot = await lockedLot(tx, lotId);
    const stored = () => paymentWithin(tx, id);
    return createdOnce<StoredPayment>(tx, { table: "lot_payment", id, hash, stored }, async () => {
      if (lot === null) return NOT_THERE;
      const today = todayOf(await workspaceWithin(tx));
      const on = countedDay(entry.on, today);
      const faults = [
        ...dayFaults("on", entry.on, today),
        ...(on < lot.orderedOn ? [fault("on", "before-acquisition")] : []),
        ...(lot.payments.length === 0 ? [fault("amount", "paid-in-full")] : []),
      ];
      if (faults.length > 0) return refused(faults);
      const { amount, home } = entry;
      const figures = { amount: digits(amount), onDay: dateOf(on), home: digitsOrNull(home) };
      await tx.lotPayment.create({ data: { id, lotId, ...figures, entryHash: hash }, select: { id: true } });
      const made = await paymentWithin(tx, id);
      return made === null ? NOT_THERE : accepted(made);
    });
  });
}

async function setUndone(scope: Scope, id: string, undone: boolean): Promise<Written<StoredPayment>> {
  return inWorkspace(scope, async (tx) => {
    const named = await paymentWithin(tx, id);
    const lot = named === null ? null : await lockedLot(tx, named.lotId);
    const there = await paymentWithin(tx, id);
    if (there === null || lot === null) return NOT_THERE;
    if ((there.undoneAt !== null) === undone) return repeated(there);
    await tx.lotPayment.updateMany({ where: { id }, data: { undoneAt: undone ? new Date() : null } });
    return accepted((await paymentWithin(tx, id)) ?? there);
  });
}

/** As if it had not been paid; it stays readable. With none left, all of it is still owed. */
export function undoPayment(scope: Scope, id: string): Promise<Written<StoredPayment>> {
  return setUndone(scope, id, true);
}

/** Brings an undone payment back. */
export function redoPayment(scope: Scope, id: string): Promise<Written<StoredPayment>> {
  return setUndone(scope, id, false);
}
