import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { NARROW } from "./support/sizes.ts";
import { expect, test } from "./support/test.ts";

// One story in order: what an earlier test stored, a later one uses.
test.describe.configure({ mode: "serial" });

test("the catalogue is searched by any words, accents aside, and the form comes filled", async ({ page }) => {
  await open(page, "/materials/new");
  await page.getByLabel("Find").fill("PLÝ 15/32");
  await page.getByRole("button", { name: "Show" }).click();
  await expect(page.getByText("One ready-made material.")).toBeVisible();
  await axe(page);
  await page.getByRole("link", { name: "Softwood plywood 15/32 in, 4x8" }).click();
  await expect(page.getByLabel("Name")).toHaveValue("Softwood plywood 15/32 in, 4x8");
  await expect(page.getByLabel("Nominal thickness", { exact: true })).toHaveValue("15/32");
  await expect(page.getByText("3 lb per square foot for each inch of thickness")).toBeVisible();
  await axe(page);
  await shot(page, "material-from-catalogue-phone");
  await page.getByRole("button", { name: "Save the material" }).click();
  await expect(page.getByText("Material added.")).toBeVisible();
  // 32 x 15/32 / (3/8) = 40 square feet on the 3/8 in basis
  await expect(page.getByText("0.04 thousand square feet, 3/8 in basis")).toBeVisible();
  await expect(page.getByText("3 lb per square foot for each inch of thickness")).toBeVisible();
  await axe(page);
});

test("a weight put in by hand no longer says where another one was read", async ({ page }) => {
  await open(page, "/materials/new?from=ply-1-2");
  await page.getByLabel("Weight of one", { exact: true }).fill("46");
  await page.getByRole("button", { name: "Save the material" }).click();
  await expect(page.getByText("Material added.")).toBeVisible();
  await expect(page.getByText("46 lb")).toBeVisible();
  await expect(page.getByText("for each inch of thickness")).toHaveCount(0);
});

test("a door found by what it is called brings its hand, its frame and its jamb", async ({ page }) => {
  await open(page, "/materials/new/catalogue");
  await page.getByLabel("Find").fill("3068 left hand reverse");
  await page.getByRole("button", { name: "Show" }).click();
  await page.getByRole("link", { name: "Entry door 36 x 80 in, left hand reverse" }).click();
  await expect(page.getByLabel("Hand", { exact: true })).toHaveValue("left-reverse");
  await expect(page.getByLabel("With its frame")).toHaveValue("prehung");
  await expect(page.getByLabel("Jamb depth", { exact: true })).toHaveValue("6 9/16");
  await page.getByLabel("Hand", { exact: true }).selectOption("right-reverse");
  await page.getByLabel("Name").fill("");
  await page.getByRole("button", { name: "Save the material" }).click();
  await expect(page.getByRole("main").getByRole("alert")).toContainText("Name: fill this in");
  await expect(page.getByLabel("Hand", { exact: true })).toHaveValue("right-reverse");
  await page.getByLabel("Name").fill("Back door");
  await page.getByRole("button", { name: "Save the material" }).click();
  await expect(page.getByText("right, reverse")).toBeVisible();
});

test("a name that is taken is said, and nothing typed is lost", async ({ page }) => {
  await open(page, "/materials/new?from=ply-1-2");
  await page.getByRole("button", { name: "Save the material" }).click();
  await expect(page.getByRole("main").getByRole("alert")).toContainText("Name: this name is taken");
  await expect(page.getByLabel("Weight of one", { exact: true })).toHaveValue("48");
});

test("words nothing has are answered with the other way to begin", async ({ page }) => {
  await open(page, "/materials/new/catalogue?find=granite+worktop");
  await expect(page.getByText("Nothing in the catalogue has all these words.")).toBeVisible();
  await axe(page);
  await page.getByRole("link", { name: "Add a material" }).click();
  await expect(page.getByText("What kind is it?")).toBeVisible();
});

test("an old link to the catalogue leads to where one starts", async ({ page }) => {
  await open(page, "/materials/new?from=no-longer-there");
  await expect(page.getByText("What kind is it?")).toBeVisible();
});

test("the screens fit the narrowest phone", async ({ page }) => {
  await page.setViewportSize(NARROW);
  for (const path of [
    "/materials/new",
    "/materials/new/catalogue",
    "/materials/new?from=door-entry-36-left-6",
  ]) {
    await open(page, path);
    await fitsAcross(page);
  }
  await shot(page, "material-from-catalogue-door-narrow");
});

test.describe("without JavaScript", () => {
  test.use({ javaScriptEnabled: false });

  test("one is found, filled in and saved", async ({ page }) => {
    await open(page, "/materials/new");
    await page.getByLabel("Find").fill("concrete 80");
    await page.getByRole("button", { name: "Show" }).click();
    await page.getByRole("link", { name: "Concrete mix, 80 lb bag" }).click();
    await expect(page.getByLabel("Makes, volume", { exact: true })).toHaveValue("0.6");
    await page.getByRole("button", { name: "Save the material" }).click();
    await expect(page.getByRole("heading", { level: 1, name: "Concrete mix, 80 lb bag" })).toBeVisible();
    await expect(page.getByText("concrete bag yield articles, two (read)")).toBeVisible();
  });
});
