import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import type { Money } from "../money/money.ts";
import type { Fee, Terms } from "../prices/observation.ts";

export const LOT_ORIGINS = ["bought", "special-order", "salvaged", "left-over"] as const;
export type LotOrigin = (typeof LOT_ORIGINS)[number];

/** What the receipt says, for the whole quantity. */
export type Paid = Readonly<{
  amount: Decimal;
  currency: CurrencyCode;
  taxIncluded: boolean;
  taxRegion: string | null;
  exemptFrom: readonly string[];
  fees: readonly Fee[];
}>;

/** Money out on a day, in the currency of `paid`; home: what the card was charged, where known. */
export type Payment = Readonly<{ amount: Decimal; on: LocalDate; home: Decimal | null }>;
export type Receipt = Readonly<{ quantity: Decimal; on: LocalDate }>;

/** Stock acquired at one time at one cost. quantity in the material's purchase units. */
export type Lot = Readonly<{
  id: string;
  materialId: string;
  origin: LotOrigin;
  storeId: string | null;
  /** Terms it was bought under, when known: what made the discount (R10). */
  terms: Terms | null;
  observationId: string | null;
  quantity: Decimal;
  paid: Paid;
  /** Home amount charged for the whole, where known: fixes the rate (R9). */
  paidHome: Money | null;
  orderedOn: LocalDate;
  receipts: readonly Receipt[];
  payments: readonly Payment[];
  /** 1 for new; the share of a new one's going price a salvaged one is worth. */
  condition: Decimal;
  storedAt: string | null;
  note: string | null;
}>;

export const STOCK_EVENT_KINDS = [
  "allocated",
  "released",
  "drawn",
  "returned",
  "sold",
  "written-off",
  "found",
  "missing",
] as const;
export type StockEventKind = (typeof STOCK_EVENT_KINDS)[number];

/** One dated thing that happened to a lot. amount: refund or proceeds, currency of its own. sequence: order of recording, breaks ties of a day. */
export type StockEvent = Readonly<{
  id: string;
  lotId: string;
  kind: StockEventKind;
  quantity: Decimal;
  on: LocalDate;
  requirementId: string | null;
  amount: Money | null;
  reason: string | null;
  sequence: number;
}>;
