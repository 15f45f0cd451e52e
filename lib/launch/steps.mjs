import { performance } from "node:perf_hooks";

/** Runs one step of the start and prints its name, what came of it and how long it took. */
export async function step(name, work) {
  const from = performance.now();
  const outcome = await work();
  const seconds = ((performance.now() - from) / 1000).toFixed(1);
  console.log(`  ${name.padEnd(10)} ${outcome.said.padEnd(48)} ${seconds.padStart(5)} s`);
  return outcome.value;
}

/** What a step hands back: a value, and a few words about it. */
export function done(said, value) {
  return { said, value };
}
