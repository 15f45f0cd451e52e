import { spawn } from "node:child_process";
import { createRequire } from "node:module";
import { setTimeout as pause } from "node:timers/promises";
import { addressOf } from "./environment.mjs";
import { ROOT } from "./paths.mjs";
import { Refusal } from "./refusal.mjs";
import { QUIET, stopWithLauncher } from "./running-process.mjs";
import { done } from "./steps.mjs";

const PATIENCE = 60_000;
const LONGEST_GOODBYE = 8_000;

// On a roomy machine Node lets rubbish pile up to gigabytes; half of one is several times what a busy page needs.
const HEAP_MEGABYTES = 512;

/** Starts the pages built in a folder and waits until they answer: { ended, stop() }. */
export async function serve({ host, port }, variables, folder = ROOT) {
  const next = createRequire(import.meta.url).resolve("next/dist/bin/next");
  const follow = new URL("follow-launcher.mjs", import.meta.url).href;
  const node = [`--max-old-space-size=${HEAP_MEGABYTES}`, "--import", follow];
  const child = spawn(process.execPath, [...node, next, "start", "-H", host, "-p", String(port)], {
    cwd: folder,
    env: { ...process.env, ...QUIET, ...variables, NODE_ENV: "production" },
    stdio: ["ignore", "ignore", "inherit", "ipc"],
  });
  stopWithLauncher(child);
  const ended = new Promise((resolve) => child.on("exit", (code, signal) => resolve(code ?? signal)));
  const status = await firstAnswer(addressOf({ host, port }), ended);
  return done(status < 500 ? "answering" : `answering with error ${status}, see above`, {
    ended,
    stop: () => stopped(child, ended),
  });
}

async function firstAnswer(address, ended) {
  let over = null;
  ended.then((code) => {
    over = code;
  });
  for (const until = Date.now() + PATIENCE; over === null && Date.now() < until; await pause(60)) {
    const status = await answerOf(address);
    if (status !== null) return status;
  }
  throw new Refusal(
    over === null ? `The pages did not answer at ${address}.` : `The pages ended at once (${over}).`,
  );
}

/** The HTTP status the address answers with, or null when nothing answers. */
export async function answerOf(address) {
  try {
    const response = await fetch(address, { redirect: "manual", signal: AbortSignal.timeout(20_000) });
    await response.arrayBuffer();
    return response.status;
  } catch {
    return null;
  }
}

// A browser may hold a connection open for minutes: after a few seconds the server is not asked again.
async function stopped(child, ended) {
  child.kill("SIGTERM");
  const timer = setTimeout(() => child.kill("SIGKILL"), LONGEST_GOODBYE);
  await ended;
  clearTimeout(timer);
}
