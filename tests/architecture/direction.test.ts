import { readdirSync, rmSync } from "node:fs";
import { join, relative } from "node:path/posix";
import { afterEach, describe, expect, test } from "vitest";
import rules from "../../.dependency-cruiser.mjs";
import { ROOT } from "../../lib/launch/paths.mjs";
import { cruise } from "./cruise.ts";
import { LAYERS } from "./layers.mjs";
import { fileOf, plant, soundProject } from "./planted-project.ts";
import { trackedFiles } from "./tracked-files.ts";

const PARTS = ["app", "lib", "prisma", "tests"];

describe("the direction of imports", () => {
  test("every part of lib stands in the list of layers, and the list names nothing else", () => {
    expect(readdirSync(join(ROOT, "lib")).sort()).toEqual(LAYERS.map(({ name }) => name).sort());
  });

  test("is kept, every committed file of the program having been looked at", () => {
    const { modules, summary } = cruise(ROOT, [...PARTS, "proxy.ts"]);
    expect(summary.violations).toEqual([]);
    const seen = new Set(modules.map(({ source }) => source));
    const committed = trackedFiles(
      "app/**.ts",
      "app/**.tsx",
      "lib/**.ts",
      "lib/**.mjs",
      "prisma/**.ts",
      "proxy.ts",
    );
    expect(committed.length).toBeGreaterThan(300);
    const typesOnly = /\.d\.ts$/;
    expect(
      committed.map(({ path }) => path).filter((path) => !typesOnly.test(path) && !seen.has(path)),
    ).toEqual([]);
  }, 60_000);
});

describe("each rule is seen to refuse", () => {
  let folder = "";
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  /** The rules broken by one import, planted into an otherwise sound project. */
  function brokenBy(path: string, imported: string): string[] {
    folder = soundProject();
    plant(folder, path, imported);
    return cruise(folder, PARTS).summary.violations.map(({ rule }) => rule.name);
  }

  const to = (path: string, target: string) => {
    const way = relative(join("/", path, ".."), join("/", target));
    return way.startsWith(".") ? way : `./${way}`;
  };

  test("a sound project breaks none", () => {
    folder = soundProject();
    const { modules, summary } = cruise(folder, PARTS);
    expect(summary.violations).toEqual([]);
    expect(modules.length).toBeGreaterThan(LAYERS.length);
  });

  test("a part of lib that imports the next one below it", () => {
    folder = soundProject();
    for (const [place, { name }] of LAYERS.entries()) {
      const below = LAYERS[place + 1];
      if (below) plant(folder, fileOf(name), to(fileOf(name), fileOf(below.name)));
    }
    const broken = new Set(cruise(folder, PARTS).summary.violations.map(({ rule }) => rule.name));
    expect([...broken].sort()).toEqual(
      LAYERS.slice(0, -1)
        .map(({ name }) => `${name} knows nothing below it`)
        .sort(),
    );
  });

  const PLANTED = [
    ["no cycles", "app/page.tsx", "./page.tsx"],
    ["every import is there", "app/page.tsx", "./nowhere.ts"],
    ["pure uses no Node", "lib/money/it.ts", "node:fs"],
    ["pure uses no package", "lib/show/it.ts", "uuid"],
    ["one decimal", "app/page.tsx", "decimal.js"],
    ["the database in lib/data", "app/page.tsx", "pg"],
    ["the browser gets no lib/data", "app/field.client.tsx", "../lib/data/it.ts"],
    ["pages are not launched", "app/page.tsx", "../lib/launch/it.ts"],
    ["lib knows no screen", "lib/data/it.ts", "../../app/page.tsx"],
    ["nobody imports tests", "prisma/seed.ts", "../tests/some.test.ts"],
    ["the program uses no development package", "lib/launch/it.ts", "vitest"],
  ] as const;

  test.each(PLANTED)("%s: %s importing %s", (rule, path, imported) => {
    expect(brokenBy(path, imported)).toEqual([rule]);
  });

  test("no rule is left without such a plant", () => {
    const planted = PLANTED.map(([rule]) => String(rule));
    const named = rules.forbidden
      .map(({ name }) => name)
      .filter((name) => !name.endsWith("knows nothing below it"));
    expect(planted.sort()).toEqual(named.sort());
  });
});
