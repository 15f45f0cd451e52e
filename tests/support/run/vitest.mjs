import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { outcome } from "./outcome.mjs";
import { reported } from "./reported.mjs";

const program = join(dirname(createRequire(import.meta.url).resolve("vitest/package.json")), "vitest.mjs");
const reporter = fileURLToPath(new URL("vitest-reporter.mjs", import.meta.url));

/** Runs vitest projects, the names as in vitest.config.ts; a project in which no test was found has failed. */
export async function vitestProjects(names, { as = null, env = {} } = {}) {
  const projects = names.flatMap((name) => ["--project", name]);
  const outcomes = await reported(
    as ?? names.join(", "),
    [program, "run", "--reporter", reporter, ...projects],
    env,
  );
  const ran = (name) =>
    outcomes.some(({ part }) => (name.endsWith("*") ? part.startsWith(name.slice(0, -1)) : part === name));
  const missing = names.filter((name) => !ran(name)).map((name) => outcome(name, 0, [NO_TEST]));
  return [...outcomes, ...missing].map((one) => ({ ...one, part: as ?? one.part }));
}

const NO_TEST = { name: "the whole part", reason: "no test of it was found" };
