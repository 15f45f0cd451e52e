import type { Page } from "@playwright/test";
import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { LAPTOP, NARROW } from "./support/sizes.ts";
import { daysAgo, storedPrice, storedSheet, storedStore } from "./support/stored.ts";
import { expect, test } from "./support/test.ts";

// One story in order: what an earlier test stored, a later one uses.
test.describe.configure({ mode: "serial" });

const faults = (page: Page) => page.getByRole("main").getByRole("alert");
const saveCorrection = (page: Page) => page.getByRole("button", { name: "Save the correction" });
let material = "";

test("a material's page says what one costs, draws it, and lists every price as seen", async ({
  page,
  request,
}) => {
  const near = await storedStore(request, "Mill Road Yard");
  const far = await storedStore(request, "Kestrel Hill Supply");
  material = await storedSheet(request, "Spruce plywood 1/2 in, 4x8");
  const seen = { materialId: material };
  await storedPrice(request, { ...seen, storeId: near, seenOn: daysAgo(40), amount: "29.00" });
  await storedPrice(request, { ...seen, storeId: near, seenOn: daysAgo(3), amount: "30.00" });
  await storedPrice(request, { ...seen, storeId: far, seenOn: daysAgo(5), amount: "32.00" });
  await open(page, `/materials/${material}`);
  // 30.00 + 14 % = 34.20; going: middle of 34.20 and 36.48
  await expect(
    page.getByText(
      "34.20 CAD per sheet at Mill Road Yard, all in: the best offer in force, seen 3 days ago.",
    ),
  ).toBeVisible();
  await expect(page.getByText("The going price is 35.34 over 2 stores.")).toBeVisible();
  await expect(page.locator("svg.recharts-surface")).toBeVisible();
  await expect(page.getByText("a newer price replaced it")).toBeVisible();
  await fitsAcross(page);
  await axe(page);
  await shot(page, "material-phone");
});

test("per square foot a sheet of 34.20 is 1.0688, and the figures stand behind the chart", async ({
  page,
}) => {
  await open(page, `/materials/${material}`);
  await page.getByRole("link", { name: "square foot" }).click();
  await expect(
    page.getByText("Spruce plywood 1/2 in, 4x8, per square foot, all in, CAD").first(),
  ).toBeVisible();
  await page.locator("summary", { hasText: "The figures behind the chart" }).click();
  // 34.20 / 32 = 1.06875, 36.48 / 32 = 1.14, 33.06 / 32 = 1.033125
  const rows = page
    .getByRole("table", { name: "The figures behind the chart" })
    .locator("tbody tr td:last-child");
  await expect(rows).toHaveText(["1.07", "1.14", "1.03"]);
});

test("a correction is refused in words while it cannot be right, and keeps what was typed", async ({
  page,
}) => {
  await open(page, `/materials/${material}`);
  await page
    .getByRole("link", { name: /^Correct/ })
    .first()
    .click();
  await expect(page.getByRole("heading", { level: 1, name: "Correct a price" })).toBeVisible();
  await axe(page);
  await fitsAcross(page);
  for (const [typed, fault] of [
    ["1.2.3", "this is not an amount"],
    ["-5", "must be more than 0"],
    ["1e30", "this is not an amount"],
    ["0", "must be more than 0"],
  ] as const) {
    await page.getByLabel("Amount on the tag").fill(typed);
    await saveCorrection(page).click();
    await expect(faults(page)).toContainText(`Amount on the tag: ${fault}`);
    await expect(faults(page)).toContainText("Why is it corrected?: fill this in");
    await expect(page.getByLabel("Amount on the tag")).toHaveValue(typed);
  }
  await page.getByLabel("Amount on the tag").fill("1,049");
  await expect(page.getByText("Read as 1,049")).toBeVisible();
});

test("a day to come, a day long past, a quote without its end and a wrong unit are each named", async ({
  page,
}) => {
  await open(page, `/materials/${material}`);
  await page
    .getByRole("link", { name: /^Correct/ })
    .first()
    .click();
  await page.getByLabel("Why is it corrected?").fill("misread the tag");
  await page.getByLabel("Seen on").fill(daysAgo(-9));
  await page.getByLabel("of", { exact: true }).evaluate((unit: HTMLSelectElement) => {
    unit.add(new Option("pound", "pound"));
    unit.value = "pound";
  });
  await saveCorrection(page).click();
  await expect(faults(page)).toContainText("Seen on: this day is still to come");
  await expect(faults(page)).toContainText("of: this unit does not fit the material");
  await page.getByLabel("Seen on").fill("1900-01-01");
  await page.getByLabel("Terms").selectOption("quote");
  await saveCorrection(page).click();
  await expect(faults(page)).toContainText("Seen on: this day is too long ago");
});

test("a correction keeps what the price said before, and changes every figure", async ({ page }) => {
  await open(page, `/materials/${material}`);
  await page
    .getByRole("link", { name: /^Correct/ })
    .first()
    .click();
  await page.getByLabel("Amount on the tag").fill("31.00");
  await page.getByLabel("Why is it corrected?").fill("misread the tag");
  await saveCorrection(page).click();
  await expect(page.getByText("Corrected. The earlier values stay readable.")).toBeVisible();
  // 31.00 + 14 %
  await expect(page.getByText("35.34 CAD per sheet at Mill Road Yard")).toBeVisible();
  await expect(page.getByText("corrected once")).toBeVisible();
  await page
    .getByRole("link", { name: /^Correct/ })
    .first()
    .click();
  const earlier = page.getByRole("table", { name: "What it said before" });
  await expect(earlier).toContainText("CAD 30.00 per sheet");
  await expect(earlier).toContainText("misread the tag");
});

test("a price taken back counts no more, and its undo brings it back", async ({ page }) => {
  await open(page, `/materials/${material}`);
  await page
    .getByRole("link", { name: /^Correct/ })
    .first()
    .click();
  await page.getByRole("button", { name: "Take back" }).click();
  await expect(page.getByText("Price taken back.")).toBeVisible();
  // What is left at Mill Road Yard is 40 days old and stale.
  await expect(page.getByText("36.48 CAD per sheet at Kestrel Hill Supply")).toBeVisible();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByText("35.34 CAD per sheet at Mill Road Yard")).toBeVisible();
});

test("as of an earlier day the page shows what was known by then", async ({ page }) => {
  await open(page, `/materials/${material}?asOf=${daysAgo(4)}`);
  await expect(page.getByRole("heading", { level: 1 })).toContainText("as of");
  await expect(page.getByText("36.48 CAD per sheet at Kestrel Hill Supply")).toBeVisible();
});

test("every price, and the page on a laptop, have no barrier", async ({ page }) => {
  await page.setViewportSize(NARROW);
  await open(page, `/materials/${material}/prices`);
  await fitsAcross(page);
  await axe(page);
  await page.setViewportSize(LAPTOP);
  await open(page, `/materials/${material}`);
  await axe(page);
});

test.describe("without scripts", () => {
  test.use({ javaScriptEnabled: false });
  test("the price, the drawing and the figures can still be read", async ({ page }) => {
    await open(page, `/materials/${material}`);
    await expect(page.getByText("35.34 CAD per sheet at Mill Road Yard")).toBeVisible();
    await expect(page.getByRole("img", { name: /per sheet, all in, CAD/ })).toBeVisible();
    await page.locator("summary", { hasText: "The figures behind the chart" }).click();
    await expect(page.getByRole("table", { name: "The figures behind the chart" })).toContainText("36.48");
  });
});
