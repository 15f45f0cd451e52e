import { spawn, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import { freePort } from "../../lib/launch/free-port.mjs";
import { ROOT } from "../../lib/launch/paths.mjs";
import { absolute } from "./measured.ts";

const PATIENCE = 300_000;

/** Seconds from `npm start` in that folder to the first page, then stops it as Ctrl-C does. */
async function secondsToPage(folder: string): Promise<number> {
  const port = await freePort();
  const from = performance.now();
  // The benches before this one name a database of their own, gone by now.
  const { DATABASE_URL: _, ...variables } = process.env;
  const program = spawn("npm", ["start"], {
    cwd: folder,
    env: { ...variables, PORT: String(port) },
    stdio: "ignore",
    detached: true,
  });
  let ended = false;
  const over = new Promise<void>((settle) =>
    program.on("exit", () => {
      ended = true;
      settle();
    }),
  );
  try {
    while (!ended && performance.now() - from < PATIENCE) {
      const up = await fetch(`http://127.0.0.1:${port}/`).then(
        (answer) => answer.ok,
        () => false,
      );
      if (up) return (performance.now() - from) / 1000;
      await new Promise((settle) => setTimeout(settle, 100));
    }
    throw new Error("the program did not start");
  } finally {
    if (program.pid !== undefined && !ended) process.kill(-program.pid, "SIGINT");
    await over;
  }
}

/** The first start of a fresh clone, its packages in npm's cache, and a second one. */
export async function startFigures(): Promise<string[]> {
  const folder = mkdtempSync(join(tmpdir(), "dunnage-start-"));
  try {
    const { status } = spawnSync("git", ["clone", "--quiet", ROOT, folder]);
    if (status !== 0) throw new Error("the project could not be cloned");
    const first = await secondsToPage(folder);
    const again = await secondsToPage(folder);
    return [
      absolute("First start of a fresh clone, packages in npm's cache", first, "s", 60),
      absolute("A later start", again, "s", 5),
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
