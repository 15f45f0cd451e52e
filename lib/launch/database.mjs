import { join, relative } from "node:path";
import { migrate } from "./migrate.mjs";
import { ROOT } from "./paths.mjs";
import { openPostgres } from "./postgres.mjs";
import { onConnection } from "./postgres-connection.mjs";
import { Refusal } from "./refusal.mjs";
import { applicationRole, makeRole } from "./roles.mjs";
import { done } from "./steps.mjs";

const OLDEST = 150_000;

/** The database of the environment, reachable and new enough: the embedded server's, or the one of DATABASE_URL. */
export async function openDatabase({ databaseUrl, dataDir }, options = {}) {
  if (databaseUrl !== null) {
    const version = await serverVersion(databaseUrl);
    return done(`PostgreSQL ${version} of DATABASE_URL`, { url: databaseUrl, stop: async () => {} });
  }
  const server = await openPostgres(dataDir, options);
  const where = relative(process.cwd(), dataDir) || dataDir;
  const said = `PostgreSQL ${await serverVersion(server.url)} ${server.reused ? "found running" : "started"} in ${where}`;
  return done(said, server);
}

/** The tables as this version of the program wants them, and the role the application works as. */
export async function prepareDatabase(url) {
  await makeRole(url);
  const applied = await migrate(url, join(ROOT, "prisma", "migrations"));
  const role = await applicationRole(url);
  return done(
    applied.length > 0
      ? `${applied.length} ${applied.length === 1 ? "migration" : "migrations"} applied`
      : "up to date",
    role,
  );
}

/** What the application's own processes are told about the database. */
export function databaseVariables(url, role) {
  return { DATABASE_URL: url, DUNNAGE_ROLE: role };
}

/** @throws {Refusal} when the server does not answer or is too old. Its address is left out: it may hold a password. */
async function serverVersion(url) {
  const { rows } = await onConnection(url, (client) =>
    client.query(
      "select current_setting('server_version_num')::int as number, current_setting('server_version') as name",
    ),
  ).catch((error) => {
    throw new Refusal(`The server of DATABASE_URL could not be used: ${error.message || error.code}.`);
  });
  const [{ number, name }] = rows;
  const short = name.split(" ")[0];
  if (number >= OLDEST) return short;
  throw new Refusal(`The server of DATABASE_URL is PostgreSQL ${short}; this program needs 15 or newer.`);
}
