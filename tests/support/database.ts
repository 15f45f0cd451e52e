import { randomBytes } from "node:crypto";
import { inject } from "vitest";
import { onConnection } from "../../lib/launch/postgres-connection.mjs";
import { withDatabase } from "./template-database.ts";

/**
 * A new, empty, migrated database; the answer is its address.
 * DATABASE_URL and DUNNAGE_ROLE are set for it, so call it before lib/data/client is imported:
 *     await freshDatabase();
 *     const { addStore } = await import("../../lib/data/stores.ts");
 */
export async function freshDatabase(): Promise<string> {
  const template = inject("template");
  const name = `${template.name}_${randomBytes(6).toString("hex")}`;
  await onConnection(template.serverUrl, (client) =>
    client.query(`create database ${name} template ${template.name}`),
  );
  process.env.DUNNAGE_ROLE = template.role;
  process.env.DATABASE_URL = withDatabase(template.serverUrl, name);
  return process.env.DATABASE_URL;
}
