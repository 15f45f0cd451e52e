import { randomBytes } from "node:crypto";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { TestProject } from "vitest/node";
import { openDatabase, prepareDatabase } from "../../lib/launch/database.mjs";
import { onConnection } from "../../lib/launch/postgres-connection.mjs";

declare module "vitest" {
  interface ProvidedContext {
    /** A migrated, empty database that is only copied, the server's own one, and what DUNNAGE_ROLE is there. */
    template: { name: string; serverUrl: string; role: string };
  }
}

/**
 * One PostgreSQL for the whole run with one migrated database, of which every test file gets its own copy.
 * TEST_DATABASE_URL: that server instead. TEST_POSTGRES_BIN: the programs of another PostgreSQL, such as
 * /usr/lib/postgresql/15/bin.
 */
export default async function templateDatabase(project: TestProject) {
  const folder = await mkdtemp(join(tmpdir(), "dunnage-test-"));
  const { value: server } = await openDatabase(
    { databaseUrl: process.env.TEST_DATABASE_URL || null, dataDir: folder },
    { binFolder: process.env.TEST_POSTGRES_BIN || undefined, settings: ["fsync=off", "max_connections=200"] },
  );
  const name = `dunnage_template_${randomBytes(4).toString("hex")}`;
  await onConnection(server.url, (client) => client.query(`create database ${name}`));
  const { value: role } = await prepareDatabase(withDatabase(server.url, name));
  project.provide("template", { name, serverUrl: server.url, role });

  return async () => {
    await dropCopies(server.url, name);
    await server.stop();
    await rm(folder, { recursive: true, force: true });
  };
}

/** The same server, another database. */
export function withDatabase(url: string, name: string): string {
  const address = new URL(url);
  address.pathname = `/${name}`;
  return address.href;
}

function dropCopies(serverUrl: string, name: string) {
  return onConnection(serverUrl, async (client) => {
    const { rows } = await client.query("select datname from pg_database where starts_with(datname, $1)", [
      name,
    ]);
    for (const { datname } of rows) await client.query(`drop database ${datname} with (force)`);
  });
}
