import { spawn, spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { takeLock } from "../../lib/launch/lock.mjs";

let folder = "";
let path = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "dunnage-lock-"));
  path = join(folder, "some.lock");
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const LOCK = JSON.stringify(new URL("../../lib/launch/lock.mjs", import.meta.url).href);

test("a lock is let go by its holder alone, and taken again after that", () => {
  const { release } = takeLock(path);
  expect(existsSync(path)).toBe(true);
  release?.();
  expect(existsSync(path)).toBe(false);
  expect(takeLock(path).release).toBeTypeOf("function");
});

test("who finds a lock held is told by whom, and what they noted", () => {
  takeLock(path, { address: "http://127.0.0.1:3000" });
  const text = `import { takeLock } from ${LOCK}; console.log(JSON.stringify(takeLock(process.argv[1])));`;
  const { stdout } = spawnSync(process.execPath, ["--input-type=module", "-e", text, path], {
    encoding: "utf8",
  });
  expect(JSON.parse(stdout).holder).toMatchObject({ pid: process.pid, address: "http://127.0.0.1:3000" });
});

test("the lock of a process that has died is taken over", () => {
  const text = `import { takeLock } from ${LOCK}; takeLock(process.argv[1]); process.kill(process.pid, "SIGKILL");`;
  spawnSync(process.execPath, ["--input-type=module", "-e", text, path]);
  expect(existsSync(path)).toBe(true);
  expect(takeLock(path).holder).toBeUndefined();
});

test("the lock of a process whose number another has now is taken over", () => {
  writeFileSync(path, JSON.stringify({ pid: process.ppid, startedAt: "1" }));
  expect(takeLock(path).holder).toBeUndefined();
});

test.each(["", "{", "no lock at all"])("a damaged lock file (%j) keeps nobody out", (text) => {
  writeFileSync(path, text);
  expect(takeLock(path).holder).toBeUndefined();
});

test("of many at once one works at a time: twelve processes add up to twelve", async () => {
  const total = join(folder, "total");
  writeFileSync(total, "0");
  const text = `
    import { withLock } from ${LOCK};
    import { readFileSync, writeFileSync } from "node:fs";
    await withLock(process.argv[1], async () => {
      const before = Number(readFileSync(process.argv[2], "utf8"));
      await new Promise((settle) => setTimeout(settle, 5));
      writeFileSync(process.argv[2], String(before + 1));
    });`;
  const ends = Array.from({ length: 12 }, () => {
    const child = spawn(process.execPath, ["--input-type=module", "-e", text, path, total]);
    return new Promise((settle) => child.on("exit", settle));
  });
  expect(new Set(await Promise.all(ends))).toEqual(new Set([0]));
  expect(readFileSync(total, "utf8")).toBe("12");
});
