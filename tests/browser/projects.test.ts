import type { Page } from "@playwright/test";
import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { LAPTOP, NARROW } from "./support/sizes.ts";
import { daysAgo, stored, storedPrice, storedSheet, storedStore } from "./support/stored.ts";
import { expect, test } from "./support/test.ts";

const main = (page: Page) => page.getByRole("main");
const faults = (page: Page) => main(page).getByRole("alert");
const field = (page: Page, label: string) => main(page).getByLabel(label, { exact: true });
const PLY = "Spruce plywood 1/2 in, 4x8";
const need = (page: Page) => page.getByRole("link", { name: PLY }).first();

test.describe.configure({ mode: "serial" });

test("with no project the list says what one is, and offers to enter it", async ({ page }) => {
  await open(page, "/projects");
  await axe(page);
  await page.getByRole("link", { name: "New project" }).click();
  await field(page, "Budget").fill("1.2.3");
  await page.getByRole("button", { name: "Enter the project" }).click();
  await expect(faults(page).getByRole("listitem")).toHaveText([
    "Name: fill this in",
    "Budget: this is not an amount; type it like 42.97",
  ]);
  await expect(field(page, "Budget")).toHaveValue("1.2.3");
  await axe(page);
  await field(page, "Name").fill("Birch Road kitchen");
  await field(page, "Budget").fill("400");
  await page.getByRole("button", { name: "Enter the project" }).dblclick();
  await expect(page.getByRole("heading", { level: 1, name: "Birch Road kitchen" })).toBeVisible();
});

test("a need of 900 % waste, of nothing, without a day is refused in words", async ({ page, request }) => {
  await storedSheet(request, PLY);
  await open(page, "/projects");
  await page.getByRole("link", { name: "Birch Road kitchen" }).click();
  await page.getByRole("link", { name: "Add what it needs" }).click();
  await page.getByRole("combobox", { name: "Material" }).first().fill("ply");
  await page.getByRole("option", { name: PLY }).click();
  await field(page, "How much").fill("0");
  await field(page, "Waste, %").fill("900");
  await page.getByRole("button", { name: "Add this need" }).click();
  await expect(faults(page).getByRole("listitem")).toHaveText([
    "How much: must be more than 0",
    "Waste, %: this percentage is out of range",
    "Needed by: fill this in",
  ]);
  await expect(field(page, "Waste, %")).toHaveValue("900");
  await axe(page);
  await field(page, "How much").fill("10");
  await field(page, "Waste, %").fill("5");
  await field(page, "Needed by").fill(daysAgo(-40));
  await page.getByRole("button", { name: "Add this need" }).click();
  await expect(page.getByText(`Added: ${PLY}.`)).toBeVisible();
});

test("a project's page puts needs against what is locked in, at the best offers of the day", async ({
  page,
  request,
}) => {
  await open(page, "/projects");
  const materials = await (await request.get("/api/v1/materials")).json();
  const materialId = materials.items[0].id;
  const storeId = await storedStore(request, "Mill Road Yard");
  await storedPrice(request, { storeId, materialId, seenOn: daysAgo(2), amount: "30.00" });
  await stored(request, "lots", {
    materialId,
    origin: "bought",
    storeId,
    quantity: "4",
    orderedOn: daysAgo(5),
    paid: { amount: "100.00", currency: "CAD", taxIncluded: false },
  });
  await page.getByRole("link", { name: "Birch Road kitchen" }).click();
  // 10 x 1.05 = 10.5, open 11 whole sheets x 34.20 = 376.20; budget 400 - 376.20
  await expect(
    page.getByText(/Still to buy: 376.20\s+CAD\. Locked in: 0.00\. 24 under budget/),
  ).toBeVisible();
  await expect(page.getByText("± 37.62")).toBeVisible();
  await axe(page);
});

test("free stock is set aside for a need, and is locked in at what it cost", async ({ page }) => {
  await open(page, "/projects");
  await page.getByRole("link", { name: "Birch Road kitchen" }).click();
  await need(page).click();
  await expect(page.getByRole("heading", { name: "There is some in stock" })).toBeVisible();
  await axe(page);
  const aside = page.getByRole("button", { name: "Set aside" });
  await field(page, "How many").fill("5");
  await aside.click();
  await expect(faults(page)).toContainText("How many: more than what is free");
  await field(page, "How many").fill("4");
  await aside.click();
  await expect(page.getByText("Set aside. Its price no longer moves.")).toBeVisible();
  // 100.00 + 14 % = 114.00; open 10.5 - 4 = 6.5, 7 sheets x 34.20 = 239.40
  await expect(page.getByText(/Still to buy: 239.40\s+CAD\. Locked in: 114.00\./)).toBeVisible();
  // 4 / 10.5
  await expect(page.getByRole("img", { name: "38 % locked in" })).toBeVisible();
  const lots = page.getByRole("table", { name: "What is locked in, by lot" });
  await expect(lots.getByRole("row", { name: new RegExp(PLY) })).toContainText("114.00");
});

test("a change is a dated revision, and the earlier one stays readable", async ({ page }) => {
  await open(page, "/projects");
  await page.getByRole("link", { name: "Birch Road kitchen" }).click();
  await need(page).click();
  await page.getByText("Another material, or another day").click();
  await field(page, "How much").fill("20");
  await field(page, "Holds from").fill(daysAgo(-1));
  await page.getByRole("button", { name: "Save" }).click();
  await expect(page.getByText("Changed.")).toBeVisible();
  await need(page).click();
  const history = page.getByRole("table", { name: "What held before" });
  await expect(history.getByRole("row")).toHaveCount(3);
  await expect(history).toContainText("20 sheets");
});

test("closed, nothing more is open for a need; its undo opens it again", async ({ page }) => {
  await open(page, "/projects");
  await page.getByRole("link", { name: "Birch Road kitchen" }).click();
  await need(page).click();
  await page.getByRole("button", { name: "Close this need" }).click();
  await expect(page.getByText("Nothing is left to buy. It cost 114.00")).toBeVisible();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByText(/Still to buy: 239.40/)).toBeVisible();
});

test("a tab left open does not write over what another has changed, unless asked twice", async ({
  page,
  context,
}) => {
  await open(page, "/projects");
  await page.getByRole("link", { name: "Birch Road kitchen" }).click();
  await page.getByRole("link", { name: "Change the project" }).click();
  await expect(field(page, "Name")).toHaveValue("Birch Road kitchen");
  await axe(page);
  const other = await context.newPage();
  await other.goto(page.url());
  await field(other, "Budget").fill("500");
  await other.getByRole("button", { name: "Save" }).click();
  await expect(other.getByText("Changed.")).toBeVisible();
  await field(page, "Note").fill("cupboards first");
  await page.getByRole("button", { name: "Save" }).click();
  await expect(faults(page)).toContainText("changed in another window");
  await expect(field(page, "Note")).toHaveValue("cupboards first");
});

test("as of a day before it was entered the page says so", async ({ page }) => {
  await open(page, "/projects");
  await page.getByRole("link", { name: "Birch Road kitchen" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Birch Road kitchen" })).toBeVisible();
  await open(page, `${new URL(page.url()).pathname}?asOf=${daysAgo(9)}`);
  await expect(page.getByText("The project had not been entered on this day.")).toBeVisible();
});

test("an address of no project has no page", async ({ page, expectedErrors }) => {
  expectedErrors.push(/404/);
  const response = await page.goto("/projects/no-such-thing");
  expect(response?.status()).toBe(404);
});

test("the screens fit the narrowest phone and have no barrier on a laptop", async ({ page }) => {
  await page.setViewportSize(NARROW);
  await open(page, "/projects");
  await fitsAcross(page);
  await page.getByRole("link", { name: "Birch Road kitchen" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Birch Road kitchen" })).toBeVisible();
  await fitsAcross(page);
  await page.setViewportSize(LAPTOP);
  await axe(page);
  await shot(page, "project-laptop");
});
