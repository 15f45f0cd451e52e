// `npm test`: everything that can be run here; says what could not be, and closes with a count.
//     --check    the part without database and browser        --browser  the browser tests alone
// TEST_NOTHING_LEFT_OUT=1: what could not be run counts as failed. TEST_POSTGRES_15: a folder of PostgreSQL 15's
// programs, with which the data tests are run once more.
import { installPackages } from "../../lib/launch/install.mjs";
import { Refusal } from "../../lib/launch/refusal.mjs";
import { stopCommands } from "../../lib/launch/running-process.mjs";
import { step } from "../../lib/launch/steps.mjs";

const modes = ["check", "browser"].filter((mode) => process.argv.includes(`--${mode}`));

const stop = new AbortController();
for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) {
  process.on(signal, () => {
    stop.abort();
    stopCommands();
  });
}

try {
  await step("packages", installPackages, stop.signal);
  const { runParts } = await import("./run/parts.mjs");
  process.exitCode = (await runParts(modes[0] ?? "all", stop.signal)) ? 0 : 1;
} catch (error) {
  if (!stop.signal.aborted) console.error(error instanceof Refusal ? `\n${error.message}` : error);
  console.log(stop.signal.aborted ? "\nStopped." : "\n0 passed, 1 failed");
  process.exitCode = stop.signal.aborted ? 130 : 1;
}
