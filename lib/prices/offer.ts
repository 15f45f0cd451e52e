import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import type { Money } from "../money/money.ts";
import type { Terms } from "./observation.ts";

/** A charge once per order at a store, home currency, all in; waived when the order reaches freeFrom (home, before tax). */
export type OrderCharge = Readonly<{ name: string; amount: Money; freeFrom: Money | null }>;

/** A price reduced to one basis: home currency, per one purchase unit of the material, after fees and non-recoverable tax. */
export type AllInPrice =
  | Readonly<{
      known: true;
      /** Unrounded. */
      price: Money;
      unit: PurchaseUnit;
      /** Before any tax, home currency: what an order's freeFrom is measured by. */
      beforeTax: Money;
      /** All tax, recoverable too: what leaves the account. */
      cash: Money;
      orderCharges: readonly OrderCharge[];
      /** Set when the rate used was 8 to 45 days old. */
      staleRate: boolean;
    }>
  | Readonly<{ known: false; reason: NoPriceReason }>;

export const NO_PRICE_REASONS = [
  "tax-unknown",
  "rate-unknown",
  "unit-not-convertible",
  "region-unknown",
  "store-unknown",
  "no-amount",
] as const;
export type NoPriceReason = (typeof NO_PRICE_REASONS)[number];

export const LEFT_OUT_REASONS = [
  ...NO_PRICE_REASONS,
  "lapsed",
  "not-yet",
  "replaced",
  "none-left",
  "too-old",
  "receipt",
  "used-not-accepted",
  "before-import-charges",
  "nothing-left-of-it",
  "archived-store",
] as const;
export type LeftOutReason = (typeof LEFT_OUT_REASONS)[number];

/** What an observation means for a buyer on a day. Quantities in purchase units. */
export type Offer = Readonly<{
  observationId: string;
  materialId: string;
  storeId: string;
  terms: Terms;
  seenOn: LocalDate;
  ageDays: number;
  stale: boolean;
  /** Home currency per purchase unit, unrounded. */
  price: Money;
  beforeTax: Money;
  cash: Money;
  unit: PurchaseUnit;
  minQuantity: Decimal;
  maxQuantity: Decimal | null;
  packSize: Decimal;
  /** Last day it is known to hold; null when open (shelf, break). */
  lapsesOn: LocalDate | null;
  orderCharges: readonly OrderCharge[];
  /** A foreign store whose import charges are not confirmed: shown, never the best offer (R3). */
  beforeImportCharges: boolean;
  staleRate: boolean;
  /** How far the store is, for ties (R6); null: not known. */
  distanceKm: Decimal | null;
}>;

/** An observation that is no offer on the day, and why. */
export type LeftOut = Readonly<{ observationId: string; storeId: string; reason: LeftOutReason }>;

/** So much of one offer. cost: home currency, unrounded. */
export type Take = Readonly<{ offer: Offer; quantity: Decimal; cost: Money }>;

/** The cheapest way found to cover a quantity. */
export type Cover = Readonly<{
  quantity: Decimal;
  takes: readonly Take[];
  /** Sum of the takes, rounded once to the minor unit; without order charges. */
  cost: Money;
  /** Bought beyond the quantity because that is cheaper or packs and minimums ask for it. */
  over: Decimal;
  /** What no offer covers. */
  uncovered: Decimal;
  /** Part of cost resting on stale offers. */
  restsOnStale: Money;
}>;

/** Median of stores' shelf prices (R7). kind "older": none fresh, up to three recheck intervals; "interpolated": a past day between two sightings. */
export type GoingPrice =
  | Readonly<{
      known: true;
      price: Money;
      unit: PurchaseUnit;
      stores: number;
      kind: "fresh" | "older" | "interpolated";
    }>
  | Readonly<{ known: false }>;
