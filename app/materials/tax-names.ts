import type { Valuation } from "../../lib/prices/valuation.ts";
import { taxNames } from "../../lib/show/tax-text.ts";

/** The taxes a price of the workspace can carry: those of its own region, its stores' regions, and those already named. */
export function taxesToChoose(valuation: Valuation, named: readonly string[]): string[] {
  const regions = [valuation.taxRegion, ...[...valuation.stores.values()].map((store) => store.taxRegion)];
  return taxNames(
    regions.flatMap((code) => valuation.regions.get(code) ?? []),
    named,
  );
}
