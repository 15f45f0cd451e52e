import pg from "pg";
import { v7 } from "uuid";
import { beforeAll, expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { addObservation } from "../../lib/data/observations.ts";
import { addStockEvent } from "../../lib/data/stock-events.ts";
import { countPlace } from "../../lib/data/stock-place-acts.ts";
import { placeCountEntry } from "../../lib/stock/stock-act-entry.ts";
import { freshDatabase } from "../support/database.ts";
import {
  accepted,
  ownerScope,
  someEvent,
  someObservationEntry,
  storedStock,
} from "../support/stored-things.ts";

// The database refuses what no entry could say either: whoever writes past lib/data is held to the same.
const url = await freshDatabase();
const scope = await ownerScope();
const { today } = scope;
let ids: Readonly<Record<string, string>> = {};

beforeAll(async () => {
  const stock = await storedStock(scope, plusDays(today, -5), {
    payments: [{ amount: "10", on: plusDays(today, -5) }],
    storedAt: "Shed",
  });
  const count = placeCountEntry.parse({ on: today, counts: [] });
  const placeId = stock.lot.placeId ?? "";
  const act = await accepted(countPlace(scope, placeId, v7(), count));
  const seen = someObservationEntry(stock.material.id, stock.store.id, today);
  const observed = await accepted(addObservation(scope, v7(), seen));
  const entry = someEvent("allocated", "1", today, { requirementId: stock.requirement.id });
  const event = await accepted(addStockEvent(scope, stock.lot.id, v7(), entry));
  ids = {
    store: stock.store.id,
    material: stock.material.id,
    project: stock.project.id,
    requirement: stock.requirement.id,
    lot: stock.lot.id,
    observation: observed.id,
    stock_event: event.id,
    storage_place: placeId,
    stock_act: act.id,
  };
});

/** A statement in the workspace, by the user above the policies; `:name` is the id of that thing. */
async function write(sql: string): Promise<void> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query("BEGIN");
    await client.query(
      "SELECT set_config('app.workspace', $1, true), set_config('app.reason', 'test', true)",
      [scope.workspaceId],
    );
    await client.query(sql.replaceAll(/:([a-z_]+)/g, (_, name: string) => `'${ids[name]}'`));
  } finally {
    await client.end();
  }
}

const CHANGES: Readonly<Record<string, readonly string[]>> = {
  workspace: [
    "home_currency = 'cad'",
    "home_currency = 'CA'",
    "recheck_days = 0",
    "recheck_days = 3651",
    "kind = 'third'",
    "name = ''",
  ],
  store: [
    "name = ''",
    "currency = 'dollars'",
    "trip_cost = -1, trip_currency = 'CAD'",
    "trip_cost = 5",
    "distance_km = -1",
    "return_days = 0",
    "price_adjustment_days = 3651",
    "lead_days = 0",
    "restocking_percent = 101",
  ],
  material: ["name = ''", "category = 'cars'", "recheck_days = 0", "dimensions = '[]'"],
  observation: [
    "amount = 0",
    "amount = -5",
    "amount = 'NaN'",
    "amount = 'Infinity'",
    "amount = 1e15",
    "amount = NULL",
    "amount = NULL, currency = NULL",
    "currency = 'C$'",
    "terms = 'none-left'",
    "terms = 'bargain'",
    "terms = 'quote'",
    "terms = 'quantity-break'",
    "per_quantity = 0",
    "per_quantity = 'NaN'",
    "min_quantity = 0",
    "min_quantity = 5, max_quantity = 4",
    "pack_size = 0",
    "from_day = '2026-02-02', until_day = '2026-02-01'",
    "seen_on = '1900-01-01'",
    "fees = '{}'",
  ],
  project: [
    "name = ''",
    "budget = -1, budget_currency = 'CAD'",
    "budget = 5",
    "budget = 5, budget_currency = 'cad'",
  ],
  project_status: ["status = 'asleep'"],
  requirement_revision: [
    "quantity = 0",
    "quantity = 'NaN'",
    "waste_percent = -1",
    "waste_percent = 1001",
    "budget_unit_price = 5",
  ],
  lot: [
    "origin = 'stolen'",
    "terms = 'none-left'",
    "quantity = 0",
    "paid_amount = -1",
    "paid_amount = 'Infinity'",
    "paid_currency = 'cad'",
    "paid_home = 5",
    "condition = 0",
    "condition = 1.01",
    "ordered_on = '1900-01-01'",
    "expected_on = ordered_on - 1",
    "returnable_until = ordered_on - 1",
    "adjustable_until = ordered_on - 1",
    "restocking_percent = -1",
    "lead_days = 0",
    "given_free = ''",
    "other_currency = ''",
    "fees = '{}'",
  ],
  lot_receipt: ["quantity = 0", "quantity = 'NaN'"],
  lot_payment: ["amount = -1", "home = -1"],
  storage_place: [
    "name = ''",
    "area = 0, area_unit = 'square-metre'",
    "volume = 3",
    "weight_unit = 'kilogram'",
  ],
  stock_act: ["kind = 'somehow'"],
};

const REFUSED = /violates (check|not-null) constraint|is never made into another/;

test.each(Object.entries(CHANGES).flatMap(([table, sets]) => sets.map((set) => [table, set] as const)))(
  "%s: %s is refused",
  async (table, set) => {
    await expect(write(`UPDATE ${table} SET ${set}`)).rejects.toThrow(REFUSED);
  },
);

const INSERTS: readonly (readonly [string, string])[] = [
  ["registration", "(tax, from_day, until_day) VALUES ('HST', '2025-02-01', '2025-01-01')"],
  ["money_rate", "(percent) VALUES (101)"],
  ["money_rate", "(percent) VALUES (-1)"],
  ["rate_source", "(currency, source) VALUES ('usd', 'a bank')"],
  ["exchange_rate", "(on_day, base, quote, rate, source) VALUES ('2026-01-01', 'USD', 'CAD', 0, 'a bank')"],
  [
    "exchange_rate",
    "(on_day, base, quote, rate, source) VALUES ('2026-01-01', 'USD', 'CAD', 'NaN', 'a bank')",
  ],
  ["exchange_rate", "(on_day, base, quote, rate, source) VALUES ('2026-01-01', 'CAD', 'CAD', 1, 'a bank')"],
  ["exchange_rate", "(on_day, base, quote, rate, source) VALUES ('1900-01-01', 'USD', 'CAD', 1, 'a bank')"],
  ["store_discount", "(store_id, percent) VALUES (:store, 101)"],
  ["store_import_charge", "(store_id, name, percent, recoverable) VALUES (:store, 'Duty', -1, false)"],
  ["requirement_alternative", "(requirement_id, material_id, factor) VALUES (:requirement, :material, 0)"],
  [
    "stock_event",
    "(id, lot_id, kind, quantity, on_day, entry_hash) VALUES (gen_random_uuid(), :lot, 'lost', 1, now(), '')",
  ],
  [
    "stock_event",
    "(id, lot_id, kind, quantity, on_day, entry_hash) VALUES (gen_random_uuid(), :lot, 'drawn', 0, now(), '')",
  ],
  [
    "stock_event",
    "(id, lot_id, kind, quantity, on_day, entry_hash) VALUES (gen_random_uuid(), :lot, 'allocated', 1, now(), '')",
  ],
  [
    "stock_event",
    "(id, lot_id, kind, quantity, on_day, amount, currency, entry_hash) VALUES (gen_random_uuid(), :lot, 'stored', 1, now(), 5, 'CAD', '')",
  ],
  [
    "stock_event",
    "(id, lot_id, kind, quantity, on_day, entry_hash) VALUES (gen_random_uuid(), :lot, 'stored', 0, now(), '')",
  ],
  [
    "stock_event",
    "(id, lot_id, kind, quantity, on_day, requirement_id, place_id, entry_hash) VALUES (gen_random_uuid(), :lot, 'allocated', 1, now(), :requirement, :storage_place, '')",
  ],
  [
    "stock_event",
    "(id, lot_id, kind, quantity, on_day, from_place_id, entry_hash) VALUES (gen_random_uuid(), :lot, 'drawn', 1, now(), :storage_place, '')",
  ],
  [
    "stock_event",
    "(id, lot_id, kind, quantity, on_day, place_id, from_place_id, entry_hash) VALUES (gen_random_uuid(), :lot, 'moved', 1, now(), :storage_place, :storage_place, '')",
  ],
  [
    "stock_event",
    "(id, lot_id, kind, quantity, on_day, amount, entry_hash) VALUES (gen_random_uuid(), :lot, 'sold', 1, now(), 5, '')",
  ],
];

test.each(INSERTS)("%s %s is refused", async (table, values) => {
  await expect(write(`INSERT INTO ${table} ${values}`)).rejects.toThrow(REFUSED);
});

test("one name among live things, one status and one revision a day, one rate a day and source", async () => {
  const copy = (table: string, columns: string) =>
    write(`INSERT INTO ${table} (id, ${columns}) SELECT gen_random_uuid(), ${columns} FROM ${table} LIMIT 1`);
  const doubled = /duplicate key value violates unique constraint/;
  const store = "name, tax_region, currency, prices_include_tax, import_charges_confirmed, entry_hash";
  await expect(copy("store", store)).rejects.toThrow(doubled);
  await expect(copy("material", "name, category, purchase_unit, entry_hash")).rejects.toThrow(doubled);
  await expect(copy("project", "name, entry_hash")).rejects.toThrow(doubled);
  await expect(copy("project_status", "project_id, status, from_day")).rejects.toThrow(doubled);
  const revision = "requirement_id, valid_from, quantity, unit, waste_percent, needed_by, accepts_used";
  await expect(copy("requirement_revision", revision)).rejects.toThrow(doubled);
  await expect(
    write(
      "INSERT INTO workspace SELECT gen_random_uuid(), kind, name, home_currency, tax_region, recheck_days, time_zone FROM workspace",
    ),
  ).rejects.toThrow(doubled);
});

test("what is in use cannot be deleted from under it", async () => {
  for (const table of ["store", "material", "project", "requirement"])
    await expect(write(`DELETE FROM ${table} WHERE id = :${table}`)).rejects.toThrow(
      "foreign key constraint",
    );
});

test("a change that says nothing wrong is taken", async () => {
  await write("UPDATE observation SET amount = 5, min_quantity = 4, max_quantity = 4");
  await write("UPDATE lot SET condition = 0.5, paid_home = 5, paid_home_currency = 'CAD'");
  await write("INSERT INTO money_rate (percent) VALUES (7)");
});
