import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { Category } from "../materials/material.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import type { Money } from "../money/money.ts";

/** A standing discount of the workspace at a store: dated, per category (null: all), before tax (R4). */
export type StandingDiscount = Readonly<{
  category: Category | null;
  percent: Decimal;
  from: LocalDate | null;
  until: LocalDate | null;
}>;

/** What crossing the border costs: percent of the price before foreign tax, and an amount per order (R3). */
export type ImportCharge = Readonly<{
  name: string;
  percent: Decimal;
  perOrder: Decimal | null;
  recoverable: boolean;
  from: LocalDate | null;
  until: LocalDate | null;
}>;

/** Where prices are seen. importCharges null: not confirmed yet; an empty list: confirmed as none. */
export type Store = Readonly<{
  id: string;
  name: string;
  taxRegion: string;
  currency: CurrencyCode;
  tripCost: Money | null;
  pricesIncludeTax: boolean;
  /** Minutes or kilometres do not matter here: nearer is a smaller number; null is unknown (ties of R6). */
  distanceKm: Decimal | null;
  discounts: readonly StandingDiscount[];
  importCharges: readonly ImportCharge[] | null;
  /** What a lot bought here is agreed on beside its price: days it is taken back, days a lower price is paid back, percent kept
   * of a return, days an order takes. null: not said. */
  returnDays: number | null;
  priceAdjustmentDays: number | null;
  restockingPercent: Decimal | null;
  leadDays: number | null;
  archivedOn: LocalDate | null;
}>;
