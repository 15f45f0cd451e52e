import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import { ZERO } from "../decimal.ts";
import { groupedBy } from "../exposure/exposure-facts.ts";
import type { Terms } from "../prices/observation.ts";
import type { Lot, LotOrigin, Payment, Receipt } from "../stock/lot.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { feeOfStored, type StoredFee } from "./observation-rows.ts";
import {
  type Columns,
  currencyOf,
  dayOrNull,
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
  taxes: readonly Readonly<{ name: string; amount: string }>[] | null;
  paid_home: string | null;
  paid_home_currency: string | null;
  ordered_on: string;
  condition: string;
  place_id: string | null;
  stored_at: string | null;
  expected_on: string | null;
  lead_days: number | null;
  returnable_until: string | null;
  adjustable_until: string | null;
  restocking_percent: string | null;
  given_free: string | null;
  other_currency: string | null;
  note: string | null;
  deleted_at: string | null;
}>;
type ReceiptRow = Readonly<{
  id: string;
  lot_id: string;
  quantity: string;
  on_day: string;
  place_id: string | null;
  undone: boolean;
}>;
type PaymentRow = Readonly<{
  id: string;
  lot_id: string;
  amount: string;
  on_day: string;
  home: string | null;
  undone: boolean;
}>;

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
  taxes: "l.taxes",
  paid_home: "l.paid_home::text",
  paid_home_currency: "l.paid_home_currency",
  ordered_on: "l.ordered_on",
  condition: "l.condition::text",
  place_id: "l.place_id",
  stored_at:
    "(SELECT s.name FROM storage_place s WHERE s.workspace_id = l.workspace_id AND s.id = l.place_id)",
  expected_on: "l.expected_on",
  lead_days: "l.lead_days",
  returnable_until: "l.returnable_until",
  adjustable_until: "l.adjustable_until",
  restocking_percent: "l.restocking_percent::text",
  given_free: "l.given_free",
  other_currency: "l.other_currency",
  note: "l.note",
  deleted_at: "l.deleted_at",
};
const RECEIPT: Columns<ReceiptRow> = {
  id: "r.id",
  lot_id: "r.lot_id",
  quantity: "r.quantity::text",
  on_day: "r.on_day",
  place_id: "r.place_id",
  undone: "r.undone_at IS NOT NULL",
};
const PAYMENT: Columns<PaymentRow> = {
  id: "p.id",
  lot_id: "p.lot_id",
  amount: "p.amount::text",
  on_day: "p.on_day",
  home: "p.home::text",
  undone: "p.undone_at IS NOT NULL",
};

function receiptOfRow({ id, quantity, on_day, place_id }: ReceiptRow): Receipt {
  return { id, quantity: storedDecimal(quantity), on: storedDay(on_day), placeId: place_id };
}

function paymentOfRow({ id, amount, on_day, home }: PaymentRow): Payment {
  return { id, amount: storedDecimal(amount), on: storedDay(on_day), home: decimalOrNull(home) };
}

/** Where every payment was undone nothing is paid: a lot without any was paid in full when it was ordered. */
function paymentsMade(orderedOn: LocalDate, all: readonly PaymentRow[]): Payment[] {
  const made = all.filter(({ undone }) => !undone).map(paymentOfRow);
  return made.length === 0 && all.length > 0 ? [{ amount: ZERO, on: orderedOn, home: null }] : made;
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
      taxes: stored.taxes?.map(({ name, amount }) => ({ name, amount: storedDecimal(amount) })) ?? null,
    },
    paidHome: moneyOrNull(stored.paid_home, stored.paid_home_currency),
    orderedOn: storedDay(stored.ordered_on),
    receipts,
    payments,
    condition: storedDecimal(stored.condition),
    placeId: stored.place_id,
    storedAt: stored.stored_at,
    agreed: {
      expectedOn: dayOrNull(stored.expected_on),
      leadDays: stored.lead_days,
      returnableUntil: dayOrNull(stored.returnable_until),
      adjustableUntil: dayOrNull(stored.adjustable_until),
      restockingPercent: decimalOrNull(stored.restocking_percent),
    },
    givenFree: stored.given_free,
    otherCurrency: stored.other_currency,
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
    JOIN lot l ON l.workspace_id = ${Prisma.raw(table.slice(-1))}.workspace_id AND l.id = lot_id
    WHERE ${only} ORDER BY on_day, id`;
  const receipts = groupedBy(await manyRows(tx, RECEIPT, parts("lot_receipt r")), ({ lot_id }) => lot_id);
  const payments = groupedBy(await manyRows(tx, PAYMENT, parts("lot_payment p")), ({ lot_id }) => lot_id);
  return found.map((stored) =>
    lotOfRow(
      stored,
      (receipts.get(stored.id) ?? []).filter(({ undone }) => !undone).map(receiptOfRow),
      paymentsMade(storedDay(stored.ordered_on), payments.get(stored.id) ?? []),
    ),
  );
}

/** One lot, a deleted one too. */
export async function lotWithin(tx: Tx, id: string): Promise<StoredLot | null> {
  return (await lotsWithin(tx, Prisma.sql`l.id = ${id}::uuid`))[0] ?? null;
}
