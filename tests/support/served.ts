import { databaseVariables } from "../../lib/launch/database.mjs";
import { addressOf } from "../../lib/launch/environment.mjs";
import { freePort } from "../../lib/launch/free-port.mjs";
import { serve } from "../../lib/launch/serve.mjs";
import { freshDatabase } from "./database.ts";

/** A program that answers: where, and how to stop it. */
export type Served = Readonly<{ address: string; port: number; stop: () => Promise<void> }>;

/** The built program on a database, at a port of its own. */
export async function servedOn(databaseUrl: string): Promise<Served> {
  const at = { host: "127.0.0.1", port: await freePort() };
  const role = process.env.DUNNAGE_ROLE ?? "dunnage_app";
  const { value: web } = await serve(at, databaseVariables(databaseUrl, role));
  return { address: addressOf(at), port: at.port, stop: web.stop };
}

/** The same on a new, empty, migrated database: each test file has a workspace of its own. */
export async function served(): Promise<Served> {
  return servedOn(await freshDatabase());
}
