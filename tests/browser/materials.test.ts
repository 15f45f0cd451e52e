import type { Page } from "@playwright/test";
import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { LAPTOP, NARROW } from "./support/sizes.ts";
import { expect, test } from "./support/test.ts";

// One story in order: what an earlier test stored, a later one uses.
test.describe.configure({ mode: "serial" });

const save = (page: Page) => page.getByRole("button", { name: "Save the material" });
const faults = (page: Page) => page.getByRole("main").getByRole("alert");

test("with no material the list says what one is, and offers to add it", async ({ page }) => {
  await open(page, "/materials");
  await axe(page);
  await page.getByRole("link", { name: "Add a material" }).click();
  await expect(page.getByText("What kind is it?")).toBeVisible();
  await axe(page);
});

test("a board is added by its kind with its sizes, and comes to feet and board feet", async ({ page }) => {
  await open(page, "/materials/new");
  await page.getByRole("link", { name: "Dimensional lumber" }).click();
  await page.getByLabel("Name").fill("Épinette 2x6, 8 ft");
  await page.getByLabel("Nominal thickness", { exact: true }).fill("2");
  await page.getByLabel("Nominal width", { exact: true }).fill("6");
  await page.getByLabel("Length", { exact: true }).fill("8");
  await axe(page);
  await save(page).click();
  await expect(page.getByRole("heading", { level: 1, name: "Épinette 2x6, 8 ft" })).toBeVisible();
  await expect(page.getByText("Material added.")).toBeVisible();
  await expect(page.getByText("No price yet.")).toBeVisible();
  // 2 x 6 x 8 / 12 = 8 board feet
  await expect(page.getByText("8 linear feet · 2.438 linear metres · 8 board feet")).toBeVisible();
  await axe(page);
});

test("what cannot be right is named at its field, and everything typed stays", async ({ page }) => {
  await open(page, "/materials/new?category=sheet-goods");
  await page.getByLabel("Actual thickness", { exact: true }).fill("1.2.3");
  await page.getByLabel("Sheet width", { exact: true }).fill("-5");
  await page.getByLabel("Sheet length", { exact: true }).fill("92 5/8");
  await page.getByLabel("Prices go stale after, days").fill("0");
  await page.getByLabel("Note").fill("as delivered");
  await save(page).click();
  await expect(faults(page).getByRole("listitem")).toHaveText([
    "Name: fill this in",
    "Actual thickness: this is not a size; type it like 48 and choose its unit",
    "Sheet width: must be more than 0",
    "Prices go stale after, days: must be more than 0",
  ]);
  await expect(page.getByLabel("Actual thickness", { exact: true })).toHaveValue("1.2.3");
  await expect(page.getByLabel("Sheet length", { exact: true })).toHaveValue("92 5/8");
  await expect(page.getByLabel("Note")).toHaveValue("as delivered");
  await axe(page);
});

test("more text than a form can hold is kept on the page and not sent", async ({ page }) => {
  await open(page, "/materials/new?category=other");
  await page.getByLabel("Name").fill("Paint");
  // Set rather than typed, and out of sight: ten million letters take a browser half a minute to lay out.
  const note = (lines: number) =>
    page.getByLabel("Note").evaluate((field: HTMLTextAreaElement, many) => {
      field.hidden = true;
      field.value = `${"x".repeat(99)}\n`.repeat(many);
    }, lines);
  await note(100_000);
  await save(page).click();
  await expect(faults(page)).toContainText("far more text than a form can hold");
  await expect(page.getByLabel("Name")).toHaveValue("Paint");
  await note(21);
  await save(page).click();
  await expect(faults(page)).toContainText("Note: this is too long");
});

test("pressed twice, a form makes one material", async ({ page }) => {
  await open(page, "/materials/new?category=doors");
  await page.getByLabel("Name").fill("Interior door 30 in");
  await save(page).dblclick();
  await expect(page.getByRole("heading", { level: 1, name: "Interior door 30 in" })).toBeVisible();
  await open(page, "/materials");
  await expect(page.getByRole("link", { name: "Interior door 30 in" })).toHaveCount(1);
});

test("a form sent again with other content is not taken for the first", async ({ page }) => {
  await open(page, "/materials/new?category=doors");
  await page.getByLabel("Name").fill("Closet door 24 in");
  await save(page).click();
  await expect(page.getByRole("heading", { level: 1, name: "Closet door 24 in" })).toBeVisible();
  const id = page.url().match(/[0-9a-f-]{36}/)?.[0] ?? "";
  await open(page, "/materials/new?category=doors");
  await page.locator("input[name=id]").evaluate((field: HTMLInputElement, same) => {
    field.value = same;
  }, id);
  await page.getByLabel("Name").fill("Closet door 28 in");
  await save(page).click();
  await expect(faults(page)).toContainText("This form was sent before with other content");
  await expect(page.getByLabel("Name")).toHaveValue("Closet door 28 in");
});

test("the list is searched by any words, accents aside, and by kind", async ({ page }) => {
  await open(page, "/materials");
  await page.getByLabel("Find").fill("ft epin");
  await page.getByRole("button", { name: "Show" }).click();
  await expect(page.getByText("One material matches.")).toBeVisible();
  await expect(page.getByRole("link", { name: "Épinette 2x6, 8 ft" })).toBeVisible();
  await page.getByRole("link", { name: "Show all" }).click();
  await expect(page.getByLabel("Find")).toHaveValue("");
  await page.getByLabel("Category").selectOption("doors");
  await page.getByRole("button", { name: "Show" }).click();
  await expect(page.getByText("2 materials match.")).toBeVisible();
});

test("an archived material stands apart and comes back by its undo", async ({ page }) => {
  await open(page, "/materials");
  await page.getByRole("link", { name: "Closet door 24 in" }).click();
  await page.getByRole("button", { name: "Archive" }).click();
  await expect(page.getByText("Material archived. Its prices and figures are kept.")).toBeVisible();
  await expect(page.getByRole("heading", { name: "Archived materials" })).toBeVisible();
  await axe(page);
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByText("Material is back in use.")).toBeVisible();
  await expect(page.getByRole("heading", { name: "Archived materials" })).toHaveCount(0);
});

test("a tab left open does not write over what another has changed, unless asked twice", async ({
  page,
  context,
}) => {
  await open(page, "/materials");
  await page.getByRole("link", { name: "Closet door 24 in" }).click();
  await page.getByRole("link", { name: "Change the material" }).click();
  await expect(page.getByLabel("Name")).toHaveValue("Closet door 24 in");
  const other = await context.newPage();
  await other.goto(page.url());
  await other.getByLabel("Note").fill("left hand");
  await save(other).click();
  await expect(other.getByText("Saved.")).toBeVisible();
  await page.getByLabel("Note").fill("right hand");
  await save(page).click();
  await expect(faults(page)).toContainText("changed in another window");
  await expect(page.getByLabel("Note")).toHaveValue("right hand");
  await save(page).click();
  await expect(page.getByText("Saved.")).toBeVisible();
  await expect(page.getByText("right hand")).toBeVisible();
});

test("the screens fit the narrowest phone", async ({ page }) => {
  await page.setViewportSize(NARROW);
  for (const path of ["/materials", "/materials/new", "/materials/new?category=dimensional-lumber"]) {
    await open(page, path);
    await fitsAcross(page);
  }
  await page.setViewportSize(LAPTOP);
  await shot(page, "material-new-laptop");
});
