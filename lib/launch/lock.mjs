import { linkSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { isAlive, startOf } from "./running-process.mjs";

const pause = (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds));

/**
 * Takes a lock file, or says who holds it. A lock whose holder is dead is taken over.
 * The answer is { release } or { holder }, the holder with whatever `note` it left.
 */
export function takeLock(path, note = {}) {
  mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
  const mine = `${path}.${process.pid}`;
  const holder = { ...note, pid: process.pid, startedAt: startOf(process.pid) };
  writeFileSync(mine, JSON.stringify(holder), { mode: 0o600 });
  try {
    for (;;) {
      if (linked(mine, path)) return { release: () => rmSync(path, { force: true }) };
      const other = read(path);
      if (other && other.pid !== process.pid && isAlive(other.pid, other.startedAt ?? undefined)) {
        return { holder: other };
      }
      putAside(path, other);
    }
  } finally {
    rmSync(mine, { force: true });
  }
}

/** Does the work while holding the lock, waiting for it as long as its holder lives. */
export async function withLock(path, work) {
  for (;;) {
    const { release } = takeLock(path);
    if (!release) {
      await pause(100);
      continue;
    }
    try {
      return await work();
    } finally {
      release();
    }
  }
}

// A link appears whole or not at all, so that nobody reads a lock that is half written.
function linked(from, to) {
  try {
    linkSync(from, to);
    return true;
  } catch (error) {
    if (error.code === "EEXIST") return false;
    throw error;
  }
}

function read(path) {
  try {
    return JSON.parse(readFileSync(path, "utf8"));
  } catch {
    return null;
  }
}

// Of two who find a dead holder only one can move its file; if that file is a new one by then, it goes back.
function putAside(path, dead) {
  const aside = `${path}.${process.pid}.dead`;
  try {
    renameSync(path, aside);
    const moved = read(aside);
    if (moved && (moved.pid !== dead?.pid || moved.startedAt !== dead?.startedAt)) linked(aside, path);
  } catch (error) {
    if (error.code !== "ENOENT") throw error;
  }
  rmSync(aside, { force: true });
}
