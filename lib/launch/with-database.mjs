// node lib/launch/with-database.mjs COMMAND [ARGUMENTS]: runs a command with DATABASE_URL and DUNNAGE_ROLE set,
// against the same database as the program: found running, or started and stopped again.
import { spawn } from "node:child_process";
import { databaseVariables, openDatabase, prepareDatabase } from "./database.mjs";
import { environment } from "./environment.mjs";
import { ROOT } from "./paths.mjs";
import { Refusal } from "./refusal.mjs";
import { QUIET } from "./running-process.mjs";

/** Runs the command to its end; the answer is its exit code. */
export async function withDatabase(command, args, open = openDatabase) {
  const { value: database } = await open(environment());
  try {
    const { value: role } = await prepareDatabase(database.url);
    const env = { ...process.env, ...QUIET, ...databaseVariables(database.url, role) };
    const child = spawn(command, args, { cwd: ROOT, env, stdio: "inherit" });
    for (const signal of ["SIGINT", "SIGTERM"]) process.on(signal, () => child.kill(signal));
    return await new Promise((settle, fail) => {
      child.on("error", fail);
      child.on("exit", (code) => settle(code ?? 1));
    });
  } finally {
    await database.stop();
  }
}

if (import.meta.filename === process.argv[1]) {
  try {
    const [command, ...args] = process.argv.slice(2);
    process.exitCode = await withDatabase(command, args);
  } catch (error) {
    console.error(error instanceof Refusal ? error.message : error);
    process.exitCode = 1;
  }
}
