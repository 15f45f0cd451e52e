import "server-only";
import { localDate } from "../calendar/local-date.ts";
import { decimal } from "../decimal.ts";
import { groupedBy } from "../exposure/exposure-facts.ts";
import type { Terms } from "../prices/observation.ts";
import type { Lot, LotOrigin, Payment, Receipt } from "../stock/lot.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { feeOfStored, type StoredFee } from "./observation-rows.ts";
import { currencyOf, decimalOrNull, moneyOrNull, rows } from "./rows.ts";

/** A lot as it is kept; deletedAt says when it was taken out of the books. */
export type StoredLot = Lot & Readonly<{ deletedAt: string | null }>;

type LotRow = Readonly<{
  id: string;
  material_id: string;
  origin: LotOrigin;
  store_id: string | null;
  terms: Terms | null;
  observation_id: string | null;
  quantity: string;
  paid_amount: string;
  paid_currency: string;
  tax_included: boolean;
  tax_region: string | null;
  exempt_from: readonly string[];
  fees: readonly StoredFee[];
  paid_home: string | null;
  paid_home_currency: string | null;
  ordered_on: string;
  condition: string;
  stored_at: string | null;
  note: string | null;
  deleted_at: string | null;
}>;
type ReceiptRow = Readonly<{ lot_id: string; quantity: string; on_day: string }>;
type PaymentRow = Readonly<{ lot_id: string; amount: string; on_day: string; home: string | null }>;

function receiptOfRow({ quantity, on_day }: ReceiptRow): Receipt {
  return { quantity: decimal(quantity), on: localDate(on_day) };
}

function paymentOfRow({ amount, on_day, home }: PaymentRow): Payment {
  return { amount: decimal(amount), on: localDate(on_day), home: decimalOrNull(home) };
}

function lotOfRow(stored: LotRow, receipts: readonly Receipt[], payments: readonly Payment[]): StoredLot {
  return {
    id: stored.id,
    materialId: stored.material_id,
    origin: stored.origin,
    storeId: stored.store_id,
    terms: stored.terms,
    observationId: stored.observation_id,
    quantity: decimal(stored.quantity),
    paid: {
      amount: decimal(stored.paid_amount),
      currency: currencyOf(stored.paid_currency),
      taxIncluded: stored.tax_included,
      taxRegion: stored.tax_region,
      exemptFrom: stored.exempt_from,
      fees: stored.fees.map(feeOfStored),
    },
    paidHome: moneyOrNull(stored.paid_home, stored.paid_home_currency),
    orderedOn: localDate(stored.ordered_on),
    receipts,
    payments,
    condition: decimal(stored.condition),
    storedAt: stored.stored_at,
    note: stored.note,
    deletedAt: stored.deleted_at,
  };
}

/** Which lots: a condition on a table called l. */
export const LIVE_LOTS = Prisma.sql`l.deleted_at IS NULL`;

/** Lots that meet a condition on l, the newest order first; of one day, the one recorded later. */
export async function lotsWithin(tx: Tx, only: Prisma.Sql): Promise<StoredLot[]> {
  const found = await rows<LotRow>(
    tx,
    Prisma.sql`SELECT l.id, l.material_id, l.origin, l.store_id, l.terms, l.observation_id, l.quantity::text,
      l.paid_amount::text, l.paid_currency, l.tax_included, l.tax_region, l.exempt_from, l.fees, l.paid_home::text,
      l.paid_home_currency, l.ordered_on, l.condition::text, l.stored_at, l.note, l.deleted_at
      FROM lot l WHERE ${only} ORDER BY l.ordered_on DESC, l.sequence DESC`,
  );
  if (found.length === 0) return [];
  const receipts = groupedBy(
    await rows<ReceiptRow>(
      tx,
      Prisma.sql`SELECT r.lot_id, r.quantity::text, r.on_day FROM lot_receipt r
        JOIN lot l ON l.workspace_id = r.workspace_id AND l.id = r.lot_id WHERE ${only} ORDER BY r.on_day`,
    ),
    (receipt) => receipt.lot_id,
  );
  const payments = groupedBy(
    await rows<PaymentRow>(
      tx,
      Prisma.sql`SELECT p.lot_id, p.amount::text, p.on_day, p.home::text FROM lot_payment p
        JOIN lot l ON l.workspace_id = p.workspace_id AND l.id = p.lot_id WHERE ${only} ORDER BY p.on_day`,
    ),
    (payment) => payment.lot_id,
  );
  return found.map((stored) =>
    lotOfRow(
      stored,
      (receipts.get(stored.id) ?? []).map(receiptOfRow),
      (payments.get(stored.id) ?? []).map(paymentOfRow),
    ),
  );
}

/** One lot, a deleted one too. */
export async function lotWithin(tx: Tx, id: string): Promise<StoredLot | null> {
  return (await lotsWithin(tx, Prisma.sql`l.id = ${id}::uuid`))[0] ?? null;
}
