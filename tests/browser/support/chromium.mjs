import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";

const NAMES = ["chromium", "chromium-browser", "chrome"];

/**
 * The Chromium of this computer (CHROMIUM, else the first of that name in PATH), or null.
 * @param {Readonly<Record<string, string | undefined>>} given
 */
export function chromiumPath(given = process.env) {
  const folders = (given.PATH ?? "").split(delimiter).filter((folder) => folder !== "");
  const places = folders.flatMap((folder) => NAMES.map((name) => join(folder, name)));
  return [given.CHROMIUM ?? "", ...places].find(isProgram) ?? null;
}

function isProgram(path) {
  try {
    if (path === "") return false;
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
