import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowserContext, chromium, type Page } from "@playwright/test";
import { chromiumPath } from "./chromium.mjs";
import { QUIET_BROWSER } from "./quiet-browser.ts";
import { PHONE } from "./sizes.ts";
import { expect } from "./test.ts";

/** A phone: a browser with a memory of its own, which can be closed and opened again. */
export type Phone = Readonly<{
  page: () => Page;
  context: () => BrowserContext;
  /** The browser ends at once, and is started again with the same memory. */
  reopen: () => Promise<void>;
  stop: () => Promise<void>;
}>;

/** setUp: what is done to each new browser before its first page. */
export async function phoneAt(
  setUp: (context: BrowserContext) => Promise<unknown> = async () => undefined,
): Promise<Phone> {
  const memory = mkdtempSync(join(tmpdir(), "dunnage-phone-"));
  const open = async () => {
    const context = await chromium.launchPersistentContext(memory, {
      executablePath: chromiumPath() ?? "",
      args: QUIET_BROWSER,
      viewport: PHONE,
      hasTouch: true,
      locale: "en-CA",
      timezoneId: "America/Halifax",
    });
    await setUp(context);
    return { context, page: context.pages()[0] ?? (await context.newPage()) };
  };
  let now = await open();
  return {
    page: () => now.page,
    context: () => now.context,
    reopen: async () => {
      await now.context.close();
      now = await open();
    },
    stop: async () => {
      await now.context.close();
      rmSync(memory, { recursive: true, force: true });
    },
  };
}

/** Opens the aisle form and waits until it has its figures and its worker. */
export async function readyAt(page: Page, address: string): Promise<void> {
  await page.goto(`${address}/log`);
  await expect(page.getByText(/^Figures as of/)).toBeVisible();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
}

/** The phone's own count of what waits to be sent. */
export async function waiting(page: Page, count: number): Promise<void> {
  await expect(page.locator("[data-waiting]")).toHaveAttribute("data-waiting", String(count));
}

/** Logs a price of the first material that has these words, and waits until it is kept. */
export async function logPrice(page: Page, words: string, amount: string): Promise<void> {
  const box = page.getByRole("combobox", { name: "Material" });
  await box.fill(words);
  await page.getByRole("listbox", { name: "Material" }).getByRole("option").first().click();
  await page.getByLabel("Price on the tag").fill(amount);
  await page.getByRole("button", { name: "Keep this price" }).click();
  await expect(page.getByText(/^Kept: /)).toBeVisible();
  await expect(box).toHaveValue("");
}
