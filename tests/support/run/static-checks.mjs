import { createRequire } from "node:module";
import { generateClient } from "../../../lib/launch/build.mjs";
import { Refusal } from "../../../lib/launch/refusal.mjs";
import { run } from "../../../lib/launch/running-process.mjs";
import { oneCheck } from "./outcome.mjs";

const packages = createRequire(import.meta.url);

/** Biome on everything: format, lint, import cycles, floating promises. */
export async function formatAndLint() {
  const biome = packages.resolve("@biomejs/biome/bin/biome");
  return [oneCheck("format and lint", await failureOf([biome, "check", "--max-diagnostics=30"]))];
}

/** TypeScript on everything, with what the database client and the pages' addresses are typed by made first. */
export async function types() {
  const next = packages.resolve("next/dist/bin/next");
  const compiler = packages.resolve("typescript/bin/tsc");
  await generateClient();
  const failure = (await failureOf([next, "typegen"])) ?? (await failureOf([compiler, "--noEmit"]));
  return [oneCheck("types", failure)];
}

async function failureOf(args) {
  try {
    await run(process.execPath, args);
    return null;
  } catch (error) {
    if (error instanceof Refusal) return error.message;
    throw error;
  }
}
