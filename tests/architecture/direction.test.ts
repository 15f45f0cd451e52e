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

const PLANTED = [
  ["no cycles", "app/cycle/one.tsx", "./two.tsx"],
  ["every import is there", "app/lost.tsx", "./nowhere.ts"],
  ["pure uses no Node", "lib/money/reads.ts", "node:fs"],
  ["pure uses no package", "lib/show/makes.ts", "uuid"],
  ["one decimal", "app/sums.tsx", "decimal.js"],
  ["the database in lib/data", "app/asks.tsx", "pg"],
  ["the browser gets no lib/data", "app/asks.client.tsx", "../lib/data/it.ts"],
  ["pages are not launched", "app/starts.tsx", "../lib/launch/it.ts"],
  ["lib knows no screen", "lib/data/shows.ts", "../../app/page.tsx"],
  ["nobody imports tests", "prisma/tests.ts", "../tests/some.test.ts"],
  ["the program uses no development package", "lib/launch/tests.ts", "vitest"],
] as const;

const knowsNothingBelow = (name: string) => `${name} knows nothing below it`;

describe("each rule is seen to refuse", () => {
  let folder = "";
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  test("a sound project breaks none", () => {
    folder = soundProject();
    const { modules, summary } = cruise(folder, PARTS);
    expect(summary.violations).toEqual([]);
    expect(modules.length).toBeGreaterThan(LAYERS.length);
  });

  test("one forbidden import for each rule, planted into a sound project, breaks just that rule", () => {
    folder = soundProject();
    for (const [, path, imported] of PLANTED) plant(folder, path, imported);
    plant(folder, "app/cycle/two.tsx", "./one.tsx");
    const broken = cruise(folder, PARTS).summary.violations.map(({ rule, from }) => [rule.name, from]);
    const cycle = broken.filter(([rule]) => rule === "no cycles");
    expect(cycle.map(([, from]) => String(from)).filter((from) => !from.startsWith("app/cycle/"))).toEqual(
      [],
    );
    expect(cycle.length).toBeGreaterThan(0); // a cycle is named once or for each of its files
    const others = PLANTED.map(([rule, path]) => [rule, path]).filter(([rule]) => rule !== "no cycles");
    expect(broken.filter(([rule]) => rule !== "no cycles").sort()).toEqual(others.sort());
  });

  test("a part of lib that imports the next one below it", () => {
    folder = soundProject();
    for (const [place, { name }] of LAYERS.entries()) {
      const below = LAYERS[place + 1];
      if (below) plant(folder, fileOf(name), wayTo(fileOf(name), fileOf(below.name)));
    }
    const broken = new Set(cruise(folder, PARTS).summary.violations.map(({ rule }) => rule.name));
    const rulesOfOrder = LAYERS.slice(0, -1).map(({ name }) => knowsNothingBelow(name));
    expect([...broken].sort()).toEqual(rulesOfOrder.sort());
  });

  test("no rule is left without such a plant", () => {
    const ofOrder = LAYERS.slice(0, -1).map(({ name }) => knowsNothingBelow(name));
    const seen = [...ofOrder, ...PLANTED.map(([rule]) => rule)];
    expect(rules.forbidden.map(({ name }) => name).sort()).toEqual(seen.sort());
  });
});

function wayTo(path: string, target: string): string {
  const way = relative(join("/", path, ".."), join("/", target));
  return way.startsWith(".") ? way : `./${way}`;
}
