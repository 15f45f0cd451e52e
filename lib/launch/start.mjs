// `npm start` and, with --demo, `npm run demo`. Until the packages are installed, only Node itself may be used here.
import { installPackages } from "./install.mjs";
import { Refusal } from "./refusal.mjs";
import { stopCommands } from "./running-process.mjs";
import { step } from "./steps.mjs";

const stop = new AbortController();
for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) {
  process.on(signal, () => {
    stop.abort(); // more than once is harmless: Ctrl-C may arrive from the terminal and from npm
    stopCommands();
  });
}

try {
  console.log("Dunnage");
  await step("packages", installPackages, stop.signal);
  const work = process.argv.includes("--demo") ? "./demo.mjs" : "./program.mjs";
  const { main } = await import(work);
  await main(stop.signal);
} catch (error) {
  process.exitCode = stop.signal.aborted ? 130 : 1; // what fails while being stopped fails because of that
  if (!stop.signal.aborted) console.error(error instanceof Refusal ? `\n${error.message}` : error);
}
