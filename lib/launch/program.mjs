import { join } from "node:path";
import { networkCertificate } from "./authority.mjs";
import { buildProgram } from "./build.mjs";
import { askDaily, dailySecret } from "./daily.mjs";
import { databaseVariables, openDatabase, prepareDatabase } from "./database.mjs";
import { addressOf, environment } from "./environment.mjs";
import { firstCode } from "./first-code.mjs";
import { isTaken } from "./free-port.mjs";
import { openFront } from "./front.mjs";
import { greet } from "./greeting.mjs";
import { takeLock } from "./lock.mjs";
import { addressesHere, openness, opennessVariables } from "./openness.mjs";
import { Refusal } from "./refusal.mjs";
import { signInSecret } from "./secret.mjs";
import { answerOf, serve } from "./serve.mjs";
import { done, step } from "./steps.mjs";

/** Everything `npm start` does once the packages are there; ends when the program has stopped. */
export async function main(stop) {
  const settings = environment();
  const opened = openness(settings);
  const address = addressOf(settings);
  const lock = takeLock(join(settings.dataDir, "program.lock"), { address });
  if (lock.holder) return sayWhoRuns(lock.holder);
  try {
    await refuseTakenPort(settings);
    await step("pages", buildProgram, stop);
    await withOpenDatabase(settings, stop, (database, role) =>
      serveUntilStopped({ settings, opened }, database, role, stop),
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

async function serveUntilStopped({ settings, opened }, database, role, stop) {
  const certificate =
    opened.mode === "network" ? await networkCertificate(settings.dataDir, addressesHere()) : null;
  const variables = {
    ...databaseVariables(database.url, role),
    ...opennessVariables(opened, certificate?.authority),
    DUNNAGE_SECRET: signInSecret(settings.dataDir),
    DUNNAGE_DAILY_SECRET: dailySecret(),
  };
  const another = process.argv.includes("--another-owner");
  const code = await firstCode(database.url, role, another);
  const web = await step("listening", () => serve(settings, variables));
  const daily = askDaily(addressOf(settings), variables.DUNNAGE_DAILY_SECRET);
  let front = null;
  try {
    if (certificate !== null) {
      const secret = variables.DUNNAGE_FRONT_SECRET;
      const open = { ...certificate, port: opened.port, secret, pages: settings };
      front = await step("network", async () => done(`port ${opened.port}, secured`, await openFront(open)));
    }
    const authority = certificate?.authority ?? null;
    if (!stop.aborted) await greet({ settings, opened, authority, code, databaseUrl: database.url });
    const ended = await Promise.race([web.ended, aborted(stop)]);
    if (!stop.aborted) throw new Refusal(`The web server ended by itself (${ended}).`);
  } finally {
    daily.stop();
    await front?.stop();
    await web.stop();
  }
  console.log("Stopped.");
}

function aborted(signal) {
  return new Promise((resolve) => {
    if (signal.aborted) resolve();
    signal.addEventListener("abort", () => resolve());
  });
}
