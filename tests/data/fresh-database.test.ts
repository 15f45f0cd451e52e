import pg from "pg";
import { expect, test } from "vitest";
import { freshDatabase } from "../support/database.ts";

async function applied(url: string): Promise<number> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  const { rows } = await client.query("select count(*)::int as n from _prisma_migrations");
  await client.end();
  return rows[0].n;
}

test("each test file has a migrated database of its own", async () => {
  const urls = await Promise.all([freshDatabase(), freshDatabase(), freshDatabase()]);
  expect(new Set(urls).size).toBe(3);
  for (const url of urls) expect(await applied(url)).toBeGreaterThan(0);
});

test("it works as a plain role that row-level security binds", async () => {
  const client = new pg.Client({ connectionString: await freshDatabase() });
  await client.connect();
  await client.query("begin");
  if (process.env.DUNNAGE_ROLE) await client.query(`set local role ${process.env.DUNNAGE_ROLE}`);
  const { rows } = await client.query(
    "select rolsuper or rolbypassrls as unbound from pg_roles where rolname = current_user",
  );
  await client.end();
  expect(rows).toEqual([{ unbound: false }]);
});
