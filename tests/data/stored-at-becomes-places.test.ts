import { cpSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import pg from "pg";
import { expect, inject, test } from "vitest";
import { migrate } from "../../lib/launch/migrate.mjs";
import { ROOT } from "../../lib/launch/paths.mjs";
import { onConnection } from "../../lib/launch/postgres-connection.mjs";
import { withDatabase } from "../support/test-server.ts";

const ALL = join(ROOT, "prisma", "migrations");
const OWNER = "00000000-0000-4000-8000-000000000001";
const DEMO = "00000000-0000-4000-8000-000000000002";

/** An empty database, migrated only as far as before the places. */
async function before(): Promise<string> {
  const { name, serverUrl } = inject("template");
  const database = `${name}_places_${process.pid}`;
  await onConnection(serverUrl, (client) => client.query(`create database ${database}`));
  const url = withDatabase(serverUrl, database);
  const folder = mkdtempSync(join(tmpdir(), "dunnage-places-"));
  for (const one of readdirSync(ALL).filter((known) => known < "20260108"))
    cpSync(join(ALL, one), join(folder, one), { recursive: true });
  await migrate(url, folder);
  rmSync(folder, { recursive: true, force: true });
  return url;
}

test("what was typed as text becomes a place per name and workspace; nothing of it is lost", async () => {
  const url = await before();
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  for (const [id, kind] of [
    [OWNER, "owner"],
    [DEMO, "demo"],
  ]) {
    await client.query("BEGIN");
    await client.query("SELECT set_config('app.workspace', $1, true)", [id]);
    await client.query(
      `INSERT INTO workspace (id, kind, name, home_currency, tax_region, time_zone)
       VALUES ($1, $2, $2, 'CAD', 'CA-NS', 'America/Halifax')`,
      [id, kind],
    );
    await client.query(
      `INSERT INTO material (id, name, category, purchase_unit, entry_hash) VALUES ($1, 'x', 'other', 'each', '')`,
      [id],
    );
    await client.query(
      `INSERT INTO lot (id, material_id, origin, quantity, paid_amount, paid_currency, tax_included, ordered_on, condition,
         stored_at, entry_hash)
       SELECT gen_random_uuid(), $1, 'bought', 1, 1, 'CAD', true, '2026-01-01', 1, said, ''
       FROM unnest(ARRAY['Shed, north wall', 'shed, North wall ', 'Garage', NULL, ' ']) AS said`,
      [id],
    );
    await client.query("COMMIT");
  }
  expect(await migrate(url, ALL)).toContain("20260108000000_stock_life");
  const { rows } = await client.query(
    `SELECT l.workspace_id, p.name, count(*)::int AS lots FROM lot l
     LEFT JOIN storage_place p ON p.workspace_id = l.workspace_id AND p.id = l.place_id
     GROUP BY 1, 2 ORDER BY 1, 2 NULLS LAST`,
  );
  await client.end();
  const each = (workspace_id: string) => [
    { workspace_id, name: "Garage", lots: 1 },
    { workspace_id, name: "Shed, north wall", lots: 2 },
    { workspace_id, name: null, lots: 2 },
  ];
  expect(rows).toEqual([...each(OWNER), ...each(DEMO)]);
});
