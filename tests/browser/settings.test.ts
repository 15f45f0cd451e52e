import type { Page } from "@playwright/test";
import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { NARROW } from "./support/sizes.ts";
import { daysAgo } from "./support/stored.ts";
import { expect, test } from "./support/test.ts";

// One story in order: what an earlier test stored, a later one uses.
test.describe.configure({ mode: "serial" });

const faults = (page: Page) => page.getByRole("main").getByRole("alert");
const button = (page: Page, name: string) => page.getByRole("button", { name, exact: true });

test("the settings lead to everything that stands behind the figures", async ({ page }) => {
  await open(page, "/settings");
  for (const name of ["Workspace", "Stores", "Tax regions", "Exchange rates", "Recent changes"])
    await expect(page.getByRole("link", { name: new RegExp(`^${name}`) })).toBeVisible();
  await axe(page);
  await shot(page, "settings-phone");
});

test("the workspace keeps its money rate and a registration, and says what cannot be right", async ({
  page,
}) => {
  await open(page, "/settings/workspace");
  await axe(page);
  await page.getByLabel("Money rate, percent a year").fill("1.2.3");
  await page.getByLabel("Prices go stale after, days").fill("0");
  await page.getByLabel("Tax, e.g. HST").fill("HST");
  await page.getByLabel("From", { exact: true }).first().fill("2026-03-01");
  await page.getByLabel("Until, last day").first().fill("2026-02-01");
  await page.getByLabel("Home currency").evaluate((currency: HTMLSelectElement) => {
    currency.add(new Option("XYZ", "XYZ"));
    currency.value = "XYZ";
  });
  await button(page, "Save").click();
  await expect(faults(page).getByRole("listitem")).toHaveText([
    "Home currency: this currency is not known",
    "Until, last day: the last day is before the first",
    "Money rate, percent a year: this is not an amount; type it like 42.97",
    "Prices go stale after, days: must be more than 0",
  ]);
  await expect(page.getByLabel("Tax, e.g. HST").first()).toHaveValue("HST");
  await page.getByLabel("Home currency").selectOption("CAD");
  await page.getByLabel("Until, last day").first().fill("");
  await page.getByLabel("Money rate, percent a year").fill("7.5");
  await page.getByLabel("Prices go stale after, days").fill("21");
  await button(page, "Save").click();
  await expect(page.getByText("Saved.")).toBeVisible();
  await expect(page.getByText("money rate 7.5%; prices go stale after 21 days")).toBeVisible();
});

test("a money rate of a later day stands beside the earlier one", async ({ page }) => {
  await open(page, "/settings/workspace");
  await page.getByLabel("Money rate, percent a year").fill("8");
  await page.getByLabel("Money rate from").fill("2026-01-01");
  await button(page, "Save").click();
  await expect(page.getByText("Saved.")).toBeVisible();
  await open(page, "/settings/workspace");
  await expect(page.getByText("So far: 7.5% from the beginning, 8% since Jan 1, 2026.")).toBeVisible();
});

test("a store is added with its discount; a trip cost below zero is refused, 1,049 is read as a thousand", async ({
  page,
}) => {
  await open(page, "/settings/stores");
  await page.getByRole("link", { name: "Add a store" }).click();
  await axe(page);
  await page.getByLabel("Name").first().fill("Mill Road Yard");
  await page.getByLabel("Trip cost").fill("-5");
  await page.getByLabel("Percent", { exact: true }).fill("120");
  await button(page, "Save the store").click();
  await expect(faults(page).getByRole("listitem")).toHaveText([
    "Trip cost: must be more than 0",
    "Percent: this percentage is out of range",
  ]);
  await page.getByLabel("Trip cost").fill("1,049");
  await expect(page.getByText("Read as 1,049")).toBeVisible();
  await page.getByLabel("Percent", { exact: true }).fill("10");
  await button(page, "Save the store").dblclick();
  await expect(page.getByText("Store added.")).toBeVisible();
  await expect(page.getByText("One store in use.")).toBeVisible();
  await expect(page.getByText("1,049.00")).toBeVisible();
  await axe(page);
});

test("a store archived is out of the list, and its undo brings it back", async ({ page }) => {
  await open(page, "/settings/stores");
  await page.getByRole("link", { name: "Mill Road Yard" }).click();
  await button(page, "Archive").click();
  await expect(page.getByText("Store archived.")).toBeVisible();
  await expect(page.getByText("No stores yet.")).toBeVisible();
  await button(page, "Undo").click();
  await expect(page.getByText("Store is back in use.")).toBeVisible();
  await expect(page.getByText("One store in use.")).toBeVisible();
});

test("a region of one's own takes a store across the border, whose charges must be confirmed", async ({
  page,
}) => {
  await open(page, "/settings/taxes/new");
  await axe(page);
  await page.getByLabel("Code").fill("US-ME");
  await page.getByLabel("Name", { exact: true }).first().fill("Maine");
  await page.getByLabel("Name", { exact: true }).nth(1).fill("Sales tax");
  await page.getByLabel("Percent").first().fill("5.5");
  await page.getByLabel("From", { exact: true }).first().fill("2013-10-01");
  await button(page, "Save the region").click();
  await expect(page.getByText("Tax region saved.")).toBeVisible();
  await open(page, "/settings/stores/new");
  await page.getByLabel("Name").first().fill("Lantern Line Lumber");
  await page.getByLabel("Tax region").selectOption("US-ME");
  await page.getByLabel("Currency", { exact: true }).selectOption("USD");
  await button(page, "Save the store").click();
  await expect(page.getByText("not confirmed")).toBeVisible();
  await page.getByRole("link", { name: "Lantern Line Lumber" }).click();
  await page.getByLabel("none, confirmed").check();
  await button(page, "Save the store").click();
  await expect(page.getByText("none, confirmed")).toBeVisible();
});

test("a new region never takes the place of one that is there", async ({ page }) => {
  await open(page, "/settings/taxes/new");
  await page.getByLabel("Code").fill("CA-NS");
  await button(page, "Save the region").click();
  await expect(faults(page)).toContainText("Code: this name is taken");
});

test("a rate written from memory carries its mark until it is confirmed", async ({ page }) => {
  await open(page, "/settings/taxes/CA-PE");
  await axe(page);
  const confirm = page.getByRole("button", { name: /^I checked this/ });
  const marked = await confirm.count();
  expect(marked).toBeGreaterThan(0);
  await confirm.first().click();
  await expect(page.getByText("Confirmed. The mark is gone.")).toBeVisible();
  await expect(confirm).toHaveCount(marked - 1);
});

test("an exchange rate is added once, another of its day is not written over it, and it can be put right", async ({
  page,
}) => {
  await open(page, "/settings/rates");
  await axe(page);
  const add = async (rate: string, date: string) => {
    await page.getByLabel("Day", { exact: true }).fill(date);
    await page.getByLabel("Rate", { exact: true }).fill(rate);
    await page.getByLabel("Source", { exact: true }).fill("card statement");
    await button(page, "Add the rate").click();
  };
  await add("1.37", daysAgo(-5));
  await expect(faults(page)).toContainText("Day: this day is still to come");
  await add("1.37", "1900-01-01");
  await expect(faults(page)).toContainText("Day: this day is too long ago");
  await add("0", daysAgo(0));
  await expect(faults(page)).toContainText("Rate: must be more than 0");
  await add("1.37", daysAgo(0));
  await expect(page.getByText("Exchange rate added.")).toBeVisible();
  await add("1.40", daysAgo(0));
  await expect(faults(page)).toContainText("There is another rate of this day, pair and source already.");
  await expect(page.getByLabel("Rate", { exact: true })).toHaveValue("1.40");
  await page.getByRole("table").getByRole("link").first().click();
  await axe(page);
  await page.getByLabel("Rate", { exact: true }).fill("1.38");
  await button(page, "Save").click();
  await expect(page.getByText("Exchange rate corrected.")).toBeVisible();
  await expect(page.getByText("USD/CAD: 1.3800, today.")).toBeVisible();
});

test("every change is kept with what it said before", async ({ page }) => {
  await open(page, "/settings/changes");
  await axe(page);
  await page
    .getByRole("row", { name: /Exchange rate changed/ })
    .getByText("one field")
    .click();
  await expect(page.getByText("rate: 1.37 → 1.38")).toBeVisible();
});

test("the screens fit the narrowest phone", async ({ page }) => {
  await page.setViewportSize(NARROW);
  for (const at of [
    "",
    "/workspace",
    "/stores",
    "/stores/new",
    "/taxes",
    "/taxes/CA-NS",
    "/taxes/new",
    "/rates",
    "/changes",
  ]) {
    await open(page, `/settings${at}`);
    await fitsAcross(page);
  }
});
