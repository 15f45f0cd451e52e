// `npm run pictures`: takes the pictures of the README anew, from the built program with the demo.
import { mkdirSync } from "node:fs";
import { chromium, type Page } from "@playwright/test";
import { chromiumPath } from "./support/chromium.mjs";
import globalSetup from "./support/global-setup.ts";
import { startProgram } from "./support/program.ts";
import { LAPTOP, PHONE } from "./support/sizes.ts";

const TALL = { width: LAPTOP.width, height: 1180 };
const TALL_PHONE = { width: PHONE.width, height: 1100 };

const FOLDER = new URL("pictures/", import.meta.url);

type Picture = Readonly<{
  name: string;
  size: { width: number; height: number };
  go: (page: Page) => Promise<void>;
}>;

async function follow(page: Page, from: string, link: string | RegExp): Promise<void> {
  await page.goto(from);
  await page.getByRole("main").getByRole("link", { name: link }).first().click();
  await page.waitForLoadState("networkidle");
}

const PICTURES: readonly Picture[] = [
  { name: "today", size: LAPTOP, go: async (page) => void (await page.goto("/")) },
  { name: "log", size: TALL_PHONE, go: logged },
  { name: "material", size: TALL, go: (page) => follow(page, "/materials", "Spruce plywood 1/2 in, 4x8") },
  { name: "project", size: TALL, go: (page) => follow(page, "/projects", "Heron Lane workshop") },
  { name: "savings", size: TALL, go: async (page) => void (await page.goto("/savings")) },
];

async function logged(page: Page): Promise<void> {
  await page.goto("/log");
  await page.getByRole("combobox", { name: "Material" }).fill("plywood 1/2");
  await page.getByRole("option", { name: "Spruce plywood 1/2 in, 4x8" }).click();
  await page.getByLabel("Price on the tag").fill("26.40");
  await page.getByText("all in").first().waitFor();
}

const stop = await globalSetup();
const program = await startProgram({ demo: true });
const browser = await chromium.launch({ executablePath: chromiumPath() ?? "", args: ["--no-sandbox"] });
mkdirSync(FOLDER, { recursive: true });
try {
  for (const { name, size, go } of PICTURES) {
    const context = await browser.newContext({
      baseURL: program.address,
      viewport: size,
      locale: "en-CA",
      timezoneId: "America/Halifax",
    });
    await context.addCookies([{ name: "dunnage-workspace", value: "demo", url: program.address }]);
    const page = await context.newPage();
    await go(page);
    await page.screenshot({ path: new URL(`${name}.png`, FOLDER).pathname, animations: "disabled" });
    await context.close();
  }
} finally {
  await browser.close();
  await program.stop();
  await stop();
}
