import type { Locator, Page } from "@playwright/test";
import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { LAPTOP, NARROW, PHONE } from "./support/sizes.ts";
import { stored, storedSheet } from "./support/stored.ts";
import { expect, test } from "./support/test.ts";

// One story in order: what an earlier test stored, a later one uses.
test.describe.configure({ mode: "serial" });

const keep = (page: Page) => page.getByRole("button", { name: "Keep it" });
const totals = (page: Page) => page.getByRole("region", { name: "What it comes to" });
const line = (page: Page, number: number) => page.getByRole("group", { name: `Line ${number}`, exact: true });
const amount = (page: Page, name: string) =>
  totals(page).locator("dl > div").filter({ hasText: name }).locator("dd");

async function fillMaterial(page: Page, at: Locator, name: string) {
  await at.getByRole("combobox", { name: "Material" }).fill(name);
  await page.getByRole("option", { name }).click();
}

type Typed = Readonly<{ material?: string; text?: string; quantity: string; unit?: string; price: string }>;
async function fillLine(page: Page, number: number, { material, text, quantity, unit, price }: Typed) {
  const at = line(page, number);
  if (material !== undefined) await fillMaterial(page, at, material);
  if (text !== undefined) await at.getByLabel("Or in words").fill(text);
  await at.getByLabel("Quantity", { exact: true }).fill(quantity);
  if (unit !== undefined) await at.getByLabel("Unit", { exact: true }).selectOption(unit);
  await at.getByLabel("Price", { exact: true }).fill(price);
}

test("without a store the screen says why one comes first", async ({ page }) => {
  await open(page, "/bills/new");
  await expect(page.getByText("First, a store")).toBeVisible();
  await axe(page);
  await open(page, "/bills");
  await expect(page.getByText("No receipt yet")).toBeVisible();
  await axe(page);
});

test.describe("on a phone", () => {
  test.use({ viewport: PHONE, hasTouch: true });

  // 8 x 41.98 = 335.84; 3 for 20.00: 12 are 80.00; 5 x 8.25 less 10 % = 37.13 (37.125); 2 x 6.49 = 12.98; 24.99; 4.50:
  // 495.44, delivery 35.00: 530.44. GST 26.522 -> 26.52; QST 52.91139 -> 52.91; in all 609.87.
  test("a receipt of six lines with two taxes comes to its printed total", async ({ page, request }) => {
    await stored(request, "stores", { name: "Kestrel Hill Supply", taxRegion: "CA-QC", currency: "CAD" });
    await storedSheet(request, "Spruce plywood 1/2 in, 4x8");
    const lumber = { category: "dimensional-lumber", purchaseUnit: "piece" };
    await stored(request, "materials", { name: "Spruce 2x4, 8 ft", ...lumber });
    await open(page, "/stock");
    await page.getByRole("link", { name: "Enter a receipt" }).click();
    await expect(page.getByText("Nothing to add up yet")).toBeVisible();
    await fillLine(page, 1, { material: "Spruce plywood 1/2 in, 4x8", quantity: "8", price: "41.98" });
    await expect(line(page, 1)).toContainText("= 335.84");
    await fillLine(page, 2, { material: "Spruce 2x4, 8 ft", quantity: "12", price: "20.00" });
    await line(page, 2).getByText("More about line 2").click();
    await line(page, 2).getByLabel("The price is for so many").fill("3");
    await expect(line(page, 2)).toContainText("= 80.00");
    const add = page.getByRole("button", { name: "Add a line" });
    await add.click();
    await fillLine(page, 3, { text: "Screws, 3 in", quantity: "5", unit: "box", price: "8.25" });
    await line(page, 3).getByText("More about line 3").click();
    await line(page, 3).getByLabel("Discount, percent").fill("10");
    await add.click();
    await fillLine(page, 4, { text: "Adhesive", quantity: "2", price: "6.49" });
    await add.click();
    await fillLine(page, 5, { text: "Blade", quantity: "1", price: "24.99" });
    await add.click();
    await fillLine(page, 6, { text: "Cutting", quantity: "1", price: "4.50" });
    // Nothing typed before was lost by adding lines.
    await expect(line(page, 1).getByLabel("Material", { exact: true })).toHaveValue(
      "Spruce plywood 1/2 in, 4x8",
    );
    await expect(line(page, 3)).toContainText("= 37.13");
    await page.getByText("Delivery and fees").click();
    const fee = page.getByRole("group", { name: "Fee 1" });
    await fee.getByLabel("What for").fill("Delivery");
    await fee.getByLabel("Amount", { exact: true }).fill("35");
    await expect(amount(page, "Lines")).toHaveText("495.44");
    await expect(amount(page, "GST 5 %")).toHaveText("26.52");
    await expect(amount(page, "QST 9.975 %")).toHaveText("52.91");
    await expect(amount(page, "Total")).toHaveText("609.87 CAD");
    await page.getByLabel("Total printed on it").fill("609.90");
    await expect(totals(page)).toContainText("The printed total is +0.03 off. No way of rounding meets it");
    await page.getByLabel("Total printed on it").fill("609.87");
    await expect(totals(page)).toContainText("Comes to the printed 609.87, to the cent.");
    await expect(page.getByText("Total 609.87 CAD")).toBeInViewport();
    await fitsAcross(page);
    await shot(page, "receipt-phone");
    await keep(page).click();
    await expect(page.getByText("Kept. 2 lots and 2 prices made of it.")).toBeVisible();
    await expect(totals(page)).toContainText("Comes to the printed 609.87, to the cent.");
    await axe(page);
    await fitsAcross(page);
    await page.getByRole("link", { name: "Lot", exact: true }).first().click();
    await expect(page.getByRole("heading", { level: 1, name: "Spruce plywood 1/2 in, 4x8" })).toBeVisible();
  });

  test("a cent off is explained by the seller's rounding, and the next receipt remembers it", async ({
    page,
  }) => {
    await open(page, "/bills/new");
    // GST 0.005 and QST 0.009975 a line: each is 0.01 rounded on its line; of both lines together 0.01 and 0.01995.
    await fillLine(page, 1, { text: "Washer", quantity: "1", price: "0.10" });
    await fillLine(page, 2, { text: "Bolt", quantity: "1", price: "0.10" });
    await expect(amount(page, "Total")).toHaveText("0.23 CAD"); // 0.20 + 0.01 + 0.02 (0.01995)
    await page.getByLabel("Total printed on it").fill("0.24");
    await expect(totals(page)).toContainText(
      "It is met when tax is rounded on each line, each tax by itself: that is 0.04 of tax, not 0.03.",
    );
    await page.getByText("Tax, delivered elsewhere, currency").click();
    await page.getByLabel("Tax is rounded").selectOption({ label: "on each line, each tax by itself" });
    await expect(totals(page)).toContainText("Comes to the printed 0.24, to the cent.");
    await keep(page).click();
    await expect(page.getByText("Kept. No lot and no price made of it.")).toBeVisible();
    await open(page, "/bills/new");
    await expect(page.getByLabel("Tax is rounded")).toHaveValue("per-line");
  });

  // Delivered to Ontario: 2 x 20.00 back less 15 % is -34.00 and -4.42 of HST, 38.42; 0.02 and a levy of 1.00 twice bear 0.26.
  test("goods handed back leave their lot, delivered elsewhere is taxed there, and a deposit is forfeited later", async ({
    page,
  }) => {
    await open(page, "/bills/new");
    await page.getByText("Tax, delivered elsewhere, currency").click();
    await page.getByLabel("Taxed where").selectOption({ label: "Ontario" });
    await fillLine(page, 1, { material: "Spruce plywood 1/2 in, 4x8", quantity: "2", price: "20.00" });
    await line(page, 1).getByText("More about line 1").click();
    await line(page, 1).getByLabel("handed back to the store").check();
    await line(page, 1).getByLabel("Taken out of").selectOption({ index: 2 });
    await line(page, 1).getByLabel("Restocking fee, percent").fill("15");
    await fillLine(page, 2, { text: "Bolts", quantity: "2", unit: "box", price: "0.01" });
    await line(page, 2).getByText("More about line 2").click();
    const levy = line(page, 2).getByRole("group", { name: "Fee on the line" });
    await levy.getByLabel("Fee on the line").fill("Levy");
    await levy.getByLabel("Amount for each").fill("1");
    await page.getByText("Deposit, rebate, paying, storing").click();
    const deposit = page.getByRole("group", { name: "Deposit" }).last();
    await deposit.getByLabel("What for").fill("Pallets");
    await deposit.getByLabel("Amount", { exact: true }).fill("50");
    await expect(amount(page, "HST 13 %")).toHaveText("-4.16");
    await expect(amount(page, "Total")).toHaveText("13.86 CAD"); // -34.00 + 0.02 + 2.00 + 50.00 - 4.16
    await shot(page, "receipt-return-phone");
    await page.emulateMedia({ colorScheme: "dark" });
    await page.screenshot({
      path: new URL("./shots/receipt-total-phone-dark.png", import.meta.url).pathname,
    });
    await page.emulateMedia({ colorScheme: "light" });
    await keep(page).click();
    await expect(page.getByText("Still held")).toBeVisible();
    await page.getByText("Given back or forfeited").click();
    await page.getByLabel("Forfeited").check();
    await page.getByLabel("Amount").fill("60");
    await page.getByRole("button", { name: "Record it" }).click();
    await expect(page.getByRole("main").getByRole("alert")).toContainText(
      "Amount: more than is still held of the deposit",
    );
    await expect(page.getByLabel("Amount")).toHaveValue("60");
    await page.getByLabel("Amount").fill("50");
    await page.getByRole("button", { name: "Record it" }).click();
    await expect(page.getByText("Cost by now, with what is forfeited: 13.86 CAD.")).toBeVisible();
    await axe(page);
    await fitsAcross(page);
    await shot(page, "receipt-deposit-phone");
    await page.getByRole("button", { name: "Undo", exact: true }).click();
    await expect(page.getByText("Undone: it is held again.")).toBeVisible();
    await page.getByRole("link", { name: "Out of its lot" }).click();
    await expect(page.getByRole("heading", { level: 1, name: "Spruce plywood 1/2 in, 4x8" })).toBeVisible();
    await expect(page.getByText(/38\.42/).first()).toBeVisible();
  });
});

test("what cannot be kept is named at its line, and everything typed stays", async ({ page }) => {
  await open(page, "/bills/new");
  await fillLine(page, 2, { text: "Hinge", quantity: "1.2.3", price: "-4" });
  await page.getByRole("button", { name: "Add a line" }).click();
  await fillLine(page, 3, { text: "Latch", quantity: "2", price: "6" });
  await keep(page).click();
  const faults = page.getByRole("main").getByRole("alert");
  await expect(faults.getByRole("listitem")).toHaveText([/^Line 2, Quantity: /, /^Line 2, Price: /]);
  await expect(line(page, 2).getByLabel("Quantity", { exact: true })).toHaveValue("1.2.3");
  await expect(line(page, 3).getByLabel("Or in words")).toHaveValue("Latch");
  await expect(amount(page, "Lines")).toHaveText("12.00");
  await axe(page);
  await line(page, 2).getByLabel("Quantity", { exact: true }).fill("1");
  await line(page, 2).getByLabel("Price", { exact: true }).fill("0");
  const today = await page.getByLabel("Date on it").inputValue();
  await page.getByLabel("Date on it").fill("2089-01-31");
  await keep(page).click();
  await expect(faults.getByRole("listitem")).toHaveText([/^Line 2, Price: /]);
  await line(page, 2).getByLabel("Price", { exact: true }).fill("4");
  await page.getByLabel("Total printed on it").fill("99.99");
  await keep(page).click();
  await expect(faults.getByRole("listitem")).toHaveText([/^Date on it: /]);
  await expect(page.getByLabel("Date on it")).toHaveValue("2089-01-31");
  await page.getByLabel("Date on it").fill(today);
  await keep(page).click();
  // 16.00 with 2.39 of tax: kept as it stands, the difference said.
  await expect(totals(page)).toContainText("The printed total is +81.59 off.");
});

test("a quote is kept as an offer until its last day", async ({ page }) => {
  await page.setViewportSize(LAPTOP);
  await open(page, "/bills/new");
  await page.getByLabel("Quote").check();
  await fillLine(page, 1, { material: "Spruce plywood 1/2 in, 4x8", quantity: "40", price: "38.50" });
  await keep(page).click();
  await expect(page.getByRole("main").getByRole("alert")).toContainText("Holds until");
  await page.getByLabel("Holds until").fill("2090-01-31");
  await shot(page, "quote-laptop");
  await page.emulateMedia({ colorScheme: "dark" });
  await shot(page, "quote-laptop-dark");
  await page.emulateMedia({ colorScheme: "light" });
  await keep(page).click();
  await expect(page.getByText("Kept. No lot and one price made of it.")).toBeVisible();
  await expect(page.getByText("Holds until Jan 31, 2090.")).toBeVisible();
});

test("a receipt taken back takes its lots along, and comes back with them", async ({ page }) => {
  await page.setViewportSize(NARROW);
  await open(page, "/bills");
  await fitsAcross(page);
  await axe(page);
  await page
    .getByRole("link", { name: /Kestrel Hill Supply/ })
    .last()
    .click();
  await page.getByRole("button", { name: "Take it back, with its prices and lots" }).click();
  await expect(page.getByText("Taken back, with the prices and lots it made.")).toBeVisible();
  await axe(page);
  await open(page, "/stock");
  await expect(page.getByText("Nothing is in stock.")).toBeVisible();
  await page.goBack();
  await page.getByRole("button", { name: "Bring it back" }).click();
  await expect(page.getByText("Brought back, with its prices and lots.")).toBeVisible();
  await open(page, "/stock");
  await expect(page.getByRole("link", { name: "Spruce plywood 1/2 in, 4x8" })).toBeVisible();
});
