import { type LocalDate, localDate, plusDays } from "../../lib/calendar/local-date.ts";
import { type Decimal, decimal, ONE } from "../../lib/decimal.ts";
import type { Material } from "../../lib/materials/material.ts";
import type { CurrencyCode } from "../../lib/money/currencies.ts";
import { money } from "../../lib/money/money.ts";
import type { Fee, Observation } from "../../lib/prices/observation.ts";
import type { Offer } from "../../lib/prices/offer.ts";
import type { Store } from "../../lib/prices/store.ts";
import type { Valuation } from "../../lib/prices/valuation.ts";
import type { ExchangeRate } from "../../lib/rates/exchange-rate.ts";
import type { TaxComponent, TaxRegion } from "../../lib/tax/region.ts";
import { someMaterial } from "./some-material.ts";

export const day = localDate;
/** Today of the examples; taxes and rates reach well to either side. */
export const TODAY = day("2026-03-02");

/** A day so many days before today (after it when negative). */
export function daysAgo(days: number): LocalDate {
  return plusDays(TODAY, -days);
}

export function component(name: string, percent: string, given: Partial<TaxComponent> = {}): TaxComponent {
  return {
    name,
    ratePercent: decimal(percent),
    from: day("2010-01-01"),
    until: null,
    base: "price",
    recoverable: true,
    evidence: "made up for the test",
    fromMemory: false,
    ...given,
  };
}

export function region(code: string, components: TaxComponent[], given: Partial<TaxRegion> = {}): TaxRegion {
  return { code, name: code, country: null, completeFrom: day("2010-01-01"), components, ...given };
}

/** A region where 15 % became 14 % on 2025-04-01, one without tax, and one across the border. */
export const CHANGED = region("CA-NS", [
  component("HST", "15", { until: day("2025-03-31") }),
  component("HST", "14", { from: day("2025-04-01") }),
]);
export const UNTAXED = region("CA-XX", []);
export const MAINE = region("US-ME", [component("Sales tax", "5.5", { recoverable: false })]);

export function store(id: string, given: Partial<Store> = {}): Store {
  return {
    id,
    name: id,
    taxRegion: "CA-XX",
    currency: "CAD",
    tripCost: null,
    pricesIncludeTax: false,
    distanceKm: null,
    discounts: [],
    importCharges: null,
    returnDays: null,
    priceAdjustmentDays: null,
    restockingPercent: null,
    leadDays: null,
    archivedOn: null,
    ...given,
  };
}

export function rate(on: string, base: CurrencyCode, quote: CurrencyCode, value: string): ExchangeRate {
  return { on: day(on), base, quote, rate: decimal(value), source: "the bank" };
}

/** A workspace in Nova Scotia, not registered for any tax; stores "near" and "far" without tax. */
export function valuation(
  given: Partial<Omit<Valuation, "stores" | "rates" | "regions">> & {
    stores?: readonly Store[];
    rates?: readonly ExchangeRate[];
    regions?: readonly TaxRegion[];
  } = {},
): Valuation {
  const { stores = [store("near"), store("far")], rates = [], regions = [], ...rest } = given;
  return {
    homeCurrency: "CAD",
    taxRegion: "CA-NS",
    registrations: [],
    recheckDays: 30,
    today: TODAY,
    ...rest,
    regions: new Map([CHANGED, UNTAXED, MAINE, ...regions].map((one) => [one.code, one])),
    rates: { rates, chosen: {} },
    stores: new Map(stores.map((one) => [one.id, one])),
  };
}

export const SHEET: Material = someMaterial(
  "sheet",
  { faceWidth: "4 ft", faceLength: "8 ft" },
  { id: "sheet", category: "sheet-goods" },
);

export function fee(name: string, given: Partial<Fee>): Fee {
  return { name, amount: null, percent: null, basis: "unit", freeFrom: null, taxable: false, ...given };
}

let count = 0;

/** A shelf price of one sheet at "near", before tax, seen today; ids grow with each call. */
export function observation(
  amount: string | null,
  given: Partial<Observation> & { currency?: CurrencyCode } = {},
): Observation {
  const { currency = "CAD", ...rest } = given;
  count += 1;
  return {
    id: `seen-${String(count).padStart(6, "0")}`,
    materialId: "sheet",
    storeId: "near",
    seenOn: TODAY,
    terms: amount === null ? "none-left" : "shelf",
    amount: amount === null ? null : money(amount, currency),
    per: { quantity: ONE, unit: "sheet" },
    taxIncluded: false,
    taxRegion: null,
    exemptFrom: [],
    minQuantity: null,
    maxQuantity: null,
    packSize: null,
    from: null,
    until: null,
    fees: [],
    note: null,
    ...rest,
  };
}

type Sizes = Readonly<{ min?: string | number; max?: string | number | null; pack?: string | number }>;

/** An offer at a price per sheet, with sizes as plain numbers; ids grow with each call. */
export function offerAt(price: string | Decimal, sizes: Sizes = {}, given: Partial<Offer> = {}): Offer {
  count += 1;
  const each = money(price, "CAD");
  return {
    observationId: `seen-${String(count).padStart(6, "0")}`,
    materialId: "sheet",
    storeId: "near",
    terms: "shelf",
    seenOn: TODAY,
    ageDays: 0,
    stale: false,
    price: each,
    beforeTax: each,
    cash: each,
    unit: "sheet",
    minQuantity: decimal(sizes.min ?? 1),
    maxQuantity: sizes.max === undefined || sizes.max === null ? null : decimal(sizes.max),
    packSize: decimal(sizes.pack ?? 1),
    lapsesOn: null,
    orderCharges: [],
    beforeImportCharges: false,
    staleRate: false,
    distanceKm: null,
    ...given,
  };
}
