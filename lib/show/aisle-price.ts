import { decimal } from "../decimal.ts";
import type { Dimensions, Material } from "../materials/material.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import { money } from "../money/money.ts";
import { allInPrice } from "../prices/all-in-price.ts";
import { lacksImportCharges } from "../prices/foreign-store.ts";
import type { AllInPrice } from "../prices/offer.ts";
import type { Store } from "../prices/store.ts";
import type { Valuation } from "../prices/valuation.ts";
import type { TaxRegion } from "../tax/region.ts";
import type { AisleFacts, AisleMaterial, AisleRegion, AisleStore } from "./aisle-facts.ts";

/** A tag as typed so far: amounts are canonical decimal text. */
export type TypedTag = Readonly<{
  amount: string;
  storeId: string;
  materialId: string;
  perQuantity: string;
  unit: PurchaseUnit;
  taxIncluded: boolean;
}>;

function region(plain: AisleRegion): TaxRegion {
  return {
    ...plain,
    name: plain.code,
    components: plain.components.map((component) => ({
      ...component,
      ratePercent: decimal(component.ratePercent),
      evidence: "",
      fromMemory: false,
    })),
  };
}

function store(plain: AisleStore): Store {
  return {
    ...plain,
    tripCost: null,
    distanceKm: null,
    returnDays: null,
    priceAdjustmentDays: null,
    restockingPercent: null,
    leadDays: null,
    archivedOn: null,
    discounts: plain.discounts.map((discount) => ({ ...discount, percent: decimal(discount.percent) })),
    importCharges:
      plain.importCharges === null
        ? null
        : plain.importCharges.map((charge) => ({
            ...charge,
            percent: decimal(charge.percent),
            perOrder: charge.perOrder === null ? null : decimal(charge.perOrder),
          })),
  };
}

type MaterialNamed = Pick<AisleMaterial, "id" | "name" | "category" | "unit" | "dimensions" | "exemptFrom">;

/** The valuation the plain facts were made from, as far as one price needs it. */
export function aisleValuation(facts: Omit<AisleFacts, "materials">): Valuation {
  return {
    homeCurrency: facts.homeCurrency,
    taxRegion: facts.taxRegion,
    regions: new Map(facts.regions.map((plain) => [plain.code, region(plain)])),
    registrations: facts.registrations,
    rates: { rates: facts.rates.map((rate) => ({ ...rate, rate: decimal(rate.rate) })), chosen: {} },
    stores: new Map(facts.stores.map((plain) => [plain.id, store(plain)])),
    recheckDays: 30,
    today: facts.today,
  };
}

/** A plain material back with its dimensions as decimals. */
export function aisleMaterial(plain: MaterialNamed): Material {
  const dimensions: Dimensions = Object.fromEntries(
    Object.entries(plain.dimensions).map(([name, size]) => [
      name,
      { value: decimal(size.value), unit: size.unit },
    ]),
  );
  const { id, name, category, exemptFrom } = plain;
  return {
    id,
    name,
    category,
    purchaseUnit: plain.unit,
    dimensions,
    identity: {},
    shelfLifeDays: null,
    sources: {},
    recheckDays: null,
    exemptFrom,
    note: null,
    archivedOn: null,
  };
}

/**
 * The all-in price of a tag as it is typed, by the same rule as everywhere (R4). null: no such store or material, or an
 * amount of nothing. Rounds: never.
 */
export function aislePrice(facts: AisleFacts, tag: TypedTag): AllInPrice | null {
  const at = facts.stores.find((known) => known.id === tag.storeId);
  const plain = facts.materials.find((known) => known.id === tag.materialId);
  const per = decimal(tag.perQuantity);
  if (!at || !plain || !per.isPositive() || per.isZero()) return null;
  return allInPrice(
    {
      id: "",
      materialId: plain.id,
      storeId: at.id,
      seenOn: facts.today,
      terms: "shelf",
      amount: money(tag.amount, at.currency),
      per: { quantity: per, unit: tag.unit },
      taxIncluded: tag.taxIncluded,
      taxRegion: null,
      exemptFrom: [],
      minQuantity: null,
      maxQuantity: null,
      packSize: null,
      from: null,
      until: null,
      fees: [],
      note: null,
    },
    aisleMaterial(plain),
    aisleValuation(facts),
    facts.today,
  );
}

/** True when a store's prices stand before import charges nobody has confirmed: shown, never the best offer (R3). */
export function isBeforeImportCharges(facts: AisleFacts, storeId: string): boolean {
  const valuation = aisleValuation(facts);
  const at = valuation.stores.get(storeId);
  return at !== undefined && lacksImportCharges(at, valuation);
}
