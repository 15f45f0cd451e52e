import { execFile } from "node:child_process";
import { readFileSync } from "node:fs";
import { performance } from "node:perf_hooks";
import { promisify } from "node:util";
import { buildProgram } from "../../lib/launch/build.mjs";
import { freePort } from "../../lib/launch/free-port.mjs";
import { serve } from "../../lib/launch/serve.mjs";
import { absolute, figure, quantile } from "./measured.ts";

const CLIENTS = 4;
const REQUESTS = 200;
const MINIMAL = new URL("minimal-page/", import.meta.url);

/** Milliseconds of each answer, a few clients asking at once. */
async function answerTimes(address: string, cookie: string): Promise<number[]> {
  const times: number[] = [];
  let left = REQUESTS + 20;
  async function client() {
    while (left > 0) {
      left -= 1;
      const from = performance.now();
      const response = await fetch(address, { headers: { cookie } });
      await response.arrayBuffer();
      if (!response.ok) throw new Error(`${address} answered ${response.status}`);
      times.push(performance.now() - from);
    }
  }
  await Promise.all(Array.from({ length: CLIENTS }, client));
  return times.slice(20);
}

/** Megabytes of this process's children of a name, as the system counts them. */
function memoryOfServer(): number {
  const children = readFileSync(`/proc/self/task/${process.pid}/children`, "utf8").trim().split(" ");
  const sizes = children.map((pid) => {
    const status = readFileSync(`/proc/${pid}/status`, "utf8");
    return /next-server/.test(status) ? Number(/VmRSS:\s+(\d+)/.exec(status)?.[1] ?? 0) / 1024 : 0;
  });
  return Math.max(...sizes);
}

/** A project's page at M and Today with the demo, each against the least a dynamic page costs; memory after that load. */
export async function pageFigures(variables: Record<string, string>, project: string): Promise<string[]> {
  const next = new URL("../../node_modules/next/dist/bin/next", import.meta.url).pathname;
  await buildProgram();
  await promisify(execFile)(process.execPath, [next, "build", MINIMAL.pathname], {
    env: { ...process.env, NODE_ENV: "production" },
  });
  const [ours, least] = [await freePort(), await freePort()];
  const { value: minimal } = await serve({ host: "127.0.0.1", port: least }, {}, MINIMAL.pathname);
  const { value: program } = await serve({ host: "127.0.0.1", port: ours }, variables);
  try {
    const lines: string[] = [];
    const pages = [
      { name: "A project's page at M (p95)", path: `/projects/${project}`, cookie: "" },
      { name: "Today with the demo (p95)", path: "/", cookie: "dunnage-workspace=demo" },
    ];
    for (const { name, path, cookie } of pages) {
      const bare = await answerTimes(`http://127.0.0.1:${least}/`, "");
      const page = await answerTimes(`http://127.0.0.1:${ours}${path}`, cookie);
      lines.push(figure(`${name}, to a minimal page`, quantile(page, 0.95), quantile(bare, 0.95), 2));
    }
    return [...lines, absolute("Memory of the server after that load", memoryOfServer(), "MB", 440)];
  } finally {
    await program.stop();
    await minimal.stop();
  }
}
