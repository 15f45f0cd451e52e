import { defineConfig } from "@playwright/test";
import { chromiumPath } from "./support/chromium.mjs";
import { PHONE } from "./support/sizes.ts";

const QUIET_BROWSER = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

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
