// `npm test`: everything that can be run here; says what could not be, and closes with a count.
//     --check    the part without database and browser        --browser  the browser tests alone
// TEST_NOTHING_LEFT_OUT=1: what could not be run counts as failed. TEST_POSTGRES_15: a folder of PostgreSQL 15's
// programs, with which the data tests are run once more.
import { installPackages } from "../../lib/launch/install.mjs";
import { Refusal } from "../../lib/launch/refusal.mjs";
import { stopCommands } from "../../lib/launch/running-process.mjs";
import { step } from "../../lib/launch/steps.mjs";

const modes = ["check", "browser"].filter((mode) => process.argv.includes(`--${mode}`));

for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) {
  process.on(signal, () => {
    stopCommands();
    process.exitCode = 130;
  });
}

try {
  await step("packages", installPackages);
  const { runParts } = await import("./run/parts.mjs");
  const allPassed = await runParts(modes[0] ?? "all");
  process.exitCode ||= allPassed ? 0 : 1;
} catch (error) {
  console.error(error instanceof Refusal ? `\n${error.message}` : error);
  console.log("\n0 passed, 1 failed");
  process.exitCode = 1;
}
