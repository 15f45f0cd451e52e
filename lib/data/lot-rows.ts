import "server-only";
import { groupedBy } from "../exposure/exposure-facts.ts";
import type { Terms } from "../prices/observation.ts";
import type { Lot, LotOrigin, Payment, Receipt } from "../stock/lot.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { feeOfStored, type StoredFee } from "./observation-rows.ts";
import {
  type Columns,
  currencyOf,
  decimalOrNull,
  manyRows,
  moneyOrNull,
  storedDay,
  storedDecimal,
} from "./rows.ts";

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

const LOT: Columns<LotRow> = {
  id: "l.id",
  material_id: "l.material_id",
  origin: "l.origin",
  store_id: "l.store_id",
  terms: "l.terms",
  observation_id: "l.observation_id",
  quantity: "l.quantity::text",
  paid_amount: "l.paid_amount::text",
  paid_currency: "l.paid_currency",
  tax_included: "l.tax_included",
  tax_region: "l.tax_region",
  exempt_from: "l.exempt_from",
  fees: "l.fees",
  paid_home: "l.paid_home::text",
  paid_home_currency: "l.paid_home_currency",
  ordered_on: "l.ordered_on",
  condition: "l.condition::text",
  stored_at: "l.stored_at",
  note: "l.note",
  deleted_at: "l.deleted_at",
};
const RECEIPT: Columns<ReceiptRow> = { lot_id: "r.lot_id", quantity: "r.quantity::text", on_day: "r.on_day" };
const PAYMENT: Columns<PaymentRow> = {
  lot_id: "p.lot_id",
  amount: "p.amount::text",
  on_day: "p.on_day",
  home: "p.home::text",
};

function receiptOfRow({ quantity, on_day }: ReceiptRow): Receipt {
  return { quantity: storedDecimal(quantity), on: storedDay(on_day) };
}

function paymentOfRow({ amount, on_day, home }: PaymentRow): Payment {
  return { amount: storedDecimal(amount), on: storedDay(on_day), home: decimalOrNull(home) };
}

function lotOfRow(stored: LotRow, receipts: readonly Receipt[], payments: readonly Payment[]): StoredLot {
  return {
    id: stored.id,
    materialId: stored.material_id,
    origin: stored.origin,
    storeId: stored.store_id,
    terms: stored.terms,
    observationId: stored.observation_id,
    quantity: storedDecimal(stored.quantity),
    paid: {
      amount: storedDecimal(stored.paid_amount),
      currency: currencyOf(stored.paid_currency),
      taxIncluded: stored.tax_included,
      taxRegion: stored.tax_region,
      exemptFrom: stored.exempt_from,
      fees: stored.fees.map(feeOfStored),
    },
    paidHome: moneyOrNull(stored.paid_home, stored.paid_home_currency),
    orderedOn: storedDay(stored.ordered_on),
    receipts,
    payments,
    condition: storedDecimal(stored.condition),
    storedAt: stored.stored_at,
    note: stored.note,
    deletedAt: stored.deleted_at,
  };
}

/** Which lots: a condition on a table called l. */
export const LIVE_LOTS = Prisma.sql`l.deleted_at IS NULL`;

/** Lots that meet a condition on l, the newest order first; of one day, the one recorded later. */
export async function lotsWithin(tx: Tx, only: Prisma.Sql): Promise<StoredLot[]> {
  const ordered = Prisma.sql`ORDER BY l.ordered_on DESC, l.sequence DESC`;
  const found = await manyRows(tx, LOT, Prisma.sql`FROM lot l WHERE ${only} ${ordered}`);
  if (found.length === 0) return [];
  const parts = (table: string) => Prisma.sql`FROM ${Prisma.raw(table)}
    JOIN lot l ON l.workspace_id = ${Prisma.raw(table.slice(-1))}.workspace_id AND l.id = lot_id WHERE ${only} ORDER BY on_day`;
  const receipts = groupedBy(await manyRows(tx, RECEIPT, parts("lot_receipt r")), ({ lot_id }) => lot_id);
  const payments = groupedBy(await manyRows(tx, PAYMENT, parts("lot_payment p")), ({ lot_id }) => lot_id);
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
