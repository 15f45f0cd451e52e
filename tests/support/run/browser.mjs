import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { reported } from "./reported.mjs";

const program = createRequire(import.meta.url).resolve("@playwright/test/cli");
const config = fileURLToPath(new URL("../../browser/playwright.config.ts", import.meta.url));
const reporter = fileURLToPath(new URL("playwright-reporter.mjs", import.meta.url));

/** Runs the browser tests. */
export function browserTests() {
  return reported("browser", [program, "test", "--config", config, "--reporter", reporter]);
}
