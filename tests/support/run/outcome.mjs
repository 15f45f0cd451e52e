/**
 * What came of one part: how many passed, the failed ones with their reasons, what was left out and why, and remarks.
 * @typedef {{ name: string, reason: string }} Named
 * @typedef {{ part: string, passed: number, failed: Named[], left: Named[], remarks: string[] }} Outcome
 */

/** @returns {Outcome} */
export function outcome(part, passed, failed = [], { left = [], remarks = [] } = {}) {
  return { part, passed, failed, left, remarks };
}

/** A part that could not be run here, and why. */
export const notRun = (part, reason) => outcome(part, 0, [], { left: [{ name: part, reason }] });

/** One check that is either so or not. */
export const oneCheck = (part, failure) =>
  failure === null ? outcome(part, 1) : outcome(part, 0, [{ name: part, reason: failure }]);

/**
 * All parts together; a run in which nothing ran has failed, and so has, when strict, one that left something out.
 * @param {Outcome[]} outcomes
 */
export function sum(outcomes, strict) {
  const passed = outcomes.reduce((count, { passed }) => count + passed, 0);
  const left = outcomes.flatMap((one) => one.left);
  const failed = outcomes.flatMap(({ part, failed }) =>
    failed.map(({ name, reason }) => ({ part, name, reason })),
  );
  if (strict) for (const { name, reason } of left) failed.push({ part: "left out", name, reason });
  if (passed === 0 && failed.length === 0)
    failed.push({ part: "all", name: "all", reason: "nothing was run" });
  return { passed, failed, left, remarks: [...new Set(outcomes.flatMap(({ remarks }) => remarks))] };
}
