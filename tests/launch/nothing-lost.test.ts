import { randomUUID } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import * as z from "zod";
import { childrenOf, gone, type Launched, launched, postgresPid } from "../support/launched.ts";

let dataDir = "";
const running: Launched[] = [];

beforeAll(() => {
  dataDir = join(mkdtempSync(join(tmpdir(), "dunnage-lost-")), "data");
});
afterEach(async () => {
  for (const program of running.splice(0)) {
    program.interrupt();
    await program.ended;
  }
});
afterAll(() => rmSync(join(dataDir, ".."), { recursive: true, force: true }));

async function start(): Promise<Launched> {
  const program = await launched({ DATA_DIR: dataDir });
  running.push(program);
  await program.says("Stop it with Ctrl-C.");
  return program;
}

/** Writes stores one after another until told to stop, and keeps the names the program accepted. */
function writing(address: string) {
  const accepted: string[] = [];
  let stopped = false;
  const over = (async () => {
    while (!stopped) {
      const name = `store ${randomUUID()}`;
      const body = JSON.stringify({ name, taxRegion: "CA-NS", currency: "CAD" });
      const headers = { "content-type": "application/json" };
      const status = await fetch(`${address}/api/v1/stores`, { method: "POST", headers, body }).then(
        async (response) => {
          await response.text();
          return response.status;
        },
        () => 0,
      );
      if (status === 201) accepted.push(name);
      else await pause(20);
    }
  })();
  const stop = async () => {
    stopped = true;
    await over;
  };
  const after = async (count: number) => {
    while (accepted.length < count) await pause(5);
  };
  return { accepted, stop, after };
}

const listShape = z.object({
  items: z.array(z.object({ name: z.string() })),
  nextCursor: z.string().nullable(),
});

/** The names of all stores the program knows. */
async function stores(address: string): Promise<Set<string>> {
  const names = new Set<string>();
  for (let cursor: string | null = ""; cursor !== null; ) {
    const response: Response = await fetch(
      `${address}/api/v1/stores?limit=1000${cursor && `&cursor=${cursor}`}`,
    );
    const page = listShape.parse(await response.json());
    for (const { name } of page.items) names.add(name);
    cursor = page.nextCursor;
  }
  return names;
}

const missing = (accepted: readonly string[], kept: ReadonlySet<string>) =>
  accepted.filter((name) => !kept.has(name));

test("a database server killed while it writes comes back by itself, with all that was accepted", async () => {
  const program = await start();
  const { accepted, after, stop } = writing(program.address);
  await after(20);
  process.kill(postgresPid(dataDir), "SIGKILL");
  await program.says("starting it again");
  const before = accepted.length;
  await after(before + 10); // the program goes on by itself
  await stop();
  expect(missing(accepted, await stores(program.address))).toEqual([]);
});

test("a program killed whole while it writes has, started again, all that was accepted", async () => {
  const program = await start();
  const { accepted, after, stop } = writing(program.address);
  await after(20);
  const postgres = postgresPid(dataDir);
  process.kill(postgres, "SIGKILL");
  program.interrupt("SIGKILL");
  await stop();
  await gone(postgres);
  const again = await start();
  expect(missing(accepted, await stores(again.address))).toEqual([]);
});

test("a killed launcher takes the web server along; its database server is found and used by the next start", async () => {
  const program = await start();
  const { accepted, after, stop } = writing(program.address);
  await after(20);
  const [web] = childrenOf(program.pid).filter(({ command }) => command.includes("next"));
  const postgres = postgresPid(dataDir);
  program.signal("SIGKILL");
  await gone(web?.pid ?? 0);
  await stop();
  const again = await start();
  expect(again.said()).toContain("found running");
  expect(postgresPid(dataDir)).toBe(postgres);
  expect(missing(accepted, await stores(again.address))).toEqual([]);
  again.interrupt();
  await again.ended;
  await gone(postgres); // the last to use it stops it
});

test("a killed web server ends the program, which says so and stops its database server", async () => {
  const program = await start();
  const postgres = postgresPid(dataDir);
  const [web] = childrenOf(program.pid).filter(({ command }) => command.includes("next"));
  process.kill(web?.pid ?? 0, "SIGKILL");
  expect(await program.ended).toBe(1);
  expect(program.said()).toContain("The web server ended by itself (SIGKILL).");
  await gone(postgres);
});
