import type { Page } from "@playwright/test";
import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { LAPTOP, NARROW, PHONE } from "./support/sizes.ts";
import { daysAgo, stored, storedStore } from "./support/stored.ts";
import { expect, test } from "./support/test.ts";

const main = (page: Page) => page.getByRole("main");
const faults = (page: Page) => main(page).getByRole("alert");
const field = (page: Page, label: string) => main(page).getByLabel(label, { exact: true });
const FIR = "Old fir 2x4, by the foot";
const JOB = "Birch Road kitchen";

test.describe.configure({ mode: "serial" });
test.use({ viewport: PHONE });

/** A piece and a length in a row of the tally, counted from 1. */
async function row(page: Page, number: number, pieces: string, length: string) {
  const group = main(page).getByRole("group", { name: `Row ${number}`, exact: true });
  await group.getByLabel("Pieces").fill(pieces);
  await group.getByLabel("Length").fill(length);
}

/** Follows a link to the screen with this heading. */
async function follow(page: Page, link: string, heading: string) {
  await main(page).getByRole("link", { name: link }).first().click();
  await expect(page.getByRole("heading", { level: 1, name: heading })).toBeVisible();
}

async function toLot(page: Page) {
  await open(page, "/stock/salvage");
  await follow(page, FIR, FIR);
}

test("salvage that cannot be read is refused by row, and everything typed stays", async ({
  page,
  request,
}) => {
  const materialId = await stored(request, "materials", {
    name: FIR,
    category: "dimensional-lumber",
    purchaseUnit: "linear-foot",
    dimensions: { nominalThickness: "2 in", nominalWidth: "4 in" },
  });
  const storeId = await storedStore(request, "Mill Road Yard");
  await stored(request, "observations", {
    materialId,
    storeId,
    seenOn: daysAgo(2),
    amount: "1.50",
    currency: "CAD",
    per: { quantity: "1", unit: "linear-foot" },
    taxIncluded: false,
    terms: "shelf",
  });
  const projectId = await stored(request, "projects", { name: JOB, status: "live" });
  const need = { materialId, unit: "linear-foot", neededBy: daysAgo(-60), validFrom: daysAgo(30) };
  await stored(request, `projects/${projectId}/requirements`, { ...need, quantity: "60" });
  await stored(request, `projects/${projectId}/requirements`, { ...need, quantity: "40", acceptsUsed: true });
  await open(page, "/stock/salvage");
  await axe(page);
  await follow(page, "Count in salvage", "Count in salvage");
  await open(page, `/stock/salvage/new?material=${materialId}`);
  await axe(page);
  await fitsAcross(page);
  await field(page, "Reclaimed from").fill("porch at Birch Road");
  await field(page, "Condition, %").fill("60");
  await field(page, "Hours it took").fill("6.5");
  await field(page, "Each hour counts").fill("28");
  await field(page, "Hauling").fill("35.50");
  await field(page, "Paid for it").fill("40");
  await row(page, 1, "12", "8 ft");
  await page.getByRole("button", { name: "One more row" }).click();
  await row(page, 5, "5", "10");
  await shot(page, "salvage-new-phone");
  await page.getByRole("button", { name: "Count it in" }).click();
  await expect(faults(page)).toContainText("Row 5, Length: ");
  await expect(field(page, "Hours it took")).toHaveValue("6.5");
  const fifth = main(page).getByRole("group", { name: "Row 5", exact: true });
  await expect(fifth.getByLabel("Pieces")).toHaveValue("5");
  await expect(fifth.getByLabel("Length")).toHaveValue("10");
  await fifth.getByLabel("Length").fill("10 ft 3 in");
  await page.getByRole("button", { name: "Count it in" }).dblclick();
  await expect(page.getByText(`Counted in: ${FIR}.`)).toBeVisible();
});

test("its page says what it took, what it stands in for, and its cautions", async ({ page }) => {
  await toLot(page);
  const part = page.locator("#salvaged");
  // 12 x 8 + 5 x 10.25; 6.5 x 28 + 35.50 + 40; 147.25 x 1.50 x 1.14 x 0.6 = 151.0785
  await expect(part).toContainText("12 × 8 ft, 5 × 10 ft 3 in: 17 pieces, 147.25");
  await expect(part).toContainText("CAD 257.50");
  await expect(part).toContainText("151.08");
  await expect(main(page)).toContainText("test for asbestos and lead");
  await expect(main(page)).toContainText("no current grade stamp");
  await axe(page);
  await shot(page, "salvage-lot-phone");
});

test("it is refused to the need that does not accept used, and set aside for the one that does", async ({
  page,
}) => {
  await toLot(page);
  const form = page.locator("form", { has: page.getByRole("button", { name: "Set aside", exact: true }) });
  await form.getByLabel("How many").fill("40");
  const needs = form.getByLabel("For", { exact: true });
  const [newOnly, usedToo] = [/: 60 /, /: 40 /];
  const option = async (of: RegExp) => {
    const label = (await needs.locator("option").allTextContents()).find((text) => of.test(text));
    return { label: label ?? "" };
  };
  await needs.selectOption(await option(newOnly));
  await form.getByRole("button", { name: "Set aside" }).click();
  await expect(faults(page)).toContainText("this need does not accept used material");
  await expect(form.getByLabel("How many")).toHaveValue("40");
  await needs.selectOption(await option(usedToo));
  await form.getByRole("button", { name: "Set aside" }).click();
  await expect(page.getByText(/Set aside: 40/)).toBeVisible();
});

test("put up for sale it stands in the list, and what is sold stands beside what was asked", async ({
  page,
}) => {
  await toLot(page);
  const ask = page.locator("form", { has: page.getByRole("button", { name: "Put up for sale" }) });
  await ask.getByLabel("Ask for each").fill("0");
  await ask.getByRole("button").click();
  await expect(faults(page)).toContainText("Ask for each: ");
  await ask.getByLabel("Ask for each").fill("0.90");
  await ask.getByRole("button").click();
  await expect(page.getByText("Asking price noted.")).toBeVisible();
  await expect(main(page)).toContainText(/0\.90\S* CAD is asked for each since/);
  await page.getByText("Sell some", { exact: true }).click();
  const sell = page.locator("form", { has: page.getByRole("button", { name: "Sold", exact: true }) });
  await expect(sell).toContainText("Who bought it is not kept.");
  await sell.getByLabel("How many").fill("20");
  await sell.getByLabel("Sold for, in all").fill("15");
  await sell.getByRole("button", { name: "Sold", exact: true }).click();
  await expect(page.getByText(/Sold: 20/)).toBeVisible();
  await open(page, "/stock/salvage");
  const sales = page.getByRole("table", { name: "For sale" });
  // asked 20 x 0.90 = 18.00, sold for 15.00
  await expect(sales).toContainText("20 for CAD 15.00");
  await expect(sales).toContainText("-3.00 against the asking price");
  await axe(page);
  await fitsAcross(page);
  await shot(page, "salvage-list-phone");
});

test("a count is corrected, and its cost follows", async ({ page }) => {
  await toLot(page);
  await main(page).getByRole("link", { name: "Correct the count" }).click();
  await expect(field(page, "Hours it took")).toHaveValue("6.5");
  await axe(page);
  await field(page, "Hours it took").fill("8");
  await page.getByRole("button", { name: "Correct the count" }).click();
  await expect(page.getByText("Corrected.")).toBeVisible();
  await expect(page.locator("#salvaged")).toContainText("CAD 299.50");
});

test("keeping, selling and dumping are weighed up line by line, and what is missing is said", async ({
  page,
}) => {
  await toLot(page);
  await follow(page, "Keep, sell or dump?", "Keep, sell or dump?");
  await axe(page);
  await expect(field(page, "Condition, %")).toHaveValue("60");
  await field(page, "How many").fill("100");
  await field(page, "Hauling home").fill("many");
  await page.getByRole("button", { name: "Compare" }).click();
  await expect(faults(page)).toContainText("Hauling home: ");
  await expect(field(page, "How many")).toHaveValue("100");
  await field(page, "Hauling home").fill("30");
  await field(page, "Storing it, in all").fill("12");
  await field(page, "Disposal fee").fill("125");
  await field(page, "You would ask, each").fill("0.90");
  await page.getByRole("button", { name: "Compare" }).click();
  await expect(main(page)).toContainText("not known: say the fee, and the weight");
  await field(page, "Weight, kg").fill("200");
  await field(page, "Hauling to the dump").fill("20");
  await page.getByRole("button", { name: "Compare" }).click();
  // keep 100 x 1.71 x 0.6 - 30 - 12 = 60.60; sell 90.00; dump - 25 - 20 = -45.00
  await expect(page.getByRole("table", { name: "Keep" })).toContainText("+60.60");
  await expect(page.getByRole("table", { name: "Dump" })).toContainText("-45.00");
  await expect(main(page)).toContainText("selling it is better than keeping it by 29.40 CAD");
  await axe(page);
  await fitsAcross(page);
  await shot(page, "salvage-choice-phone");
});

test("waste is a cost of its project beside the estimate; corrected and taken back", async ({ page }) => {
  await open(page, "/projects");
  await follow(page, JOB, JOB);
  await follow(page, "Record waste", "Record waste");
  await axe(page);
  await fitsAcross(page);
  await expect(main(page)).toContainText("test for asbestos and lead");
  await field(page, "Kind").selectOption("drywall");
  await field(page, "The fee is").selectOption("load");
  await field(page, "Fee").fill("60");
  await field(page, "Hauling").fill("25");
  await shot(page, "waste-new-phone");
  await page.getByRole("button", { name: "Record it" }).click();
  await expect(faults(page)).toContainText("Loads: ");
  await expect(field(page, "Fee")).toHaveValue("60");
  await field(page, "Loads").fill("2");
  await page.getByRole("button", { name: "Record it" }).click();
  await expect(page.getByText("Recorded: drywall.")).toBeVisible();
  // 2 x 60 x 1.14 + 25 = 161.80
  const part = page.locator("#waste");
  await expect(part).toContainText("161.80");
  await expect(part).toContainText("With disposal");
  await part.getByRole("link", { name: "drywall" }).click();
  await expect(field(page, "Loads")).toHaveValue("2");
  await field(page, "Loads").fill("1");
  await page.getByRole("button", { name: "Record it" }).click();
  await expect(page.getByText("Corrected.")).toBeVisible();
  await expect(part).toContainText("93.40");
  await axe(page);
  await fitsAcross(page);
  await shot(page, "waste-project-phone");
  await part.getByRole("button", { name: /^Take back: drywall/ }).click();
  await expect(part).toContainText("No waste recorded.");
  await page.getByRole("button", { name: "Redo" }).click();
  await expect(part).toContainText("93.40");
});

test("the need of lumber says what accepting used means", async ({ page }) => {
  await open(page, "/projects");
  await follow(page, JOB, JOB);
  await page.getByRole("link", { name: "Add what it needs" }).first().click();
  await expect(main(page)).toContainText("Off until you turn it on: then used offers count");
  await field(page, "Material").first().fill("fir");
  await page.getByRole("option", { name: FIR }).click();
  await expect(main(page)).toContainText("ask the local authority or an engineer first");
});

test("the screens are whole in the dark, on a laptop and on the narrowest phone", async ({ page }) => {
  const look = async (name: string) => {
    await axe(page);
    await fitsAcross(page);
    await shot(page, name);
  };
  await page.emulateMedia({ colorScheme: "dark" });
  await page.setViewportSize(LAPTOP);
  await open(page, "/stock/salvage");
  await look("salvage-list-laptop-dark");
  await toLot(page);
  await look("salvage-lot-laptop-dark");
  await follow(page, "Keep, sell or dump?", "Keep, sell or dump?");
  await look("salvage-choice-laptop-dark");
  await open(page, "/projects");
  await follow(page, JOB, JOB);
  await look("waste-project-laptop-dark");
  await page.setViewportSize(NARROW);
  await open(page, "/stock/salvage/new");
  await look("salvage-new-narrow-dark");
});
