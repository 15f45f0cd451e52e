import { randomBytes } from "node:crypto";
import { rmSync } from "node:fs";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openDatabase, prepareDatabase } from "../../lib/launch/database.mjs";
import { onConnection } from "../../lib/launch/postgres-connection.mjs";

/** A migrated, empty database that is only copied, the server's own one, and what DUNNAGE_ROLE is there. */
export type Template = Readonly<{ name: string; serverUrl: string; role: string }>;

/**
 * A PostgreSQL with one migrated database, of which tests get copies. TEST_DATABASE_URL: that server instead.
 * TEST_POSTGRES_BIN: the programs of another PostgreSQL, such as /usr/lib/postgresql/15/bin.
 */
export async function testServer(): Promise<Readonly<{ template: Template; stop: () => Promise<void> }>> {
  const folder = await mkdtemp(join(tmpdir(), "dunnage-test-"));
  const { value: server } = await openDatabase(
    { databaseUrl: process.env.TEST_DATABASE_URL || null, dataDir: folder },
    { binFolder: process.env.TEST_POSTGRES_BIN || undefined, settings: ["fsync=off", "max_connections=200"] },
  );
  const forget = () => endAtOnce(server, folder);
  process.on("exit", forget);
  const name = `dunnage_template_${randomBytes(4).toString("hex")}`;
  await onConnection(server.url, (client) => client.query(`create database ${name}`));
  const { value: role } = await prepareDatabase(withDatabase(server.url, name));
  const stop = async () => {
    process.off("exit", forget);
    await dropCopies(server.url, name);
    await server.stop();
    await rm(folder, { recursive: true, force: true });
  };
  return { template: { name, serverUrl: server.url, role }, stop };
}

/** A copy of a template under a name of its own; the answer is its address. */
export async function copyOf(
  template: Template,
  name = `${template.name}_${randomBytes(6).toString("hex")}`,
): Promise<string> {
  await onConnection(template.serverUrl, (client) =>
    client.query(`create database ${name} template ${template.name}`),
  );
  return withDatabase(template.serverUrl, name);
}

/** The same server, another database. */
export function withDatabase(url: string, name: string): string {
  const address = new URL(url);
  address.pathname = `/${name}`;
  return address.href;
}

// A run that is interrupted gets no time to wait: its server, whose data nobody keeps, is told to end at once.
function endAtOnce(server: object, folder: string): void {
  if (!("pid" in server) || typeof server.pid !== "number") return;
  try {
    process.kill(server.pid, "SIGQUIT");
    rmSync(folder, { recursive: true, force: true, maxRetries: 3 });
  } catch {
    // it has ended already
  }
}

function dropCopies(serverUrl: string, name: string) {
  return onConnection(serverUrl, async (client) => {
    const { rows } = await client.query("select datname from pg_database where starts_with(datname, $1)", [
      name,
    ]);
    for (const { datname } of rows) await client.query(`drop database ${datname} with (force)`);
  });
}
