import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { chromiumPath } from "../browser/support/chromium.mjs";
import { notRun, oneCheck, outcome, sum } from "../support/run/outcome.mjs";
import { reported } from "../support/run/reported.mjs";

const vitest = join(dirname(createRequire(import.meta.url).resolve("vitest/package.json")), "vitest.mjs");
const reporter = fileURLToPath(new URL("../support/run/vitest-reporter.mjs", import.meta.url));

describe("the count that closes a run", () => {
  test("adds up what passed and names what failed", () => {
    const failed = [{ name: "a test", reason: "1 is not 2" }];
    const { passed, failed: all } = sum([outcome("unit", 3, failed), oneCheck("types", null)], false);
    expect(passed).toBe(4);
    expect(all).toEqual([{ part: "unit", name: "a test", reason: "1 is not 2" }]);
  });

  test("says what was left out, which fails nothing", () => {
    const { failed, left } = sum([outcome("unit", 3), notRun("browser", "no Chromium")], false);
    expect(failed).toEqual([]);
    expect(left).toEqual([{ name: "browser", reason: "no Chromium" }]);
  });

  test("counts what was left out as failed where nothing may be", () => {
    const { failed } = sum([outcome("unit", 3), notRun("browser", "no Chromium")], true);
    expect(failed).toEqual([{ part: "left out", name: "browser", reason: "no Chromium" }]);
  });

  test("of a run in which nothing was run is a failure", () => {
    expect(sum([], false).failed).toHaveLength(1);
  });
});

const SKIPPED = ["test", "skip"].join(".");
const PLANTED = {
  "passes.test.js": "test('one', () => {}); test('two', () => {});",
  "fails.test.js": "describe('sums', () => test('add up', () => expect(1).toBe(2)));",
  "lost.test.js": "import './nowhere.js'; test('one', () => {});",
  "late.test.js":
    "test('one', async () => { setTimeout(() => { throw new Error('late') }); await new Promise((r) => setTimeout(r, 50)); });",
  "skips.test.js": `${SKIPPED}('one', () => {});`,
  "empty.test.js": "export {};",
  "remarks.test.js": "test('one', () => console.info('not compared: a file that is not here'));",
};

describe("a planted suite", () => {
  let folder = "";
  let outcomes: Awaited<ReturnType<typeof reported>> = [];
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), "dunnage-planted-"));
    for (const [name, text] of Object.entries(PLANTED)) writeFileSync(join(folder, name), text);
    const args = [vitest, "run", "--root", folder, "--globals", "--reporter", reporter];
    outcomes = await reported("planted", args);
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  const failed = () => outcomes.flatMap((one) => one.failed);
  const reasonOf = (name: string) => failed().find((one) => one.name === name)?.reason;

  test("has every test that passed counted", () => {
    expect(outcomes.reduce((count, { passed }) => count + passed, 0)).toBe(4);
  });

  test("has a test that fails, a file that cannot be loaded or holds no test, and an error nobody caught named", () => {
    expect(
      failed()
        .map(({ name }) => name)
        .sort(),
    ).toEqual(["an error nobody caught", "empty.test.js", "fails.test.js > sums > add up", "lost.test.js"]);
  });

  test("has the reasons beside them", () => {
    expect(reasonOf("fails.test.js > sums > add up")).toContain("expected 1 to be 2");
    expect(reasonOf("lost.test.js")).toContain("nowhere.js");
    expect(reasonOf("an error nobody caught")).toContain("late");
  });

  test("has a skipped test said to be left out", () => {
    expect(outcomes.flatMap((one) => one.left).map(({ name }) => name)).toEqual(["skips.test.js > one"]);
  });

  test("may remark on what it did not compare", () => {
    expect(outcomes.flatMap((one) => one.remarks)).toEqual(["not compared: a file that is not here"]);
  });
});

test("a run that ends without a report is a failure with its last words", async () => {
  const [only] = await reported("planted", ["-e", "console.error('out of memory'); process.exit(3)"]);
  expect(only?.failed[0]?.reason).toContain("out of memory");
  const [silent] = await reported("planted", ["-e", ""]);
  expect(silent?.failed[0]?.reason).toBe("it ended without a report");
});

test("Chromium is the one named, else the first in PATH, else none", () => {
  const node = process.execPath;
  expect(chromiumPath({ CHROMIUM: node, PATH: "" })).toBe(node);
  expect(chromiumPath({ PATH: import.meta.dirname })).toBe(null);
  expect(chromiumPath({})).toBe(null);
});
