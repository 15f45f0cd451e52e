import { spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { ROOT } from "./paths.mjs";
import { Refusal } from "./refusal.mjs";

const children = new Set();

/** Notes a process that is to stop when the launcher is told to. */
export function stopWithLauncher(child) {
  children.add(child);
  for (const event of ["exit", "error"]) child.on(event, () => children.delete(child));
}

/** Passes a stop on to every command still running; called when the launcher itself is told to stop. */
export function stopCommands() {
  for (const child of children) child.kill("SIGTERM");
}

/** Never phone home: set for everything the launcher starts. */
export const QUIET = { NEXT_TELEMETRY_DISABLED: "1", CHECKPOINT_DISABLE: "1" };

/** Whether a process is alive, and still the one noted: process ids are given out again. */
export function isAlive(pid, startedAt) {
  try {
    process.kill(pid, 0);
  } catch (error) {
    if (error.code !== "EPERM") return false;
  }
  return startedAt === undefined || startedAt === startOf(pid);
}

/** When a process started, as the kernel counts it; null where the kernel does not tell (not Linux). */
export function startOf(pid) {
  try {
    const afterName = readFileSync(`/proc/${pid}/stat`, "utf8").split(") ").at(-1);
    return afterName.split(" ")[19];
  } catch {
    return null;
  }
}

/**
 * Runs a command to its end and gives back what it printed.
 * @throws {Refusal} with the end of its output when it fails.
 */
export async function run(command, args, { what, env = {}, shell = false, show = false } = {}) {
  const stdio = ["ignore", show ? "inherit" : "pipe", show ? "inherit" : "pipe"];
  const child = spawn(command, args, { cwd: ROOT, env: { ...process.env, ...QUIET, ...env }, stdio, shell });
  stopWithLauncher(child);
  let output = "";
  for (const stream of [child.stdout, child.stderr]) stream?.on("data", (chunk) => (output += chunk));
  const code = await new Promise((settle, fail) => {
    child.on("error", fail);
    child.on("close", (exit, signal) => settle(exit ?? signal));
  });
  if (code === 0) return output;
  const end = output.trim().split("\n").slice(-40).join("\n");
  throw new Refusal(`${what ?? command} failed (${code}):\n${end}`);
}
