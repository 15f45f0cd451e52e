import { randomBytes } from "node:crypto";
import { chmodSync, linkSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** What sessions are signed with: made on the first start, kept in DATA_DIR for its owner alone, never printed. */
export function signInSecret(dataDir) {
  return keptFile(join(dataDir, "sign-in-secret"), () => `${randomBytes(32).toString("hex")}\n`).trim();
}

/** The text of a file nobody else may read, made when it is not there yet. Of two who make it, one wins and both read it. */
export function keptFile(path, make) {
  const there = textOf(path);
  if (there !== null) {
    chmodSync(path, 0o600);
    return there;
  }
  mkdirSync(join(path, ".."), { recursive: true, mode: 0o700 });
  const mine = `${path}.${process.pid}`;
  writeFileSync(mine, make(), { mode: 0o600, flush: true });
  try {
    linkSync(mine, path);
  } catch (error) {
    if (error.code !== "EEXIST") throw error;
  } finally {
    rmSync(mine, { force: true });
  }
  return readFileSync(path, "utf8");
}

function textOf(path) {
  try {
    return readFileSync(path, "utf8");
  } catch (error) {
    if (error.code === "ENOENT") return null;
    throw error;
  }
}
