import "server-only";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Valuation } from "../prices/valuation.ts";
import type { MoneyRate } from "../stock/carrying.ts";
import type { Tx } from "./client.ts";
import { ratesWithin } from "./exchange-rates.ts";
import { storesWithin } from "./store-rows.ts";
import { regionsWithin } from "./tax-regions.ts";
import { todayOf, workspaceWithin } from "./workspaces.ts";

/** What prices are valued with, and what money costs. */
export type Valued = Readonly<{ valuation: Valuation; moneyRates: readonly MoneyRate[] }>;

/** first: nothing is valued on an earlier day; left out, every exchange rate there is comes along. */
export async function valuedWithin(tx: Tx, first?: LocalDate): Promise<Valued> {
  const workspace = await workspaceWithin(tx);
  const stores = await storesWithin(tx);
  return {
    valuation: {
      homeCurrency: workspace.homeCurrency,
      taxRegion: workspace.taxRegion,
      regions: await regionsWithin(tx),
      registrations: workspace.registrations,
      rates: { rates: await ratesWithin(tx, first), chosen: workspace.rateSources },
      stores: new Map(stores.map((store) => [store.id, store])),
      recheckDays: workspace.recheckDays,
      today: todayOf(workspace),
    },
    moneyRates: workspace.moneyRates,
  };
}
