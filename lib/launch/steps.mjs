import { performance } from "node:perf_hooks";

/**
 * Runs one step of the start and prints its name, what came of it and how long it took.
 * @throws the reason of `stop` when the program was told to stop meanwhile
 */
export async function step(name, work, stop) {
  const from = performance.now();
  const outcome = await work();
  const seconds = ((performance.now() - from) / 1000).toFixed(1);
  console.log(`  ${name.padEnd(10)} ${outcome.said.padEnd(48)} ${seconds.padStart(5)} s`);
  stop?.throwIfAborted();
  return outcome.value;
}

/**
 * What a step hands back: a few words about it, and a value.
 * @template T
 * @param {string} said
 * @param {T} value
 */
export function done(said, value) {
  return { said, value };
}
