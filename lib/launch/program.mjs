import { join } from "node:path";
import { buildProgram } from "./build.mjs";
import { databaseVariables, openDatabase, prepareDatabase } from "./database.mjs";
import { addressOf, environment } from "./environment.mjs";
import { isTaken } from "./free-port.mjs";
import { takeLock } from "./lock.mjs";
import { Refusal } from "./refusal.mjs";
import { answerOf, serve } from "./serve.mjs";
import { step } from "./steps.mjs";
import { hasNoMaterials } from "./workspace-state.mjs";

/** Everything `npm start` does once the packages are there; ends when the program has stopped. */
export async function main(stop) {
  const settings = environment();
  const address = addressOf(settings);
  const lock = takeLock(join(settings.dataDir, "program.lock"), { address });
  if (lock.holder) return sayWhoRuns(lock.holder);
  try {
    await refuseTakenPort(settings);
    await step("pages", buildProgram, stop);
    await withOpenDatabase(settings, stop, (database, role) =>
      serveUntilStopped(settings, database, role, stop),
    );
  } finally {
    lock.release();
  }
}

async function sayWhoRuns({ address, pid }) {
  const up = (await answerOf(address)) !== null;
  console.log(
    `\n${up ? "Already running at" : "Already being started, soon at"} ${address} (process ${pid}). Nothing was done.`,
  );
}

// Asked for two seconds, because a program that has just been killed may still be letting go of it.
async function refuseTakenPort({ port, host }) {
  for (let asked = 0; asked < 20; asked += 1) {
    if (!(await isTaken(port, host))) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Refusal(
    `Port ${port} is used by another program. Choose another one, for example: PORT=${port + 1} npm start`,
  );
}

async function withOpenDatabase(settings, stop, work) {
  const state = { stopping: false, database: null };
  const open = (port) =>
    openDatabase(settings, { port, whenLost: () => state.stopping || reopen(state, open) });
  state.database = await step("database", () => open());
  try {
    stop.throwIfAborted();
    const role = await step("tables", () => prepareDatabase(state.database.url), stop);
    await work(state.database, role);
  } finally {
    state.stopping = true;
    await state.database.stop();
  }
}

// A killed database server loses nothing that was saved: a new one on the same port, and the pages go on.
async function reopen(state, open) {
  console.error("The database server ended by itself; starting it again.");
  const lost = state.database;
  state.database = (await open(lost.port)).value;
  if (state.database.port !== lost.port)
    console.error("It could not have its port again: stop and start the program.");
}

async function serveUntilStopped(settings, database, role, stop) {
  const variables = databaseVariables(database.url, role);
  const web = await step("listening", () => serve(settings, variables));
  try {
    if (!stop.aborted) await greet(settings, database);
    const ended = await Promise.race([web.ended, aborted(stop)]);
    if (!stop.aborted) throw new Refusal(`The web server ended by itself (${ended}).`);
  } finally {
    await web.stop();
  }
  console.log("Stopped.");
}

async function greet(settings, database) {
  console.log(`\nOpen ${addressOf(settings)}`);
  console.log("Only this computer can reach it, because there is no sign-in yet.");
  if (await hasNoMaterials(database.url))
    console.log("The workspace is empty; the page offers a demo to look around in.");
  console.log("Stop it with Ctrl-C.");
}

function aborted(signal) {
  return new Promise((resolve) => {
    if (signal.aborted) resolve();
    signal.addEventListener("abort", () => resolve());
  });
}
