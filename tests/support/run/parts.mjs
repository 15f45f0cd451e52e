import { existsSync } from "node:fs";
import { join } from "node:path";
import { chromiumPath } from "../../browser/support/chromium.mjs";
import { browserTests } from "./browser.mjs";
import { notRun, sum } from "./outcome.mjs";
import { say, sayInAll } from "./say.mjs";
import { formatAndLint, types } from "./static-checks.mjs";
import { vitestProjects } from "./vitest.mjs";

const PURE = ["unit", "laws", "references", "days*", "architecture"];
const WITH_PROGRAM = ["data", "api", "launch"];

const checks = [formatAndLint, types, () => vitestProjects(PURE)];
const ofMode = {
  check: checks,
  browser: [browser],
  all: [...checks, () => vitestProjects(WITH_PROGRAM), dataOnPostgres15, browser],
};

/**
 * Runs the parts of a mode, one after another, whatever came of the ones before; true when nothing failed.
 * @throws the reason of `stop` when the run was told to stop meanwhile
 */
export async function runParts(mode, stop, strict = process.env.TEST_NOTHING_LEFT_OUT === "1") {
  const from = performance.now();
  const outcomes = [];
  for (const part of ofMode[mode]) {
    const began = performance.now();
    const found = await part();
    stop.throwIfAborted();
    say(found, performance.now() - began);
    outcomes.push(...found);
  }
  return sayInAll(sum(outcomes, strict), performance.now() - from);
}

function browser() {
  if (chromiumPath() !== null) return browserTests();
  return [
    notRun(
      "browser",
      "there is no Chromium here (Debian: apt-get install chromium; or name one in CHROMIUM)",
    ),
  ];
}

function dataOnPostgres15() {
  const name = "data on PostgreSQL 15";
  const folder = process.env.TEST_POSTGRES_15 ?? "";
  if (folder === "")
    return [notRun(name, "not asked for (TEST_POSTGRES_15=/usr/lib/postgresql/15/bin; .ci/run does)")];
  if (!existsSync(join(folder, "initdb"))) return [notRun(name, `there is no PostgreSQL in ${folder}`)];
  return vitestProjects(["data"], { as: name, env: { TEST_POSTGRES_BIN: folder } });
}
