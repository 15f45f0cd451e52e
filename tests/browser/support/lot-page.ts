import type { Locator, Page } from "@playwright/test";
import { open } from "./page.ts";
import { daysAgo } from "./stored.ts";
import { expect } from "./test.ts";

export const main = (page: Page): Locator => page.getByRole("main");

/** What was just done, and its undo. */
export const said = (page: Page): Locator => main(page).getByRole("status").first();

/** The form a button sends, folded away or not. */
export function form(page: Page, button: string): Locator {
  return page.locator("form", {
    has: page.getByRole("button", { name: button, exact: true, includeHidden: true }),
  });
}

/** Opens the page of the lot of a material, from the list. */
export async function toLot(page: Page, material: string): Promise<void> {
  await open(page, "/stock");
  await page.getByRole("table", { name: "Lots on hand" }).getByRole("link", { name: material }).click();
  await expect(page.getByRole("heading", { level: 1, name: material })).toBeVisible();
}

/** Opens what is folded away on a lot's page, down to one of its forms. */
export async function unfold(page: Page, title: string): Promise<void> {
  await page.getByText("More with this lot").click();
  await page.locator("summary", { hasText: new RegExp(`^${title}$`) }).click();
}

/** Unfolds the day of a form and types another one, so many days ago. */
export async function onDay(within: Locator, days: number): Promise<void> {
  await within.getByText("Another day, or a reason").click();
  await within.getByLabel("On", { exact: true }).fill(daysAgo(days));
}
