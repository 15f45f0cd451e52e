import { readFileSync } from "node:fs";
import { join } from "node:path";
import { withLock } from "./lock.mjs";
import { ROOT } from "./paths.mjs";
import { Refusal } from "./refusal.mjs";
import { run } from "./running-process.mjs";
import { done } from "./steps.mjs";

/** Only one program at a time may install or build in this folder. */
export const PREPARING = join(ROOT, ".launch.lock");

/** Makes sure the packages the lock file names are installed. Uses nothing but Node itself. */
export async function installPackages() {
  requireNode(process.versions.node);
  if (packagesAreCurrent()) return done("already installed", null);
  return withLock(PREPARING, async () => {
    if (packagesAreCurrent()) return done("installed by another start", null);
    console.log("  packages   downloading what package-lock.json names (a minute or so, once)");
    await run(...npmCommand(["ci", "--no-audit", "--no-fund"]), {
      what: "npm ci",
      shell: process.platform === "win32",
    });
    return done("installed", null);
  });
}

/** @throws {Refusal} when Node is older than package.json asks for. */
export function requireNode(version) {
  const wanted = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8")).engines.node.replace(">=", "");
  const [major, minor] = version.split(".").map(Number);
  const [least, leastMinor] = wanted.split(".").map(Number);
  if (major > least || (major === least && minor >= leastMinor)) return;
  throw new Refusal(`This needs Node ${wanted} or newer; this is Node ${version}.`);
}

// npm tells its scripts where it is; started without npm, it is looked up by name.
function npmCommand(args) {
  const npm = process.env.npm_execpath;
  return npm?.endsWith(".js") ? [process.execPath, [npm, ...args]] : ["npm", args];
}

function packagesAreCurrent() {
  const wanted = packagesIn(join(ROOT, "package-lock.json"));
  const installed = packagesIn(join(ROOT, "node_modules", ".package-lock.json"));
  return wanted !== null && installed !== null && matches(wanted, installed);
}

function packagesIn(path) {
  try {
    return JSON.parse(readFileSync(path, "utf8")).packages;
  } catch {
    return null;
  }
}

/** Whether what npm noted as installed is what the lock file wants; optional packages may be absent. */
export function matches(wanted, installed) {
  const names = Object.keys(wanted).filter((name) => name !== "");
  const same = (name) =>
    installed[name].version === wanted[name].version && installed[name].integrity === wanted[name].integrity;
  const present = names.every((name) => (name in installed ? same(name) : mayBeAbsent(wanted[name])));
  return present && Object.keys(installed).every((name) => name in wanted);
}

const mayBeAbsent = (entry) => Boolean(entry.optional || entry.devOptional || entry.peer);
