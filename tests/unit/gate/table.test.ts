import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path/posix";
import { describe, expect, test } from "vitest";
import { mayAsk, ROWS, rowOf } from "../../../app/_gate/access.ts";
import { ACTIONS } from "../../../app/_gate/actions-table.ts";
import { ROLES } from "../../../app/_gate/roles.ts";
import { actionsWithoutGuard, type GuardedAction, guardedActions } from "../../support/server-actions.ts";

const ROOT = new URL("../../../", import.meta.url).pathname;

function filesUnder(folder: string): string[] {
  return readdirSync(join(ROOT, folder)).flatMap((name) => {
    const path = join(folder, name);
    return statSync(join(ROOT, path)).isDirectory() ? filesUnder(path) : [path];
  });
}

const APP = filesUnder("app");
// Next makes addresses of files of these names, too: https://nextjs.org/docs/app/api-reference/file-conventions/metadata
const METADATA: Readonly<Record<string, string>> = {
  "app/manifest.ts": "/manifest.webmanifest",
  "app/icon.svg": "/icon.svg",
  "app/apple-icon.png": "/apple-icon.png",
};

/** Addresses the file tree makes. */
function addresses(): string[] {
  const made = APP.flatMap((path) => {
    const place = /^app(.*)\/(page\.tsx|route\.ts)$/.exec(path)?.[1];
    return place === undefined ? [] : [place === "" ? "/" : place];
  });
  const files = filesUnder("public").map((path) => path.slice("public".length));
  return [...made, ...files, ...Object.values(METADATA)];
}

const sample = (path: string) =>
  path.replaceAll(/\[\.\.\.\w+\]/g, "any/thing").replaceAll(/\[\w+\]/g, "some");

describe("the table of who may do what", () => {
  test("has a row for every page, route and public file there is", () => {
    const known = new Set(ROWS.map(({ path }) => path));
    const catchAll = new Set(["/api/auth/[...all]"]); // only the addresses named below it are open
    const missing = addresses().filter(
      (path) => !known.has(path) && !catchAll.has(path) && rowOf(sample(path))?.path === undefined,
    );
    expect(missing).toEqual([]);
    expect(addresses().length).toBeGreaterThan(100);
    const pages = addresses().filter((path) => path.includes("[") && !catchAll.has(path));
    expect(pages.filter((path) => !known.has(path))).toEqual([]);
  });

  test("has no row for what is not there", () => {
    const there = new Set(addresses());
    const made = (path: string) =>
      there.has(path) ||
      path.startsWith("/api/auth/") ||
      path.startsWith("/_next/static/") ||
      path === "/sw.js" || // the build writes it
      [...there].some((one) => one.startsWith("/icons/") && path === "/icons/[file]");
    expect(ROWS.map(({ path }) => path).filter((path) => !made(path))).toEqual([]);
    expect(new Set(ROWS.map(({ path }) => path)).size).toBe(ROWS.length);
  });

  test("knows every metadata file of the tree", () => {
    const metadata = APP.filter((path) =>
      /^app\/(.*\/)?(manifest|icon|apple-icon|opengraph-image|robots|sitemap|favicon)\b/.test(path),
    );
    expect(metadata.filter((path) => !(path in METADATA))).toEqual([]);
  });

  test("lets nobody to what it does not name", () => {
    for (const path of [
      "/nothing",
      "/_next/image",
      "/api/auth/sign-up/email",
      "/api/auth/get-session",
      "/stock/",
    ])
      for (const role of ROLES)
        for (const method of ["GET", "POST"]) expect(mayAsk(role, method, path)).toBe(false);
  });

  test("goes by the plainest words of an address", () => {
    expect(rowOf("/materials/new")?.path).toBe("/materials/new");
    expect(rowOf("/materials/0190")?.path).toBe("/materials/[id]");
    expect(rowOf("/api/v1/lots/1/asking-prices")?.path).toBe("/api/v1/lots/[id]/asking-prices");
    expect(rowOf("/api/v1/what/ever")?.path).toBe("/api/v1/[...rest]");
  });

  test("lets a reader write nothing but what belongs to signing in, and what asks for the launcher's word", () => {
    const written = ROWS.filter(({ writes, reads }) => writes.includes("reader") && writes !== reads);
    expect(written.map(({ path }) => path)).toEqual([
      "/calendar/daily",
      "/api/auth/sign-in/email",
      "/api/auth/sign-out",
      "/api/auth/passkey/verify-authentication",
      "/api/auth/passkey/verify-registration",
    ]);
    const done = Object.entries(ACTIONS).filter(([, roles]) =>
      (roles as readonly string[]).includes("reader"),
    );
    expect(done.map(([name]) => name).sort()).toEqual(
      [
        "enterForm",
        "firstForm",
        "joinForm",
        "leaveDemo",
        "openDemo",
        "pairAPhone",
        "pairForm",
        "removePasskey",
      ].concat(["revokeSession", "signOut"]),
    );
  });

  test("lets nobody who is not signed in to anything but the door", () => {
    const open = ROWS.filter(({ reads, writes }) => reads.includes("nobody") || writes.includes("nobody"));
    for (const { path, reach } of open) expect([path, reach]).toEqual([path, "none"]);
  });

  test("lets who may see the demo alone never to the house's own workspace", () => {
    const own = ROWS.filter(({ reach }) => reach === "own");
    expect(own.filter(({ reads, writes }) => reads.includes("demo") || writes.includes("demo"))).toEqual([]);
  });
});

describe("server actions", () => {
  const sources = APP.filter((path) => /\.tsx?$/.test(path)).map((path) => ({
    path,
    text: readFileSync(join(ROOT, path), "utf8"),
  }));
  const found: GuardedAction[] = sources.flatMap(guardedActions);

  test("each begins by asking the table for its own line", () => {
    expect(sources.flatMap(actionsWithoutGuard)).toEqual([]);
    expect(found.length).toBeGreaterThan(80);
  });

  test("each has its line, one name each, and no line is left over", () => {
    expect(found.map(({ name }) => name).sort()).toEqual(Object.keys(ACTIONS).sort());
  });

  test("one that asks nothing, or for another's line, is found", () => {
    const action = (body: string) => ({
      path: "a.ts",
      text: `"use server";\nexport async function planted(form: FormData) {\n${body}\n}`,
    });
    expect(actionsWithoutGuard(action('await allowed("planted");'))).toEqual([]);
    expect(actionsWithoutGuard(action('await write(form); await allowed("planted");'))).toEqual([
      "a.ts planted",
    ]);
    expect(actionsWithoutGuard(action('await allowed("other");'))).toEqual(["a.ts planted"]);
    expect(actionsWithoutGuard(action('const held = await heldBack("planted", p, form); write();'))).toEqual([
      "a.ts planted",
    ]);
    const inline = { path: "b.tsx", text: 'export function f() { async function g() { "use server"; } }' };
    expect(actionsWithoutGuard(inline)).toEqual(["b.tsx inline"]);
  });
});
