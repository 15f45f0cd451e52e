import type { LocalDate } from "../calendar/local-date.ts";
import type { Category, DimensionName } from "../materials/material.ts";
import type { PurchaseUnit, UnitCode } from "../measure/units.ts";
import type { CurrencyCode } from "../money/currencies.ts";

/**
 * What the aisle form knows without asking the server: text, numbers and nothing else, so that it can cross to the
 * browser and be kept there. Decimals are text. What was last known of each material stands beside it.
 */
export type AisleFacts = Readonly<{
  today: LocalDate;
  homeCurrency: CurrencyCode;
  taxRegion: string;
  registrations: readonly PlainSpan<{ tax: string }>[];
  regions: readonly AisleRegion[];
  rates: readonly Readonly<{
    on: LocalDate;
    base: CurrencyCode;
    quote: CurrencyCode;
    rate: string;
    source: string;
  }>[];
  stores: readonly AisleStore[];
  materials: readonly AisleMaterial[];
}>;

export type PlainSpan<T> = Readonly<T & { from: LocalDate | null; until: LocalDate | null }>;

export type AisleRegion = Readonly<{
  code: string;
  country: string | null;
  completeFrom: LocalDate;
  components: readonly Readonly<{
    name: string;
    ratePercent: string;
    from: LocalDate;
    until: LocalDate | null;
    base: "price" | "price-plus-other-tax";
    recoverable: boolean;
  }>[];
}>;

export type AisleStore = Readonly<{
  id: string;
  name: string;
  taxRegion: string;
  currency: CurrencyCode;
  pricesIncludeTax: boolean;
  discounts: readonly PlainSpan<{ category: Category | null; percent: string }>[];
  importCharges:
    | readonly PlainSpan<{ name: string; percent: string; perOrder: string | null; recoverable: boolean }>[]
    | null;
}>;

export type AisleMaterial = Readonly<{
  id: string;
  name: string;
  category: Category;
  unit: PurchaseUnit;
  /** Units a tag of it can be priced in, its own first. */
  units: readonly PurchaseUnit[];
  dimensions: Readonly<Partial<Record<DimensionName, Readonly<{ value: string; unit: UnitCode }>>>>;
  exemptFrom: readonly string[];
  /** The day it was last seen anywhere: the form lists the newest first. */
  lastSeen: LocalDate | null;
  /** Open need over all jobs, in its unit. */
  open: string;
  /** The cheapest offer of each store, home currency per unit, unrounded; the cheapest first. */
  best: readonly Readonly<{ storeId: string; each: string; ageDays: number }>[];
  going: Readonly<{ each: string; stores: number }> | null;
  paid: Readonly<{ each: string; on: LocalDate; project: string | null }> | null;
}>;
