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
    testTimeout: 120_000, // an end to what hangs; no test measures time
    hookTimeout: 240_000,
    projects: [
      project("unit", ["tests/unit/**/*.test.{ts,tsx}"]),
      project("laws", ["tests/laws/**/*.test.ts"]),
      project("references", ["tests/references/**/*.test.ts"]),
      daysIn("America/St_Johns"),
      daysIn("Pacific/Kiritimati"),
      daysIn("UTC"),
      project("data", ["tests/data/**/*.test.ts"], {
        globalSetup: ["tests/support/template-database.ts"],
      }),
      project("api", ["tests/api/**/*.test.ts"], {
        globalSetup: ["tests/support/built.ts", "tests/support/template-database.ts"],
      }),
      project("launch", ["tests/launch/**/*.test.ts"], {
        globalSetup: ["tests/support/built.ts", "tests/support/template-database.ts"],
      }),
      project("architecture", ["tests/architecture/**/*.test.ts"]),
    ],
  },
});
