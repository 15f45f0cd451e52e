import react from "@vitejs/plugin-react";
import { defineConfig, type TestProjectInlineConfiguration } from "vitest/config";

const CALENDAR = ["tests/unit/calendar/**/*.test.ts", "tests/unit/show/*day*.test.ts"];

function project(name: string, include: string[], test: TestProjectInlineConfiguration["test"] = {}) {
  const setupFiles = ["tests/support/console-errors.ts", ...[test.setupFiles ?? []].flat()];
  return { extends: true as const, test: { ...test, name, include, setupFiles } };
}

/** The tests about days again, in a zone where a mistake about them shows. */
function daysIn(zone: string) {
  return project(`days in ${zone}`, CALENDAR, { env: { TZ: zone }, setupFiles: ["tests/support/zone.ts"] });
}

export default defineConfig({
  plugins: [react()],
  resolve: {
    alias: [
      { find: /^server-only$/, replacement: new URL("tests/support/empty.ts", import.meta.url).pathname },
      { find: /^@\//, replacement: new URL("./", import.meta.url).pathname },
    ],
  },
  test: {
    pool: "forks",
    maxWorkers: 2,
    passWithNoTests: false,
    projects: [
      project("unit", ["tests/unit/**/*.test.{ts,tsx}"]),
      project("laws", ["tests/laws/**/*.test.ts"], { testTimeout: 30_000 }),
      project("references", ["tests/references/**/*.test.ts"]),
      daysIn("America/St_Johns"),
      daysIn("Pacific/Kiritimati"),
      daysIn("UTC"),
      project("data", ["tests/data/**/*.test.ts"], {
        globalSetup: ["tests/support/template-database.ts"],
        testTimeout: 60_000,
        hookTimeout: 60_000,
      }),
      project("api", ["tests/api/**/*.test.ts"], {
        globalSetup: ["tests/support/built.ts", "tests/support/template-database.ts"],
        testTimeout: 60_000,
        hookTimeout: 120_000,
      }),
      project("launch", ["tests/launch/**/*.test.ts"], {
        globalSetup: ["tests/support/built.ts", "tests/support/template-database.ts"],
        testTimeout: 120_000,
        hookTimeout: 120_000,
      }),
      project("architecture", ["tests/architecture/**/*.test.ts"], { testTimeout: 120_000 }),
    ],
  },
});
