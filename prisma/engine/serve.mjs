import { createInterface } from "node:readline";
import { databaseFactory } from "./adapter.mjs";
import { connectionOf, once, prismaCode } from "./connection.mjs";
import { offlineFactory } from "./offline-adapter.mjs";
import { loadEngine } from "./wasm-engine.mjs";

const OTHER_NAMES = { getDatabaseVersion: "version" };
const FILES_ONLY = ["empty", "schemaDatamodel"];

/** Answers JSON-RPC requests, one a line on standard input, one after another, until the input ends. */
export async function serve(command) {
  const engines = await enginesFor(command);
  const lines = createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY });
  for await (const line of lines) {
    const request = line.trim() ? JSON.parse(line) : {};
    if (request.method) send(await answer(engines, request));
  }
  process.exit(0);
}

async function enginesFor(command) {
  const engineOn = await loadEngine(command);
  const state = { cause: undefined };
  const opened = new Map();
  const open = (kind) => {
    if (kind === "offline") return engineOn(offlineFactory);
    return engineOn(databaseFactory(command.datasource, (error) => (state.cause = error)));
  };
  const engine = (kind) => {
    if (!opened.has(kind)) opened.set(kind, open(kind));
    return opened.get(kind);
  };
  return { state, engine, datasource: command.datasource };
}

async function answer(engines, request) {
  engines.state.cause = undefined;
  try {
    const result = await run(engines, request);
    if (request.method === "diff" && result?.stdout) print(result.stdout);
    return { id: request.id, result: result ?? {} };
  } catch (error) {
    return { id: request.id, error: failure(error, engines.state.cause) };
  }
}

async function run(engines, { method, params = {} }) {
  const offline = method === "diff" && [params.from, params.to].every(({ tag }) => FILES_ONLY.includes(tag));
  // Connecting once before the engine does turns its long error into a short one.
  if (!offline) await once(connectionOf(engines.datasource.url).fields, "select 1");
  const engine = await engines.engine(offline ? "offline" : "database");
  const name = OTHER_NAMES[method] ?? method;
  if (typeof engine[name] !== "function") throw new Error(`the engine has no method ${method}`);
  return engine[name](params);
}

function failure(error, cause) {
  const known = parsed(error.message);
  const source = cause ?? error;
  return {
    code: 4466,
    message: "An error happened. Check the data field for details.",
    data: {
      is_panic: false,
      message: known.message ?? source.message ?? String(source),
      meta: known.meta ?? error.meta ?? null,
      error_code: known.error_code ?? prismaCode(source) ?? error.code ?? null,
    },
  };
}

function parsed(text) {
  try {
    return JSON.parse(text) ?? {};
  } catch {
    return {};
  }
}

const print = (content) => send({ id: 1_000_000_000, method: "print", params: { content } });
const send = (message) => process.stdout.write(`${JSON.stringify({ jsonrpc: "2.0", ...message })}\n`);
