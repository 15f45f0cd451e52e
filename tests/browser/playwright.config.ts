import { defineConfig } from "@playwright/test";
import { chromiumPath } from "./support/chromium.mjs";
import { QUIET_BROWSER } from "./support/quiet-browser.ts";
import { PHONE } from "./support/sizes.ts";

export default defineConfig({
  testDir: ".",
  testMatch: "**/*.test.ts",
  outputDir: "../../test-results",
  globalSetup: "./support/global-setup.ts",
  workers: 1,
  fullyParallel: false,
  forbidOnly: true,
  timeout: 60_000,
  expect: { timeout: 10_000 },
  reporter: "list",
  use: {
    viewport: PHONE,
    hasTouch: true,
    locale: "en-CA",
    timezoneId: "America/Halifax",
    launchOptions: { executablePath: chromiumPath() ?? "", args: QUIET_BROWSER },
  },
});
