import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "../../lib/launch/paths.mjs";

/** A committed file: its path from the project's folder and its text. */
export type TrackedFile = Readonly<{ path: string; text: string }>;

const NO_TEXT = /\.(png|ico|jpg|webp|woff2?|pdf|xlsx)$/;

/** The text files git knows, of some kinds or of all. */
export function trackedFiles(...kinds: readonly string[]): TrackedFile[] {
  const listed = execFileSync("git", ["ls-files", "-z", ...kinds], { cwd: ROOT, encoding: "utf8" });
  return listed
    .split("\0")
    .filter((path) => path !== "" && !NO_TEXT.test(path) && existsSync(join(ROOT, path)))
    .map((path) => ({ path, text: readFileSync(join(ROOT, path), "utf8") }));
}
