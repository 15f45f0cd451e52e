import type { ImportCharge, Store } from "./store.ts";
import type { Valuation } from "./valuation.ts";

const CODE_WITH_COUNTRY = /^[A-Z]{2}-/;

function country(code: string, valuation: Valuation): string | null {
  const named = valuation.regions.get(code)?.country ?? null;
  return named ?? (CODE_WITH_COUNTRY.test(code) ? code.slice(0, 2) : null);
}

/**
 * True when buying there crosses the border: the store's region lies in another country than the workspace's (the
 * country of the region, else the first two letters of an ISO 3166-2 code); where a country is not known, when the store
 * sells in another currency than the home one (R3).
 */
export function isForeign(store: Store, valuation: Valuation): boolean {
  const there = country(store.taxRegion, valuation);
  const home = country(valuation.taxRegion, valuation);
  if (there === null || home === null) return store.currency !== valuation.homeCurrency;
  return there !== home;
}

/** True for a foreign store whose import charges nobody confirmed yet: shown, never the best offer (R3). */
export function lacksImportCharges(store: Store, valuation: Valuation): boolean {
  return store.importCharges === null && isForeign(store, valuation);
}

/** What crossing the border adds at a store: none at a domestic one, whatever is entered there. */
export function importChargesOf(store: Store, valuation: Valuation): readonly ImportCharge[] {
  if (store.importCharges === null || store.importCharges.length === 0) return [];
  return isForeign(store, valuation) ? store.importCharges : [];
}
