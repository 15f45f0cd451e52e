import type { ExposureFacts } from "../exposure/exposure.ts";
import type { WorkspaceExposure } from "../exposure/exposure-figures.ts";
import type { Observation } from "../prices/observation.ts";
import type { Store } from "../prices/store.ts";
import type { Valuation } from "../prices/valuation.ts";
import type { ExchangeRate } from "../rates/exchange-rate.ts";
import { rateOfDay } from "../rates/rate-of-day.ts";
import type { AisleFacts, AisleRegion, AisleStore } from "./aisle-facts.ts";
import { plainMaterial } from "./aisle-material.ts";

/** A store as text and numbers. Rounds: never. */
export function aisleStore(store: Store): AisleStore {
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

/** The regions of home and of the stores, or every one, as text and numbers. Rounds: never. */
export function aisleRegions(valuation: Valuation, stores: readonly Store[], every: boolean): AisleRegion[] {
  const codes = new Set([valuation.taxRegion, ...stores.map((store) => store.taxRegion)]);
  return [...valuation.regions.values()]
    .filter((region) => every || codes.has(region.code))
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

/**
 * The facts the aisle form works from, as text: stores, their taxes and rates of today, and each material with what is
 * known of it. The material seen last comes first. Regions: home's and the stores', or every one. Rounds: never.
 */
export function aisleFacts(
  facts: ExposureFacts,
  exposure: WorkspaceExposure,
  { everyRegion = false }: { everyRegion?: boolean } = {},
): AisleFacts {
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
    .map((material) => plainMaterial(material, seen.get(material.id) ?? [], facts, exposure))
    .sort((a, b) => (b.lastSeen ?? "").localeCompare(a.lastSeen ?? "") || a.name.localeCompare(b.name));
  return {
    today: valuation.today,
    homeCurrency: valuation.homeCurrency,
    taxRegion: valuation.taxRegion,
    registrations: valuation.registrations,
    regions: aisleRegions(valuation, stores, everyRegion),
    rates: aisleRates(valuation, stores),
    stores: stores.map(aisleStore),
    materials,
  };
}
