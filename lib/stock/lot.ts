import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import type { Money } from "../money/money.ts";
import type { Fee, Terms } from "../prices/observation.ts";

export const LOT_ORIGINS = ["bought", "special-order", "salvaged", "left-over"] as const;
export type LotOrigin = (typeof LOT_ORIGINS)[number];

/** One tax as a receipt shows it, by its component's name; zero or more. */
export type BilledTax = Readonly<{ name: string; amount: Decimal }>;

/** What the receipt says, for the whole quantity. taxes: as it shows them, of amount and fees; null: reckoned by the rates. */
export type Paid = Readonly<{
  amount: Decimal;
  currency: CurrencyCode;
  taxIncluded: boolean;
  taxRegion: string | null;
  exemptFrom: readonly string[];
  fees: readonly Fee[];
  taxes: readonly BilledTax[] | null;
}>;

/** Money out on a day, in the currency of `paid`; home: what the card was charged, where known. */
export type Payment = Readonly<{
  amount: Decimal;
  on: LocalDate;
  home: Decimal | null;
  id?: string | undefined;
}>;
/** What came in on a day. placeId: where it was put, if not where the lot was said to go; id: null before it is stored. */
export type Receipt = Readonly<{
  quantity: Decimal;
  on: LocalDate;
  id?: string | undefined;
  placeId?: string | null | undefined;
}>;

/**
 * What was agreed beside the price, copied from the store when it was bought: the day an order is expected, the last day it
 * is taken back, the last day a lower price of the store is paid back, percent kept of what is returned. null: not said.
 */
export type Agreed = Readonly<{
  expectedOn: LocalDate | null;
  leadDays: number | null;
  returnableUntil: LocalDate | null;
  adjustableUntil: LocalDate | null;
  restockingPercent: Decimal | null;
}>;
export const NOTHING_AGREED: Agreed = {
  expectedOn: null,
  leadDays: null,
  returnableUntil: null,
  adjustableUntil: null,
  restockingPercent: null,
};

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
  /** Where what comes in is put, and that place's name; null: nowhere said. */
  placeId: string | null;
  storedAt: string | null;
  agreed: Agreed;
  /** Why nothing was paid for what was bought. */
  givenFree: string | null;
  /** Why it was paid in another currency than the store's. */
  otherCurrency: string | null;
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
  "moved",
  "stored",
] as const;
export type StockEventKind = (typeof STOCK_EVENT_KINDS)[number];

/**
 * One dated thing that happened to a lot. amount: refund or proceeds; of `stored` what storing it cost, of `moved` what
 * moving it cost; currency of its own. quantity: zero for `stored`, which is of the whole lot. placeId: of `moved` where to
 * (null: on site, not stored), else where it was taken from or found (null: not said); fromPlaceId: of `moved` where from.
 * sequence: order of recording, breaks ties of a day. actId: what it is undone together with.
 */
export type StockEvent = Readonly<{
  id: string;
  lotId: string;
  kind: StockEventKind;
  quantity: Decimal;
  on: LocalDate;
  requirementId: string | null;
  amount: Money | null;
  reason: string | null;
  placeId: string | null;
  fromPlaceId: string | null;
  actId?: string | null | undefined;
  sequence: number;
}>;
