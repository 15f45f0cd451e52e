import "server-only";
import type { Bill, BilledFee, BilledLine, Deposit, HandedBack, Rebate } from "../bills/bill.ts";
import { groupedBy } from "../exposure/exposure-facts.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import {
  type Columns,
  currencyOf,
  dayOrNull,
  decimalOrNull,
  digits,
  digitsOrNull,
  manyRows,
  storedDay,
  storedDecimal,
} from "./rows.ts";

/** A line as it is kept, with what was made of it. */
export type StoredLine = BilledLine &
  Readonly<{ observationId: string | null; lotId: string | null; stockEventId: string | null }>;
/** A bill as it is kept; deletedAt says when it was undone, with all it made. */
export type StoredBill = Omit<Bill, "lines"> &
  Readonly<{ id: string; lines: readonly StoredLine[]; deletedAt: string | null }>;

type Written<T> = { [K in keyof T]: T[K] extends boolean | string ? T[K] : string | null };
type StoredFee = Written<BilledFee>;

type BillRow = Readonly<{
  id: string;
  kind: Bill["kind"];
  store_id: string;
  on_day: string;
  until_day: string | null;
  currency: string;
  tax_region: string | null;
  tax_included: boolean;
  tax_rounding: Bill["taxRounding"];
  share_by: Bill["shareBy"];
  paid_in_cash: boolean;
  fees: readonly StoredFee[];
  deposits: readonly (Omit<Deposit, "amount"> & { amount: string })[];
  rebates: readonly (Omit<Rebate, "amount"> & { amount: string })[];
  printed_total: string | null;
  paid_home: string | null;
  any_quantity: boolean;
  received_on: string | null;
  stored_at: string | null;
  note: string | null;
  deleted_at: string | null;
}>;

type LineRow = Readonly<{
  bill_id: string;
  material_id: string | null;
  text: string | null;
  quantity: string;
  unit: PurchaseUnit;
  price_amount: string;
  price_quantity: string;
  price_unit: PurchaseUnit;
  discount_amount: string | null;
  discount_percent: string | null;
  exempt_from: readonly string[];
  fees: readonly StoredFee[];
  /** Of a bill kept before goods could leave a lot nothing is said of one. */
  returned:
    | (Omit<Written<HandedBack>, "lotId" | "ofThisBill"> & Partial<Pick<HandedBack, "lotId" | "ofThisBill">>)
    | null;
  keep_price: boolean;
  keep_lot: boolean;
  observation_id: string | null;
  lot_id: string | null;
  stock_event_id: string | null;
}>;

const BILL: Columns<BillRow> = {
  id: "b.id",
  kind: "b.kind",
  store_id: "b.store_id",
  on_day: "b.on_day",
  until_day: "b.until_day",
  currency: "b.currency",
  tax_region: "b.tax_region",
  tax_included: "b.tax_included",
  tax_rounding: "b.tax_rounding",
  share_by: "b.share_by",
  paid_in_cash: "b.paid_in_cash",
  fees: "b.fees",
  deposits: "b.deposits",
  rebates: "b.rebates",
  printed_total: "b.printed_total::text",
  paid_home: "b.paid_home::text",
  any_quantity: "b.any_quantity",
  received_on: "b.received_on",
  stored_at: "b.stored_at",
  note: "b.note",
  deleted_at: "b.deleted_at",
};

const LINE: Columns<LineRow> = {
  bill_id: "n.bill_id",
  material_id: "n.material_id",
  text: "n.text",
  quantity: "n.quantity::text",
  unit: "n.unit",
  price_amount: "n.price_amount::text",
  price_quantity: "n.price_quantity::text",
  price_unit: "n.price_unit",
  discount_amount: "n.discount_amount::text",
  discount_percent: "n.discount_percent::text",
  exempt_from: "n.exempt_from",
  fees: "n.fees",
  returned: "n.returned",
  keep_price: "n.keep_price",
  keep_lot: "n.keep_lot",
  observation_id: "n.observation_id",
  lot_id: "n.lot_id",
  stock_event_id: "n.stock_event_id",
};

type Shares = Readonly<{ amount: BilledFee["amount"]; percent: BilledFee["percent"] }>;

/** A fee, discount or restocking fee as a column keeps it: amounts as decimal text. */
export function writtenShares<T extends Shares>(given: T): Omit<T, keyof Shares> & Written<Shares> {
  return { ...given, amount: digitsOrNull(given.amount), percent: digitsOrNull(given.percent) };
}

function readShares<T extends { amount: string | null; percent: string | null }>(stored: T) {
  return { ...stored, amount: decimalOrNull(stored.amount), percent: decimalOrNull(stored.percent) };
}

/** A deposit or rebate as a column keeps it. */
export function writtenAmount<T extends Pick<Rebate, "amount">>(
  given: T,
): Omit<T, "amount"> & { amount: string } {
  return { ...given, amount: digits(given.amount) };
}

function lineOfRow(stored: LineRow): StoredLine {
  const off = {
    amount: decimalOrNull(stored.discount_amount),
    percent: decimalOrNull(stored.discount_percent),
  };
  return {
    materialId: stored.material_id,
    text: stored.text,
    quantity: storedDecimal(stored.quantity),
    unit: stored.unit,
    price: {
      amount: storedDecimal(stored.price_amount),
      per: { quantity: storedDecimal(stored.price_quantity), unit: stored.price_unit },
    },
    discount: off.amount === null && off.percent === null ? null : off,
    exemptFrom: stored.exempt_from,
    fees: stored.fees.map(readShares),
    returned:
      stored.returned === null ? null : { lotId: null, ofThisBill: false, ...readShares(stored.returned) },
    keepPrice: stored.keep_price,
    keepLot: stored.keep_lot,
    observationId: stored.observation_id,
    lotId: stored.lot_id,
    stockEventId: stored.stock_event_id,
  };
}

function billOfRow(stored: BillRow, lines: readonly StoredLine[]): StoredBill {
  return {
    id: stored.id,
    kind: stored.kind,
    storeId: stored.store_id,
    on: storedDay(stored.on_day),
    until: dayOrNull(stored.until_day),
    currency: currencyOf(stored.currency),
    taxRegion: stored.tax_region,
    taxIncluded: stored.tax_included,
    taxRounding: stored.tax_rounding,
    shareBy: stored.share_by,
    paidInCash: stored.paid_in_cash,
    lines,
    fees: stored.fees.map(readShares),
    deposits: stored.deposits.map((one) => ({ ...one, amount: storedDecimal(one.amount) })),
    rebates: stored.rebates.map((one) => ({ ...one, amount: storedDecimal(one.amount) })),
    printedTotal: decimalOrNull(stored.printed_total),
    paidHome: decimalOrNull(stored.paid_home),
    anyQuantity: stored.any_quantity,
    receivedOn: dayOrNull(stored.received_on),
    storedAt: stored.stored_at,
    note: stored.note,
    deletedAt: stored.deleted_at,
  };
}

/** Bills of `<rest>` (conditions, order and limit on a table b), each with its lines in their places. */
export async function billsWithin(tx: Tx, rest: Prisma.Sql): Promise<StoredBill[]> {
  const found = await manyRows(tx, BILL, Prisma.sql`FROM bill b ${rest}`);
  if (found.length === 0) return [];
  const ids = found.map(({ id }) => id);
  const lines = await manyRows(
    tx,
    LINE,
    Prisma.sql`FROM bill_line n WHERE n.bill_id = ANY(${ids}::text[]::uuid[]) ORDER BY n.bill_id, n.place`,
  );
  const byBill = groupedBy(lines, ({ bill_id }) => bill_id);
  return found.map((stored) => billOfRow(stored, (byBill.get(stored.id) ?? []).map(lineOfRow)));
}
