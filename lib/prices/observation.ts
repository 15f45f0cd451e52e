import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import type { Money } from "../money/money.ts";

export const TERMS = [
  "shelf",
  "special",
  "clearance",
  "quantity-break",
  "quote",
  "used",
  "paid",
  "none-left",
] as const;
export type Terms = (typeof TERMS)[number];

/** A fee beside the price (R4): an amount (in the observation's currency) or a percent, per unit or once per order. */
export type Fee = Readonly<{
  name: string;
  amount: Decimal | null;
  percent: Decimal | null;
  basis: "unit" | "order";
  /** An order fee is waived when the order reaches this amount before tax. */
  freeFrom: Decimal | null;
  taxable: boolean;
}>;

/** One price seen at one store on one day, exactly as seen. amount is null for none-left only. */
export type Observation = Readonly<{
  id: string;
  materialId: string;
  storeId: string;
  seenOn: LocalDate;
  terms: Terms;
  amount: Money | null;
  /** The amount buys this much, e.g. 3 pieces ("3 for 20.00") or 1 mbf. */
  per: Readonly<{ quantity: Decimal; unit: PurchaseUnit }>;
  taxIncluded: boolean;
  /** Delivery address's region when delivered; null: picked up, the store's region (R3). */
  taxRegion: string | null;
  exemptFrom: readonly string[];
  /** In the material's purchase units. */
  minQuantity: Decimal | null;
  maxQuantity: Decimal | null;
  packSize: Decimal | null;
  from: LocalDate | null;
  until: LocalDate | null;
  fees: readonly Fee[];
  note: string | null;
}>;
