import type { LocalDate } from "../calendar/local-date.ts";
import type { CurrencyCode } from "../money/currencies.ts";
import type { RateBook } from "../rates/exchange-rate.ts";
import type { Registration, TaxRegion } from "../tax/region.ts";
import type { Store } from "./store.ts";

/** What a price is valued with: the workspace's currency, its taxes, rates and stores. */
export type Valuation = Readonly<{
  homeCurrency: CurrencyCode;
  /** The workspace's own region: says which stores are foreign. */
  taxRegion: string;
  regions: ReadonlyMap<string, TaxRegion>;
  registrations: readonly Registration[];
  rates: RateBook;
  stores: ReadonlyMap<string, Store>;
  recheckDays: number;
  /** Today in the workspace's time zone: rates up to 45 days old are used for it only (R2). */
  today: LocalDate;
}>;
