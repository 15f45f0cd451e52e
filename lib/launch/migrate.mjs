import { createHash, randomUUID } from "node:crypto";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { onConnection } from "./postgres-connection.mjs";
import { Refusal } from "./refusal.mjs";

const PRISMAS_LOCK = 72_707_369; // the advisory lock `prisma migrate` takes

const TABLE = `create table if not exists _prisma_migrations (
  id varchar(36) primary key not null,
  checksum varchar(64) not null,
  finished_at timestamptz,
  migration_name varchar(255) not null,
  logs text,
  rolled_back_at timestamptz,
  started_at timestamptz not null default now(),
  applied_steps_count integer not null default 0
)`;

const NOTE = `insert into _prisma_migrations (id, checksum, migration_name, finished_at, applied_steps_count)
  values ($1, $2, $3, clock_timestamp(), 1)`;

/**
 * Applies the migrations of a folder that the database lacks, as `prisma migrate deploy` does and in its own table,
 * each in one transaction. The answer is their names.
 * @throws {Refusal} when an applied migration was edited, or the database is newer than the program.
 */
export function migrate(url, folder) {
  return onConnection(url, async (client) => {
    await client.query("select pg_advisory_lock($1)", [PRISMAS_LOCK]); // let go when the connection ends
    await client.query(TABLE);
    const { rows } = await client.query("select * from _prisma_migrations where rolled_back_at is null");
    const missing = migrationsToApply(migrationsIn(folder), rows);
    for (const migration of missing) await apply(client, migration);
    return missing.map(({ name }) => name);
  });
}

/** The migrations of a folder in their order: { name, sql, checksum }. */
export function migrationsIn(folder) {
  const names = existsSync(folder) ? readdirSync(folder).sort() : [];
  const files = names.map((name) => ({ name, path: join(folder, name, "migration.sql") }));
  return files
    .filter(({ path }) => existsSync(path))
    .map(({ name, path }) => {
      const sql = readFileSync(path, "utf8");
      return { name, sql, checksum: createHash("sha256").update(sql).digest("hex") };
    });
}

function migrationsToApply(known, applied) {
  for (const row of applied) {
    const name = row.migration_name;
    const migration = known.find((candidate) => candidate.name === name);
    if (migration === undefined) {
      throw new Refusal(
        `The database was changed by a newer version of this program (migration ${name} is not known here). Start that version; nothing was touched.`,
      );
    }
    if (!row.finished_at) {
      throw new Refusal(
        `Migration ${name} failed before and must be resolved first (prisma migrate resolve).`,
      );
    }
    if (row.checksum !== migration.checksum) {
      throw new Refusal(
        `Migration ${name} was edited after it was applied to this database. Put the file back as it was and make the change in a new migration; nothing was touched.`,
      );
    }
  }
  const done = new Set(applied.map((row) => row.migration_name));
  return known.filter(({ name }) => !done.has(name));
}

async function apply(client, { name, sql, checksum }) {
  await client.query("begin");
  try {
    await client.query(sql);
    await client.query(NOTE, [randomUUID(), checksum, name]);
    await client.query("commit");
  } catch (error) {
    await client.query("rollback");
    throw new Refusal(`Migration ${name} could not be applied, and was taken back whole: ${error.message}`);
  }
}
