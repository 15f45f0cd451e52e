import "server-only";
import type { Category } from "../materials/material.ts";
import type { Store } from "../prices/store.ts";
import type { Tx } from "./client.ts";
import { Prisma } from "./generated/client.ts";
import { currencyOf, dayOrNull, decimalOrNull, moneyOrNull, row, rows, storedDecimal } from "./rows.ts";

type Dated = Readonly<{ from: string | null; until: string | null }>;
type StoreRow = Readonly<{
  id: string;
  name: string;
  tax_region: string;
  currency: string;
  trip_cost: string | null;
  trip_currency: string | null;
  prices_include_tax: boolean;
  distance_km: string | null;
  import_charges_confirmed: boolean;
  return_days: number | null;
  price_adjustment_days: number | null;
  restocking_percent: string | null;
  lead_days: number | null;
  archived_on: string | null;
  discounts: readonly (Dated & { category: Category | null; percent: string })[];
  import_charges: readonly (Dated & {
    name: string;
    percent: string;
    per_order: string | null;
    recoverable: boolean;
  })[];
}>;

const STORE = Prisma.sql`SELECT s.id, s.name, s.tax_region, s.currency, s.trip_cost::text, s.trip_currency,
  s.prices_include_tax, s.distance_km::text, s.import_charges_confirmed, s.archived_on,
  s.return_days, s.price_adjustment_days, s.restocking_percent::text, s.lead_days,
  (SELECT coalesce(json_agg(json_build_object('category', d.category, 'percent', d.percent::text, 'from', d.from_day,
    'until', d.until_day) ORDER BY d.category NULLS FIRST, d.from_day NULLS FIRST), '[]')
    FROM store_discount d WHERE d.workspace_id = s.workspace_id AND d.store_id = s.id) AS discounts,
  (SELECT coalesce(json_agg(json_build_object('name', c.name, 'percent', c.percent::text, 'per_order', c.per_order::text,
    'recoverable', c.recoverable, 'from', c.from_day, 'until', c.until_day) ORDER BY c.name, c.from_day NULLS FIRST), '[]')
    FROM store_import_charge c WHERE c.workspace_id = s.workspace_id AND c.store_id = s.id) AS import_charges
  FROM store s`;

const days = ({ from, until }: Dated) => ({ from: dayOrNull(from), until: dayOrNull(until) });

function storeOfRow(stored: StoreRow): Store {
  return {
    id: stored.id,
    name: stored.name,
    taxRegion: stored.tax_region,
    currency: currencyOf(stored.currency),
    tripCost: moneyOrNull(stored.trip_cost, stored.trip_currency),
    pricesIncludeTax: stored.prices_include_tax,
    distanceKm: decimalOrNull(stored.distance_km),
    discounts: stored.discounts.map((discount) => ({
      category: discount.category,
      percent: storedDecimal(discount.percent),
      ...days(discount),
    })),
    importCharges: stored.import_charges_confirmed
      ? stored.import_charges.map((charge) => ({
          name: charge.name,
          percent: storedDecimal(charge.percent),
          perOrder: decimalOrNull(charge.per_order),
          recoverable: charge.recoverable,
          ...days(charge),
        }))
      : null,
    returnDays: stored.return_days,
    priceAdjustmentDays: stored.price_adjustment_days,
    restockingPercent: decimalOrNull(stored.restocking_percent),
    leadDays: stored.lead_days,
    archivedOn: dayOrNull(stored.archived_on),
  };
}

/** Stores by name; archived ones too unless only the live are wanted. */
export async function storesWithin(tx: Tx, which: "all" | "live" | "archived" = "all"): Promise<Store[]> {
  const only = {
    all: Prisma.empty,
    live: Prisma.sql`WHERE s.archived_on IS NULL`,
    archived: Prisma.sql`WHERE s.archived_on IS NOT NULL`,
  }[which];
  return (await rows<StoreRow>(tx, Prisma.sql`${STORE} ${only} ORDER BY lower(s.name), s.id`)).map(
    storeOfRow,
  );
}

/** The store of an id in a transaction's workspace, or null. */
export async function storeWithin(tx: Tx, id: string): Promise<Store | null> {
  const found = await row<StoreRow>(tx, Prisma.sql`${STORE} WHERE s.id = ${id}::uuid`);
  return found === null ? null : storeOfRow(found);
}
