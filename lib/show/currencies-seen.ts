import type { CurrencyCode } from "../money/currencies.ts";
import type { Observation } from "../prices/observation.ts";
import type { Valuation } from "../prices/valuation.ts";

/** The currencies a price can be looked at in: the home one first, then those of tags, of stores and of published rates, by code. */
export function currenciesSeen(
  facts: Readonly<{ observations: readonly Observation[]; valuation: Valuation }>,
): CurrencyCode[] {
  const { homeCurrency, stores, rates } = facts.valuation;
  const others = [
    ...facts.observations.flatMap(({ amount }) => amount?.currency ?? []),
    ...[...stores.values()].map(({ currency }) => currency),
    ...rates.rates.flatMap(({ base, quote }) => [base, quote]),
  ];
  return [homeCurrency, ...[...new Set(others)].filter((code) => code !== homeCurrency).sort()];
}
