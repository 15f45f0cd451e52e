import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Valuation } from "../prices/valuation.ts";
import type { MoneyRate } from "../stock/carrying.ts";
import { inSnapshot, type Scope, type Tx } from "./client.ts";
import { ratesWithin } from "./exchange-rates.ts";
import { storesWithin } from "./store-rows.ts";
import { regionsWithin } from "./tax-regions.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";

/** What prices are valued with, and what money costs. */
export type Valued = Readonly<{ valuation: Valuation; moneyRates: readonly MoneyRate[] }>;

/** span: the days something is valued on; left out, every rate there is comes along. */
export async function valuedWithin(
  tx: Tx,
  span?: Readonly<{ from: LocalDate; until: LocalDate }>,
): Promise<Valued> {
  const workspace = await workspaceWithin(tx);
  const stores = await storesWithin(tx);
  return {
    valuation: {
      homeCurrency: workspace.homeCurrency,
      taxRegion: workspace.taxRegion,
      regions: await regionsWithin(tx),
      registrations: workspace.registrations,
      rates: { rates: await ratesWithin(tx, span), chosen: workspace.rateSources },
      stores: new Map(stores.map((store) => [store.id, store])),
      recheckDays: workspace.recheckDays,
      today: todayOf(workspace),
    },
    moneyRates: workspace.moneyRates,
  };
}

/** The workspace's currency, taxes, stores (archived ones too) and every exchange rate: what any price of any day is valued with. */
export function valuationOf(scope: Scope): Promise<Valuation> {
  return inSnapshot(scope, async (tx) => (await valuedWithin(tx)).valuation);
}
