import type { LocalDate } from "../calendar/local-date.ts";
import { ONE, ZERO } from "../decimal.ts";
import type { ExposureFacts } from "../exposure/exposure.ts";
import type { WorkspaceExposure } from "../exposure/exposure-figures.ts";
import { convertFor } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import { PURCHASE_UNITS, type PurchaseUnit } from "../measure/units.ts";
import { goingPriceOn } from "../prices/going-price.ts";
import type { Observation } from "../prices/observation.ts";
import type { Offer } from "../prices/offer.ts";
import { offersOn } from "../prices/offers.ts";
import type { Store } from "../prices/store.ts";
import type { Valuation } from "../prices/valuation.ts";
import type { ExchangeRate } from "../rates/exchange-rate.ts";
import { rateOfDay } from "../rates/rate-of-day.ts";
import type { AisleFacts, AisleMaterial, AisleRegion, AisleStore } from "./aisle-facts.ts";
import { lastPaid } from "./last-paid.ts";

function aisleStore(store: Store): AisleStore {
  const { id, name, taxRegion, currency, pricesIncludeTax } = store;
  return {
    id,
    name,
    taxRegion,
    currency,
    pricesIncludeTax,
    discounts: store.discounts.map((discount) => ({ ...discount, percent: discount.percent.toFixed() })),
    importCharges:
      store.importCharges?.map((charge) => ({
        ...charge,
        percent: charge.percent.toFixed(),
        perOrder: charge.perOrder?.toFixed() ?? null,
      })) ?? null,
  };
}

function aisleRegions(valuation: Valuation, stores: readonly Store[]): AisleRegion[] {
  const codes = new Set([valuation.taxRegion, ...stores.map((store) => store.taxRegion)]);
  return [...valuation.regions.values()]
    .filter((region) => codes.has(region.code))
    .map(({ code, country, completeFrom, components }) => ({
      code,
      country,
      completeFrom,
      components: components.map(({ name, ratePercent, from, until, base, recoverable }) => ({
        name,
        ratePercent: ratePercent.toFixed(),
        from,
        until,
        base,
        recoverable,
      })),
    }));
}

/** Today's rate of each store's currency: one rate is enough for a price seen today. */
function aisleRates(valuation: Valuation, stores: readonly Store[]): AisleFacts["rates"] {
  const currencies = new Set(stores.map((store) => store.currency));
  currencies.delete(valuation.homeCurrency);
  return [...currencies].flatMap((base) => {
    const found = rateOfDay(valuation.rates, base, valuation.homeCurrency, valuation.today, valuation.today);
    if (!found.known) return [];
    const rate: ExchangeRate = { ...found, base, quote: valuation.homeCurrency };
    return [{ on: rate.on, base, quote: rate.quote, rate: rate.rate.toFixed(), source: rate.source }];
  });
}

/** Each store's cheapest offer for new material in a usual quantity, the cheapest first. */
function cheapestPerStore(offers: readonly Offer[]): Offer[] {
  const byStore = new Map<string, Offer>();
  for (const offer of offers) {
    if (offer.terms === "used" || offer.beforeImportCharges || offer.minQuantity.greaterThan(ONE)) continue;
    const before = byStore.get(offer.storeId);
    if (!before || offer.price.amount.lessThan(before.price.amount)) byStore.set(offer.storeId, offer);
  }
  return [...byStore.values()].sort((a, b) => a.price.amount.comparedTo(b.price.amount));
}

function unitsOf(material: Material): PurchaseUnit[] {
  return PURCHASE_UNITS.filter(
    (unit) => convertFor(material, { value: ONE, unit }, material.purchaseUnit).ok,
  );
}

function lastSeen(observations: readonly Observation[]): LocalDate | null {
  return observations.reduce<LocalDate | null>(
    (last, seen) => (last === null || seen.seenOn > last ? seen.seenOn : last),
    null,
  );
}

function aisleMaterial(material: Material, facts: ExposureFacts, exposure: WorkspaceExposure): AisleMaterial {
  const seen = facts.observations.filter((observation) => observation.materialId === material.id);
  const { offers } = offersOn(exposure.day, seen, material, facts.valuation);
  const going = goingPriceOn(exposure.day, seen, material, facts.valuation);
  const paid = lastPaid(facts, material, exposure.day);
  const open = exposure.projects
    .flatMap((project) => project.lines)
    .filter((line) => line.materialId === material.id)
    .reduce((total, line) => total.plus(line.open), ZERO);
  const project = facts.projects.find((known) => known.id === paid?.projectIds[0]);
  return {
    id: material.id,
    name: material.name,
    category: material.category,
    unit: material.purchaseUnit,
    units: unitsOf(material),
    dimensions: Object.fromEntries(
      Object.entries(material.dimensions).map(([name, size]) => [
        name,
        { value: size.value.toFixed(), unit: size.unit },
      ]),
    ),
    exemptFrom: material.exemptFrom,
    lastSeen: lastSeen(seen),
    open: open.toFixed(),
    best: cheapestPerStore(offers).map((offer) => ({
      storeId: offer.storeId,
      each: offer.price.amount.toFixed(),
      ageDays: offer.ageDays,
    })),
    going: going.known ? { each: going.price.amount.toFixed(), stores: going.stores } : null,
    paid: paid ? { each: paid.each.amount.toFixed(), on: paid.on, project: project?.name ?? null } : null,
  };
}

/**
 * The facts the aisle form works from, as text: stores, their taxes and rates of today, and each material with what is
 * known of it. The material seen last comes first. Rounds: never.
 */
export function aisleFacts(facts: ExposureFacts, exposure: WorkspaceExposure): AisleFacts {
  const { valuation } = facts;
  const stores = [...valuation.stores.values()].filter((store) => store.archivedOn === null);
  const seen = new Map<string, Observation[]>();
  for (const observation of facts.observations) {
    const known = seen.get(observation.materialId);
    if (known) known.push(observation);
    else seen.set(observation.materialId, [observation]);
  }
  const materials = [...facts.materials.values()]
    .filter((material) => material.archivedOn === null)
    .map((material) => aisleMaterial(material, seen.get(material.id) ?? [], facts, exposure))
    .sort((a, b) => (b.lastSeen ?? "").localeCompare(a.lastSeen ?? "") || a.name.localeCompare(b.name));
  return {
    today: valuation.today,
    homeCurrency: valuation.homeCurrency,
    taxRegion: valuation.taxRegion,
    registrations: valuation.registrations,
    regions: aisleRegions(valuation, stores),
    rates: aisleRates(valuation, stores),
    stores: stores.map(aisleStore),
    materials,
  };
}
