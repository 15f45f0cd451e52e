import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { ROOT } from "../../lib/launch/paths.mjs";
import {
  impure,
  lineCount,
  looseVersions,
  medianLength,
  placesNamed,
  tooLong,
  withoutDocstring,
} from "./file-rules.ts";
import { LAYERS } from "./layers.mjs";
import { trackedFiles } from "./tracked-files.ts";

const code = trackedFiles("*.ts", "*.tsx", "*.mjs", "*.css");
const ofLib = code.filter(({ path }) => path.startsWith("lib/"));
const planted = (text: string) => [{ path: "planted.ts", text }];

describe("a file", () => {
  test("has at most 300 lines, and half of them at most 60", () => {
    expect(code.length).toBeGreaterThan(300);
    expect(tooLong(code)).toEqual([]);
    expect(medianLength(code)).toBeLessThanOrEqual(60);
  });

  test("of 301 lines is found, one of 300 is not", () => {
    const lines = (count: number) => planted("a\n".repeat(count));
    expect(lineCount("a\nb\n")).toBe(2);
    expect(tooLong(lines(300))).toEqual([]);
    expect(tooLong(lines(301))).toEqual(["planted.ts"]);
    expect(medianLength([...lines(1), ...lines(61), ...lines(99)])).toBe(61);
  });

  test("names no package registry and no path of one machine", () => {
    const files = trackedFiles();
    expect(files.map(({ path }) => path)).toContain("package-lock.json");
    expect(placesNamed(files)).toEqual([]);
  });

  test.each([
    ["/", "home", "/somebody/project"],
    ["/", "tmp", "/folder"],
    ["/", "root", "/.cache"],
    ["C:\\", "Users", "\\somebody"],
    ["registry", ".", "example.org"],
    ['"resolved": "https', "://", 'example.org/a.tgz"'],
  ])("that names %s%s%s is found", (...parts) => {
    expect(placesNamed(planted(`one\ntwo ${parts.join("")}`))).toEqual(["planted.ts:2"]);
  });

  test("may name an address of the program, a folder of Debian's, and a path below its own", () => {
    const allowed =
      "http://127.0.0.1:3000 /usr/lib/postgresql/15/bin ./tmp/a app/home/b https://example.org/x";
    expect(placesNamed(planted(allowed))).toEqual([]);
  });
});

describe("an exported function of lib", () => {
  test("has a docstring", () => {
    expect(ofLib.length).toBeGreaterThan(150);
    expect(withoutDocstring(ofLib)).toEqual([]);
  });

  test("without one is found, however it is written", () => {
    const text = [
      "export function bare() {}",
      "export const arrow = () => 1;",
      "/** Says what it answers. */",
      "export function said() {}",
      "function own() {}",
      "export const NUMBER = 1;",
      "export default function () {}",
    ].join("\n");
    expect(withoutDocstring(planted(text))).toEqual([
      "planted.ts bare",
      "planted.ts arrow",
      "planted.ts default",
    ]);
  });
});

describe("the pure parts of lib", () => {
  const pure = LAYERS.filter((layer) => layer.pure).map(({ name }) => `lib/${name}`);

  test("ask no clock, no chance, no process", () => {
    const files = ofLib.filter(({ path }) =>
      pure.some((part) => path === part || path.startsWith(`${part}/`)),
    );
    expect(files.length).toBeGreaterThan(100);
    expect(impure(files)).toEqual([]);
  });

  test("that did would be found", () => {
    for (const asked of ["Date.now()", "new Date()", "Math.random()", "process.env", "console.log(1)"])
      expect(impure(planted(`const it = ${asked};`))).toEqual(["planted.ts"]);
    expect(impure(planted("const it = new Date(0); // a given moment"))).toEqual([]);
  });
});

describe("packages", () => {
  const packageJson = readFileSync(join(ROOT, "package.json"), "utf8");

  test("are asked for by one exact version", () => {
    expect(looseVersions(packageJson)).toEqual([]);
  });

  test("asked for by a range or a tag are found", () => {
    const loose = {
      dependencies: { a: "^1.0.0", b: "1.0.0" },
      devDependencies: { c: "latest", d: "1.0.0-beta.1" },
      overrides: { e: { f: "~1.0.0", g: "1.0.0" } },
    };
    expect(looseVersions(JSON.stringify(loose))).toEqual(["a ^1.0.0", "c latest", "f ~1.0.0"]);
  });

  test("are locked in the versions asked for", () => {
    const wanted = JSON.parse(packageJson);
    const locked = JSON.parse(readFileSync(join(ROOT, "package-lock.json"), "utf8")).packages;
    for (const [name, version] of Object.entries({ ...wanted.dependencies, ...wanted.devDependencies }))
      expect([name, locked[`node_modules/${name}`]?.version]).toEqual([name, version]);
  });

  test("hold one version of the database client", () => {
    const npm = process.env.npm_execpath;
    const [command, args] = npm?.endsWith(".js") ? [process.execPath, [npm]] : ["npm", []];
    const listed = execFileSync(command, [...args, "ls", "@prisma/client", "--all", "--parseable"], {
      cwd: ROOT,
      encoding: "utf8",
    });
    const places = new Set(
      listed
        .trim()
        .split("\n")
        .filter((path) => path.endsWith("@prisma/client")),
    );
    expect(places.size).toBe(1);
    expect(existsSync(join(ROOT, "node_modules/@prisma/client/package.json"))).toBe(true);
  });
});
