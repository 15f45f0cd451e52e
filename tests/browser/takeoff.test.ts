import type { Page } from "@playwright/test";
import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { PHONE } from "./support/sizes.ts";
import { daysAgo, stored, storedSheet } from "./support/stored.ts";
import { expect, test } from "./support/test.ts";

// One story in order: what an earlier test stored, a later one uses.
test.describe.configure({ mode: "serial" });
test.use({ viewport: PHONE, hasTouch: true });

const PLY = "Spruce plywood 1/2 in, 4x8";
const TRIM = "Drip edge, 10 ft";
const BAG = "Concrete mix, 80 lb bag";
const showSteps = (page: Page) => page.locator("summary", { hasText: "How it is reckoned" }).click();
const main = (page: Page) => page.getByRole("main");
const field = (page: Page, label: string) => main(page).getByLabel(label, { exact: true });
const row = (page: Page, table: string, name: string) =>
  page.getByRole("region", { name: table }).getByRole("row").filter({ hasText: name }).first();
const workOut = (page: Page) => page.getByRole("button", { name: "Work it out" });
const line = (page: Page, name: string) => page.getByRole("group", { name });

const ROOF = [
  ["Length", "40'"],
  ["Width", "24 ft"],
  ["Width of the wing", "16 ft"],
  ["Length of the wing", "12 ft"],
  ["Slope", "4/12"],
  ["Overhang", "12"],
] as const;

async function fillRoof(page: Page) {
  for (const [label, text] of ROOF) await field(page, label).fill(text);
}

async function toCalculator(page: Page, name: string) {
  await open(page, "/projects");
  await page.getByRole("link", { name: "Birch Road kitchen" }).click();
  await page.getByRole("link", { name: "Measure it" }).click();
  await page.getByRole("link", { name }).click();
  await expect(page.getByRole("heading", { level: 1, name: name.split(",")[0] ?? name })).toBeVisible();
}

test("the list says what can be measured, and that it is for buying", async ({ page, request }) => {
  await stored(request, "projects", { name: "Birch Road kitchen", status: "live" });
  const sheet = await storedSheet(request, PLY);
  const trim = { category: "roofing", purchaseUnit: "piece", dimensions: { length: "10 ft" } };
  await stored(request, "materials", { name: TRIM, ...trim });
  await stored(request, "lots", {
    materialId: sheet,
    origin: "left-over",
    quantity: "5",
    orderedOn: daysAgo(3),
    paid: { amount: "100", currency: "CAD", taxIncluded: true },
  });
  await open(page, "/projects");
  await page.getByRole("link", { name: "Birch Road kitchen" }).click();
  await page.getByRole("link", { name: "Measure it" }).click();
  await expect(page.getByText("Quantities for buying, not structural design")).toBeVisible();
  await axe(page);
  await fitsAcross(page);
});

// Plan with overhangs 42 x 26 + 18 x 12 = 1308 sq ft; slope factor sqrt(4^2 + 12^2) / 12 = 1.054093; roof 1378.753 sq ft.
// Eaves 2 x (40 + 24 + 12 + 4 x 1) = 160 ft. Hips (3 x 13 + 2 x 9 + 4) x sqrt(4^2 + 2 x 12^2) / 12 = 61 x 1.452966 = 88.631 ft.
// Sheets 1378.753 / 32 = 43.086, with 10 % 47.395: 48. Drip edge 160 / 10 = 16.
test("an L-shaped hip roof becomes requirements of the project", async ({ page }) => {
  await toCalculator(page, "L-shaped hip roof");
  await axe(page);
  await field(page, "Length").fill("40'");
  await expect(main(page)).toContainText("Read as 40 ft");
  await fillRoof(page);
  // The figures and the drawing follow what is typed.
  await expect(row(page, "What it comes to", "Roof sheathing")).toContainText("1,378.753 sq ft");
  await expect(row(page, "What it comes to", "Edge trim")).toContainText("160 ft");
  await expect(page.getByRole("region", { name: "How it is reckoned" })).toBeHidden();
  await showSteps(page);
  await expect(row(page, "How it is reckoned", "Area on plan")).toContainText("1,308 sq ft");
  await expect(row(page, "How it is reckoned", "Hips")).toContainText("88.631 ft");
  await expect(page.getByRole("img", { name: "From above: Length 40 ft, Width 24 ft" })).toBeVisible();
  await expect(main(page)).toContainText("Press “Work it out” to choose materials");
  await workOut(page).click();
  await expect(field(page, "Length")).toHaveValue("40'");
  const sheathing = line(page, "Roof sheathing: 1,378.753 sq ft");
  await sheathing.getByLabel("Buy as").selectOption(`${PLY}: 43.086 sheets; 5 free in stock`);
  await sheathing.getByLabel("Waste, percent").fill("10");
  await line(page, "Edge trim: 160 ft").getByLabel("Buy as").selectOption(`${TRIM}: 16 pieces`);
  await expect(line(page, "Ridge board: 28 ft")).toBeVisible();
  await axe(page);
  await fitsAcross(page);
  await shot(page, "takeoff-phone");
  await page.getByRole("button", { name: "Turn into requirements" }).click();
  // Refused without a day; what was chosen is still there.
  await expect(main(page).getByRole("alert")).toContainText("Needed by: fill this in");
  await expect(sheathing.getByLabel("Waste, percent")).toHaveValue("10");
  await page.getByLabel("Needed by").fill(daysAgo(-30));
  await page.getByRole("button", { name: "Turn into requirements" }).click();
  await expect(page.getByText("2 requirements from the takeoff.")).toBeVisible();
  await expect(row(page, "Needed against locked in", PLY)).toContainText("47.395 sheets");
  await expect(row(page, "Needed against locked in", PLY).getByRole("cell").nth(2)).toHaveText("48");
  await expect(row(page, "Needed against locked in", TRIM)).toContainText("16 pieces");
  // Free stock counts once it is set aside: 48 less 5.
  await expect(page.getByLabel(`5 sheets of ${PLY}`)).toBeChecked();
  await axe(page);
  await page.getByRole("button", { name: "Set aside what is ticked" }).click();
  await expect(page.getByText("Set aside. Its price no longer moves.")).toBeVisible();
  await expect(row(page, "Needed against locked in", PLY).getByRole("cell").nth(1)).toContainText("5");
  await expect(row(page, "Needed against locked in", PLY).getByRole("cell").nth(2)).toHaveText("43");
});

test("what came of a takeoff is taken back in one step, and brought back", async ({ page }) => {
  await toCalculator(page, "Slab");
  await field(page, "Length").fill("10 ft");
  await field(page, "Width").fill("10 ft");
  await field(page, "Thickness").fill("4 in");
  await expect(row(page, "What it comes to", "Concrete")).toContainText("33.333");
  await workOut(page).click();
  await expect(page.getByText("None of your materials has sizes that fit.")).toBeVisible();
  await toCalculator(page, "Areas");
  await field(page, "Width").first().fill("8 ft");
  await field(page, "Height").first().fill("8 ft");
  await workOut(page).click();
  await line(page, "Surface: 64 sq ft").getByLabel("Buy as").selectOption({ index: 1 });
  await page.getByLabel("Needed by").fill(daysAgo(-30));
  await page.getByRole("button", { name: "Turn into requirements" }).click();
  await page.getByRole("button", { name: "Close them again" }).click();
  await expect(page.getByText("What came of the takeoff is closed.")).toBeVisible();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByText("What came of the takeoff is open again.")).toBeVisible();
});

// 10 x 9 ft, 4 in thick: 30 cubic feet; 30 / 0.6 = 50 bags; half as thick again 45, 75 bags.
test("concrete comes in bags by what is typed that one gives, kept with the takeoff", async ({
  page,
  request,
}) => {
  await stored(request, "materials", { name: BAG, category: "masonry", purchaseUnit: "bag", dimensions: {} });
  await toCalculator(page, "Slab");
  await field(page, "Length").fill("10 ft");
  await field(page, "Width").fill("9 ft");
  await field(page, "Thickness").fill("4 in");
  await workOut(page).click();
  const concrete = line(page, "Concrete: 30 cu ft");
  const gives = concrete.getByLabel("What one gives");
  await concrete.getByLabel("Buy as").selectOption(`${BAG}: by what one bag gives`);
  await page.getByLabel("Needed by").fill(daysAgo(-30));
  await page.getByRole("button", { name: "Turn into requirements" }).click();
  await expect(main(page).getByRole("alert")).toContainText("What one gives: fill this in");
  await gives.fill("0.6");
  await page.getByRole("button", { name: "Turn into requirements" }).click();
  await expect(main(page).getByRole("alert")).toContainText("What one gives: the last number needs its unit");
  await expect(gives).toHaveValue("0.6");
  await expect(gives).toHaveAttribute("aria-invalid", "true");
  await gives.fill("0.6 cu ft");
  await expect(concrete).toContainText("Comes to 50");
  await axe(page);
  await shot(page, "takeoff-bags-phone");
  await page.getByRole("button", { name: "Turn into requirements" }).click();
  await expect(row(page, "Needed against locked in", BAG)).toContainText("50 bags");
  await page.getByRole("link", { name: BAG }).first().click();
  await expect(page.getByText("One bag gives 0.6 cu ft (typed here).")).toBeVisible();
  await page.getByRole("link", { name: "From a takeoff: reopen" }).click();
  await expect(line(page, "Concrete").getByLabel("What one gives")).toHaveValue("0.6 cu ft");
  await field(page, "Thickness").fill("6");
  await workOut(page).click();
  await page.getByRole("button", { name: "Change the requirements" }).click();
  await expect(row(page, "Needed against locked in", BAG)).toContainText("75 bags");
});

// 50 ft instead of 40: plan 52 x 26 + 216 = 1568; x 1.054093 / 32 = 51.651 sheets, with 10 % 56.816.
test("opened again from a requirement, other inputs revise it", async ({ page }) => {
  await open(page, "/projects");
  await page.getByRole("link", { name: "Birch Road kitchen" }).click();
  await page.getByRole("link", { name: PLY }).first().click();
  await page.getByRole("link", { name: "From a takeoff: reopen" }).click();
  await expect(field(page, "Length")).toHaveValue("40 ft");
  await field(page, "Length").fill("50 ft");
  await workOut(page).click();
  await expect(line(page, "Roof sheathing").getByLabel("Waste, percent")).toHaveValue("10");
  await page.getByRole("button", { name: "Change the requirements" }).click();
  await expect(row(page, "Needed against locked in", PLY)).toContainText("56.816 sheets");
});

test("what cannot be is refused in words, with what was typed kept", async ({ page }) => {
  await toCalculator(page, "L-shaped hip roof");
  await fillRoof(page);
  for (const [label, text, words] of [
    ["Slope", "0", "a flat roof has no slope to reckon with"],
    ["Slope", "30", "a slope of more than 24 in 12 is a wall"],
    ["Length", "-40 ft", "cannot be below 0"],
    ["Width", "2,44 m", "feet and inches do not mix with metres"],
    ["Width of the wing", "90 ft", "the wing must be narrower"],
    ["Length", "8 ft 14 in", "these inches are a foot or more"],
    ["Length", "about 40", "this is not a length"],
  ] as const) {
    await field(page, label).fill(text);
    await workOut(page).click();
    await expect(main(page)).toContainText(words);
    await expect(field(page, label)).toHaveValue(text);
    await expect(field(page, label)).toHaveAttribute("aria-invalid", "true");
    await expect(page.getByRole("button", { name: "Turn into requirements" })).toHaveCount(0);
    await fillRoof(page);
  }
  await toCalculator(page, "Deck");
  await field(page, "Joist spacing").fill("0");
  await workOut(page).click();
  await expect(field(page, "Joist spacing")).toHaveValue("0");
  await expect(field(page, "Joist spacing")).toHaveAttribute("aria-invalid", "true");
  await axe(page);
  await toCalculator(page, "Walls");
  const wall = page.getByRole("group", { name: "Wall 1", exact: true });
  await wall.getByLabel("Length", { exact: true }).fill("8 ft 3-1/2 in");
  await wall.getByLabel("Height", { exact: true }).first().fill("97 1/8");
  const opening = page.getByRole("group", { name: "Opening 1" }).first();
  await opening.getByLabel("Width", { exact: true }).fill("9'");
  await opening.getByLabel("Height", { exact: true }).fill('82 1/2"');
  for (const [label, text] of [
    ["Stud spacing", "16"],
    ["Studs per opening", "2"],
    ["Rows of plates", "3"],
    ["Plate thickness", "1 1/2"],
    ["Faces with drywall (0, 1 or 2)", "1"],
  ] as const)
    await field(page, label).fill(text);
  await workOut(page).click();
  await expect(opening).toContainText("larger than what it is in");
  await expect(opening.getByLabel("Width", { exact: true })).toHaveValue("9'");
  await expect(wall.getByLabel("Length", { exact: true })).toHaveValue("8 ft 3-1/2 in");
  await axe(page);
  await fitsAcross(page);
});

test.describe("without JavaScript", () => {
  test.use({ javaScriptEnabled: false });

  test("the same form shows the same figures", async ({ page }) => {
    await toCalculator(page, "L-shaped hip roof");
    await fillRoof(page);
    await workOut(page).click();
    await expect(row(page, "What it comes to", "Roof sheathing")).toContainText("1,378.753 sq ft");
    await expect(field(page, "Length")).toHaveValue("40'");
  });
});
