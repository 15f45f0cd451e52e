import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import type { CurrencyCode } from "../money/currencies.ts";

export const BILL_KINDS = ["receipt", "quote"] as const;
export type BillKind = (typeof BILL_KINDS)[number];

/** How a seller rounds tax: once on the bill or on every line; each component by itself or all of them together. */
export const TAX_ROUNDINGS = ["per-bill", "per-line", "per-bill-together", "per-line-together"] as const;
export type TaxRounding = (typeof TAX_ROUNDINGS)[number];

/** What delivery and fees are shared over the lines by. */
export const SHARE_BASES = ["value", "weight", "count"] as const;
export type ShareBasis = (typeof SHARE_BASES)[number];

/** A fee as billed: an amount or a percent. On a line the amount is per one of its unit; on the bill, for the whole. */
export type BilledFee = Readonly<{
  name: string;
  amount: Decimal | null;
  percent: Decimal | null;
  taxable: boolean;
}>;

/** Cash that comes back with the pallet: no cost until forfeited (R4). amount: for all of them. */
export type Deposit = Readonly<{ name: string; amount: Decimal; taxable: boolean; forfeited: boolean }>;

/** Claimed by mail after the purchase: the tax stays on the full price. */
export type Rebate = Readonly<{ name: string; amount: Decimal }>;

/**
 * Goods handed back; the fee kept by the store, and whether it lessens the tax given back. lotId: the lot they are of;
 * ofThisBill: one this bill itself makes. Neither: of no lot, only the money is kept.
 */
export type HandedBack = Readonly<{
  amount: Decimal | null;
  percent: Decimal | null;
  taxable: boolean;
  lotId: string | null;
  ofThisBill: boolean;
}>;

/** One line as printed: so much of a material or of something named, at a price for so much ("3 for 20"). */
export type BilledLine = Readonly<{
  materialId: string | null;
  text: string | null;
  quantity: Decimal;
  unit: PurchaseUnit;
  price: Readonly<{ amount: Decimal; per: Readonly<{ quantity: Decimal; unit: PurchaseUnit }> }>;
  /** Off the line before tax; an amount is for the whole line. */
  discount: Readonly<{ amount: Decimal | null; percent: Decimal | null }> | null;
  exemptFrom: readonly string[];
  fees: readonly BilledFee[];
  returned: HandedBack | null;
  /** Whether the line is kept as a price seen, and as stock. */
  keepPrice: boolean;
  keepLot: boolean;
}>;

/** A receipt or a quote as the seller wrote it. taxRegion null: picked up, the store's. paidHome: what the card was charged. */
export type Bill = Readonly<{
  kind: BillKind;
  storeId: string;
  on: LocalDate;
  /** The last day of a quote. */
  until: LocalDate | null;
  currency: CurrencyCode;
  taxRegion: string | null;
  taxIncluded: boolean;
  taxRounding: TaxRounding;
  shareBy: ShareBasis;
  paidInCash: boolean;
  lines: readonly BilledLine[];
  fees: readonly BilledFee[];
  deposits: readonly Deposit[];
  rebates: readonly Rebate[];
  printedTotal: Decimal | null;
  paidHome: Decimal | null;
  /** A quote's prices hold for less than was quoted, too. */
  anyQuantity: boolean;
  /** null: not received yet. */
  receivedOn: LocalDate | null;
  storedAt: string | null;
  note: string | null;
}>;
