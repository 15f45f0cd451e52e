import { readFileSync } from "node:fs";
import { prepareDatabase } from "../../lib/launch/database.mjs";
import { onConnection } from "../../lib/launch/postgres-connection.mjs";
import { withDatabase } from "../support/test-server.ts";
import type { Size } from "./sizes.ts";

const FILL = readFileSync(new URL("fill.sql", import.meta.url), "utf8");

/** A migrated database of a size on that server, and lib/data set upon it; the answer is its address. */
export async function filledDatabase(serverUrl: string, size: Size): Promise<string> {
  const name = `bench_${size.name.toLowerCase()}`;
  const url = withDatabase(serverUrl, name);
  const isNew = await onConnection(serverUrl, async (client) => {
    const { rowCount } = await client.query("SELECT 1 FROM pg_database WHERE datname = $1", [name]);
    if (rowCount === 0) await client.query(`CREATE DATABASE ${name}`);
    return rowCount === 0;
  });
  const { value: role } = await prepareDatabase(url);
  process.env.DATABASE_URL = url;
  process.env.DUNNAGE_ROLE = role;
  if (!isNew) return url;
  const { ownerWorkspace } = await import("../../lib/data/workspaces.ts");
  await ownerWorkspace();
  const filling = FILL.replaceAll(/:(\w+)/g, (written, word: string) =>
    word in size ? String(size[word as keyof Size]) : written,
  );
  await onConnection(url, async (client) => {
    await client.query(filling);
    await client.query("VACUUM ANALYZE");
  });
  return url;
}
