import { generateClient } from "./build.mjs";
import { databaseVariables, openDatabase, prepareDatabase } from "./database.mjs";
import { addressOf, environment } from "./environment.mjs";
import { run } from "./running-process.mjs";
import { done, step } from "./steps.mjs";

const SEED = ["--conditions=react-server", "--import", "tsx", "prisma/seed.ts"];

/** Puts the demo into a workspace of its own, in the same database as the program, running or not. */
export async function main(stop) {
  const settings = environment();
  const database = await step("database", () => openDatabase(settings));
  try {
    stop.throwIfAborted();
    const role = await step("tables", () => prepareDatabase(database.url), stop);
    const env = databaseVariables(database.url, role);
    await step("demo", () => loadDemo(env), stop);
    console.log(`\nThe demo is at ${addressOf(settings)} (npm start, unless it runs already).`);
  } finally {
    await database.stop();
  }
}

/** Loads the demo, ending today, into the database the variables name (databaseVariables). */
export async function loadDemo(env) {
  await generateClient();
  const said = await run(process.execPath, SEED, { what: "prisma/seed.ts", env });
  return done(said.trim().split("\n").at(-1) || "loaded", null);
}
