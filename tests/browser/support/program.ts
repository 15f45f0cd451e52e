import * as z from "zod";
import { databaseVariables } from "../../../lib/launch/database.mjs";
import { loadDemo } from "../../../lib/launch/demo.mjs";
import { addressOf } from "../../../lib/launch/environment.mjs";
import { freePort } from "../../../lib/launch/free-port.mjs";
import { onConnection } from "../../../lib/launch/postgres-connection.mjs";
import { serve } from "../../../lib/launch/serve.mjs";
import { copyOf, type Template } from "../../support/test-server.ts";

/** The built program on a database of its own. */
export type Program = Readonly<{ address: string; databaseUrl: string; stop: () => Promise<void> }>;

const KEPT_IN = "DUNNAGE_BROWSER_TEMPLATE";
const templateShape = z.object({ name: z.string(), serverUrl: z.string(), role: z.string() });

/** Hands the run's template over to the processes the tests run in. */
export function keepTemplate(template: Template): void {
  process.env[KEPT_IN] = JSON.stringify(template);
}

const keptTemplate = (): Template => templateShape.parse(JSON.parse(process.env[KEPT_IN] ?? "null"));

/** Starts the program on a new database: empty, or with the demo beside the empty workspace. */
export async function startProgram({ demo }: Readonly<{ demo: boolean }>): Promise<Program> {
  const template = keptTemplate();
  const databaseUrl = await copyOf(demo ? await withDemo(template) : template);
  const at = { host: "127.0.0.1", port: await freePort() };
  const { value: web } = await serve(at, databaseVariables(databaseUrl, template.role));
  return { address: addressOf(at), databaseUrl, stop: web.stop };
}

// The demo takes some seconds to load: once in a run, into a template of its own.
async function withDemo(template: Template): Promise<Template> {
  const name = `${template.name}_demo`;
  const there = await onConnection(template.serverUrl, (client) =>
    client.query("select 1 from pg_database where datname = $1", [name]),
  );
  if (there.rowCount === 0) {
    const loading = await copyOf(template, `${name}_loading`);
    await loadDemo(databaseVariables(loading, template.role));
    await onConnection(template.serverUrl, (client) =>
      client.query(`alter database ${name}_loading rename to ${name}`),
    );
  }
  return { ...template, name };
}

let current: Readonly<{ key: string; program: Program }> | null = null;

/**
 * The program of a test file, started at the file's first test; that of the file before is stopped. The last one ends
 * with the process the tests run in.
 */
export async function programOf(file: string, demo: boolean): Promise<Program> {
  const key = `${file} ${demo}`;
  if (current?.key === key) return current.program;
  const last = current;
  current = null;
  await last?.program.stop();
  current = { key, program: await startProgram({ demo }) };
  return current.program;
}
