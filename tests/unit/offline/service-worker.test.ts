import { createHash } from "node:crypto";
import { expect, test } from "vitest";
import { inlineScriptHashes, reachedFrom } from "../../../lib/launch/service-worker.mjs";

test("the worker puts by what the page names, and what that names in turn, and nothing else", () => {
  const files = ["chunks/a.js", "chunks/b.js", "chunks/look.css", "media/text.woff2", "chunks/other.js"];
  const texts: Readonly<Record<string, string>> = {
    "chunks/a.js": 'load("static/chunks/b.js")',
    "chunks/look.css": "url(../media/text.woff2)",
  };
  const page = '<link href="/_next/static/chunks/look.css"><script src="/_next/static/chunks/a.js"></script>';
  expect(reachedFrom(page, files, (file: string) => texts[file] ?? "")).toEqual([
    "chunks/a.js",
    "chunks/b.js",
    "chunks/look.css",
    "media/text.woff2",
  ]);
});

test("every inline script of the page is known by its hash, once; a script with an address is none", () => {
  const of = (text: string) => `'sha256-${createHash("sha256").update(text).digest("base64")}'`;
  const page =
    '<script src="a.js"></script><script>one()</script><script id="x">two()</script><script>one()</script>';
  expect(inlineScriptHashes(page)).toEqual([of("one()"), of("two()")]);
});
