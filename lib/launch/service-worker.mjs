import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "./paths.mjs";

const WORKER = "public/sw.js";
const PAGE = ".next/server/app/log.html";
/** sha256 of the inline scripts of /log, for whoever writes its Content-Security-Policy: it is static, so it has no nonce. */
const HASHES = ".next/log-inline-scripts.json";
const FONTS = /\.(woff2?|ttf)$/;

/** Next serves only files that were in public when it was built. */
export function placeholderWorker(root = ROOT) {
  mkdirSync(join(root, "public"), { recursive: true });
  writeFileSync(join(root, WORKER), "// written after the build\n");
}

/** Whether the worker of a finished build is there. */
export function isWorkerThere(root = ROOT) {
  return [WORKER, PAGE, HASHES].every((path) => existsSync(join(root, path)));
}

/** Writes the service worker of the build that is there, and the hashes of the inline scripts of /log. */
export function writeWorker(root = ROOT) {
  const read = (path) => readFileSync(join(root, path), "utf8");
  const page = read(PAGE);
  const files = filesOf(root);
  const assets = reachedFrom(page, files, (file) => read(`.next/static/${file}`));
  const source = [
    `const BUILD = ${JSON.stringify(read(".next/BUILD_ID").trim())};`,
    `const ASSETS = ${JSON.stringify(assets.map((file) => `/_next/static/${file}`))};`,
    read("app/_offline/flush.mjs").replaceAll(/^export /gm, ""),
    read("app/_offline/worker.mjs"),
  ].join("\n");
  writeFileSync(join(root, WORKER), source);
  writeFileSync(join(root, HASHES), `${JSON.stringify(inlineScriptHashes(page))}\n`);
}

function filesOf(root) {
  return readdirSync(join(root, ".next/static"), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(join(root, ".next/static/").length))
    .map((path) => path.replaceAll("\\", "/"))
    .filter((path) => /\.(js|css)$/.test(path) || FONTS.test(path));
}

/** The files a page names, and those that these name in turn: what it needs, and what it may load later. */
export function reachedFrom(page, files, textOf) {
  const byName = new Map(files.map((file) => [file.split("/").at(-1), file]));
  const reached = new Set();
  const look = (text) => {
    for (const [name] of text.matchAll(/[\w.~-]+\.(?:js|css|woff2?|ttf)\b/g)) {
      const file = byName.get(name);
      if (file === undefined || reached.has(file)) continue;
      reached.add(file);
      if (!FONTS.test(file)) look(textOf(file));
    }
  };
  look(page);
  return [...reached].sort();
}

/** 'sha256-…' of every script that stands in the page itself. */
export function inlineScriptHashes(page) {
  const scripts = [...page.matchAll(/<script(?![^>]*\ssrc=)[^>]*>([\s\S]*?)<\/script>/g)].map(
    ([, text]) => text,
  );
  return [...new Set(scripts)].map(
    (text) => `'sha256-${createHash("sha256").update(text).digest("base64")}'`,
  );
}
