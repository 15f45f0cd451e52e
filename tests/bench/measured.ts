import { performance } from "node:perf_hooks";

/** Milliseconds of each run, after a few that do not count. */
export async function timesOf(work: () => Promise<unknown>, runs: number): Promise<number[]> {
  for (let warm = 0; warm < Math.min(5, runs); warm += 1) await work();
  const times: number[] = [];
  for (let run = 0; run < runs; run += 1) {
    const from = performance.now();
    await work();
    times.push(performance.now() - from);
  }
  return times;
}

/** Two things measured in turns, so that a slow minute of the machine falls on both. */
export async function inTurns(
  one: () => Promise<unknown>,
  other: () => Promise<unknown>,
  runs: number,
): Promise<[number[], number[]]> {
  const ones: number[] = [];
  const others: number[] = [];
  for (let round = 0; round < runs; round += 1) {
    ones.push(...(await timesOf(one, 1)).slice(-1));
    others.push(...(await timesOf(other, 1)).slice(-1));
  }
  return [ones, others];
}

/** The value that a share of the times does not pass (nearest rank). */
export function quantile(times: readonly number[], share: number): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

/** One line of the bench: a ratio, the two times it comes from, and what it should stay under. */
export function figure(name: string, measured: number, baseline: number, most: number): string {
  const ratio = measured / baseline;
  const verdict = ratio <= most ? "ok" : "ABOVE";
  return `${name.padEnd(58)} ${ratio.toFixed(2).padStart(7)} x  at most ${most}  ${verdict.padEnd(5)}  (${measured.toFixed(1)} ms to ${baseline.toFixed(1)} ms)`;
}

/** One line about a figure that has a limit of its own. */
export function absolute(name: string, measured: number, unit: string, most: number): string {
  const verdict = measured <= most ? "ok" : "ABOVE";
  return `${name.padEnd(58)} ${measured.toFixed(1).padStart(7)} ${unit}  at most ${most} ${unit}  ${verdict}`;
}
