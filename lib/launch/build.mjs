import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { PREPARING } from "./install.mjs";
import { withLock } from "./lock.mjs";
import { ROOT } from "./paths.mjs";
import { run } from "./running-process.mjs";
import { isWorkerThere, placeholderWorker, writeWorker } from "./service-worker.mjs";
import { done } from "./steps.mjs";

const SOURCES = [
  "app",
  "lib",
  "prisma/demo",
  "prisma/schema.prisma",
  "proxy.ts",
  "public",
  "next.config.ts",
  "proxy.ts",
  "tsconfig.json",
  "package-lock.json",
];
const NOT_SOURCES = ["lib/launch", "lib/data/generated", "public/sw.js"];
const CLIENT = "lib/data/generated";

const packages = createRequire(import.meta.url);
const nextProgram = packages.resolve("next/dist/bin/next");
const prismaProgram = packages.resolve("prisma/build/index.js");

/** Where a build keeps the mark of the sources it was made from. */
export const stampPath = (root = ROOT) => join(root, ".next", "built-from");

/** Makes the database client and the pages, unless those there were made from these very sources. */
export async function buildProgram() {
  if (isBuilt()) return done("already built", null);
  return withLock(PREPARING, async () => {
    if (isBuilt()) return done("built by another start", null);
    const fingerprint = sourcesFingerprint();
    await generateClient();
    placeholderWorker();
    await run(process.execPath, [nextProgram, "build"], {
      what: "next build",
      env: { NODE_ENV: "production" },
    });
    writeWorker();
    writeFileSync(stampPath(), fingerprint); // last, so that a build cut short is made again
    return done("built", null);
  });
}

/** Makes the database client from prisma/schema.prisma, unless it was made from it. */
export async function generateClient() {
  const fingerprint = fingerprintOf(ROOT, ["prisma/schema.prisma", "package-lock.json"]);
  const stamp = join(ROOT, CLIENT, "made-from");
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === fingerprint) return;
  await run(process.execPath, [prismaProgram, "generate"], { what: "prisma generate" });
  writeFileSync(stamp, fingerprint);
}

function isBuilt() {
  const stamp = stampPath();
  if (!existsSync(stamp) || !isWorkerThere()) return false;
  return readFileSync(stamp, "utf8") === sourcesFingerprint();
}

/** One text that changes when any file the pages are built from changes. */
export function sourcesFingerprint(root = ROOT) {
  return fingerprintOf(root, SOURCES);
}

function fingerprintOf(root, paths) {
  const hash = createHash("sha256");
  for (const path of paths.flatMap((start) => filesUnder(root, start))) {
    hash
      .update(`${path}\0`)
      .update(readFileSync(join(root, path)))
      .update("\0");
  }
  return hash.digest("hex");
}

function filesUnder(root, path) {
  const full = join(root, path);
  if (NOT_SOURCES.includes(path) || !existsSync(full)) return [];
  if (!statSync(full).isDirectory()) return [path];
  return readdirSync(full)
    .sort()
    .flatMap((name) => filesUnder(root, `${path}/${name}`));
}
