import type { Page } from "@playwright/test";
import { axe, open } from "./support/page.ts";
import { expect, test } from "./support/test.ts";

// One story in order: what an earlier test stored, a later one uses.
test.describe.configure({ mode: "serial" });

const banner = (page: Page) => page.getByRole("complementary", { name: "Demo" });

test("the demo opens with one click, says that it is one, and leads back to one's own", async ({ page }) => {
  await open(page, "/settings");
  await page.getByRole("button", { name: "Open the demo" }).dblclick();
  await expect(page.getByText("Heron Lane workshop").first()).toBeVisible({ timeout: 45_000 });
  await expect(banner(page)).toBeVisible();
  await axe(page);
  await banner(page).getByRole("button", { name: "Back to your own" }).click();
  await expect(banner(page)).toHaveCount(0);
  await expect(page.getByText("Heron Lane workshop")).toHaveCount(0);
});

test("a form of one's own, left open while the demo is looked at, writes nothing into the demo", async ({
  page,
  context,
}) => {
  await open(page, "/settings/stores/new");
  await page.getByLabel("Name").first().fill("Sawmill");
  const other = await context.newPage();
  await other.goto("/settings");
  await other.getByRole("button", { name: "Open the demo" }).click();
  await expect(banner(other)).toBeVisible();
  await page.getByRole("button", { name: "Save the store" }).click();
  await expect(page.getByRole("main").getByRole("alert")).toContainText("you have opened or left the demo");
  await expect(page.getByLabel("Name").first()).toHaveValue("Sawmill");
  await other.goto("/settings");
  await other.getByRole("button", { name: "Back to your own" }).click();
  await expect(banner(other)).toHaveCount(0);
  await page.getByRole("button", { name: "Save the store" }).click();
  await expect(page.getByText("Store added.")).toBeVisible();
});

test("the demo is thrown away with one click, and one's own is untouched", async ({ page }) => {
  await open(page, "/settings");
  await page.getByRole("button", { name: "Open the demo" }).click();
  await expect(banner(page)).toBeVisible();
  await open(page, "/settings");
  await axe(page);
  await page.getByRole("button", { name: "Throw the demo away" }).click();
  await expect(page.getByText("The demo was thrown away.")).toBeVisible();
  await expect(banner(page)).toHaveCount(0);
  await open(page, "/settings/stores");
  await expect(page.getByRole("link", { name: "Sawmill" })).toBeVisible();
});
