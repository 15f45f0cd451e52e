import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { freePort } from "../../lib/launch/free-port.mjs";
import { ROOT } from "../../lib/launch/paths.mjs";
import { isAlive } from "../../lib/launch/running-process.mjs";

const PATIENCE = 90_000;

/** A program started as `npm start` starts it, in a process group of its own as a terminal would. */
export type Launched = Readonly<{
  address: string;
  pid: number;
  /** What it has printed so far. */
  said: () => string;
  /** Waits until it has printed this. Throws: {Error} with all it printed when it ended, or took too long. */
  says: (text: string) => Promise<void>;
  /** Ends when it ends: its exit code, or the signal that ended it. */
  ended: Promise<number | string>;
  /** A signal to the whole group, as Ctrl-C in a terminal. */
  interrupt: (signal?: NodeJS.Signals) => void;
  /** A signal to the launcher alone. */
  signal: (signal: NodeJS.Signals) => void;
}>;

type Given = Readonly<Record<string, string | undefined>>;

/** Starts the program with variables; PORT is a free one unless given. */
export async function launched(given: Given, ...args: readonly string[]): Promise<Launched> {
  const port = given.PORT ?? String(await freePort());
  const env = { ...process.env, DATABASE_URL: undefined, HOST: undefined, ...given, PORT: port };
  const child = spawn(process.execPath, [join(ROOT, "lib/launch/start.mjs"), ...args], {
    env,
    detached: true,
    stdio: ["ignore", "pipe", "pipe"],
  });
  return watched(child, `http://127.0.0.1:${port}`);
}

function watched(child: ChildProcess, address: string): Launched {
  let said = "";
  for (const stream of [child.stdout, child.stderr]) stream?.on("data", (chunk) => (said += chunk));
  const pid = child.pid ?? 0;
  let over = false;
  const ended = once(child, "close").then(([code, signal]: (number | string)[]) => {
    over = true;
    return code ?? signal ?? "";
  });
  const says = async (text: string) => {
    for (const until = Date.now() + PATIENCE; !said.includes(text); await pause(30))
      if (over || Date.now() > until) throw new Error(`it never said ${JSON.stringify(text)}, but:\n${said}`);
  };
  return {
    address,
    pid,
    said: () => said,
    says,
    ended,
    interrupt: (signal = "SIGINT") => over || process.kill(-pid, signal),
    signal: (signal) => process.kill(pid, signal),
  };
}

/** The process of the embedded PostgreSQL of a data folder, alive or not. */
export function postgresPid(dataDir: string): number {
  return Number(readFileSync(join(dataDir, "postgres/postmaster.pid"), "utf8").split("\n")[0]);
}

/** The children of a process, by their command lines. */
export function childrenOf(pid: number): { pid: number; command: string }[] {
  return readdirSync("/proc")
    .filter((name) => /^\d+$/.test(name))
    .flatMap((name) => {
      try {
        const parent = readFileSync(`/proc/${name}/stat`, "utf8").split(") ").at(-1)?.split(" ")[1];
        if (Number(parent) !== pid) return [];
        return [
          { pid: Number(name), command: readFileSync(`/proc/${name}/cmdline`, "utf8").replaceAll("\0", " ") },
        ];
      } catch {
        return []; // it ended meanwhile
      }
    });
}

/** Waits until a process is gone. Throws: {Error} when it stays. */
export async function gone(pid: number): Promise<void> {
  for (const until = Date.now() + PATIENCE; isAlive(pid); await pause(30))
    if (Date.now() > until) throw new Error(`process ${pid} is still there`);
}
