import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Refusal } from "../../../lib/launch/refusal.mjs";
import { run } from "../../../lib/launch/running-process.mjs";
import { outcome } from "./outcome.mjs";

/**
 * Runs a test program whose reporter writes outcomes, as JSON, to the file RUN_REPORT names. A program that fails without
 * a failed test, or writes nothing, is a failure by itself.
 * @returns {Promise<import("./outcome.mjs").Outcome[]>}
 */
export async function reported(part, args, env = {}) {
  const folder = mkdtempSync(join(tmpdir(), "dunnage-run-"));
  const file = join(folder, "report.json");
  try {
    const ended = await run(process.execPath, args, { what: part, env: { ...env, RUN_REPORT: file } }).then(
      () => null,
      (error) => (error instanceof Refusal ? error.message : Promise.reject(error)),
    );
    const outcomes = outcomesIn(file);
    const failed = outcomes.some((one) => one.failed.length > 0);
    if (outcomes.length > 0 && (ended === null || failed)) return outcomes;
    const reason = ended ?? "it ended without a report";
    return [...outcomes, outcome(part, 0, [{ name: "the run itself", reason }])];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function outcomesIn(file) {
  try {
    return JSON.parse(readFileSync(file, "utf8"));
  } catch {
    return [];
  }
}
