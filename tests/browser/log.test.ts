import type { Page } from "@playwright/test";
import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { NARROW } from "./support/sizes.ts";
import { daysAgo, storedPrice, storedSheet, storedStore } from "./support/stored.ts";
import { expect, test } from "./support/test.ts";

const main = (page: Page) => page.getByRole("main");
const price = (page: Page) => page.getByLabel("Price on the tag");
const keep = (page: Page) => page.getByRole("button", { name: "Keep this price" });
const faults = (page: Page) => main(page).getByRole("alert");

async function choose(page: Page, words: string, name: string) {
  await page.getByRole("combobox", { name: "Material" }).fill(words);
  await page.getByRole("option", { name }).click();
}

async function sent(page: Page): Promise<void> {
  await expect(page.getByText(/^Kept: /)).toBeVisible(); // before it is kept, everything is sent too
  await expect(page.getByText("Everything is sent.")).toBeVisible();
}

test("with nothing yet, the form says what is missing; a store and a material are made in two fields each", async ({
  page,
}) => {
  await open(page, "/log");
  await keep(page).click();
  await expect(faults(page)).toContainText("Material: fill this in");
  await expect(faults(page)).toContainText("Store: fill this in");
  await axe(page);
  await page.getByRole("button", { name: "Add a store" }).click();
  await page.getByRole("region", { name: "A new store" }).getByLabel("Name").fill("Mill Road Yard");
  await page.getByRole("button", { name: "Add and go on" }).click();
  await expect(page.getByLabel("Store", { exact: true })).toHaveValue(/./);
  await page.getByRole("combobox", { name: "Material" }).fill("Cedar shim");
  await page.getByRole("button", { name: "Make “Cedar shim” a new material" }).click();
  await page.getByLabel("Bought by the").selectOption("bundle");
  await axe(page);
  await page.getByRole("button", { name: "Add and go on" }).click();
  await price(page).fill("4.50");
  await keep(page).click();
  await expect(page.getByText("Kept: Cedar shim at Mill Road Yard.")).toBeVisible();
  await sent(page);
  await open(page, "/materials");
  await expect(main(page)).toContainText("Cedar shim");
});

test("what cannot be an amount is named at its field, and everything typed stays", async ({
  page,
  request,
}) => {
  await storedSheet(request, "Spruce plywood 1/2 in, 4x8");
  await open(page, "/log");
  await choose(page, "ply 1/2", "Spruce plywood 1/2 in, 4x8");
  for (const [typed, fault] of [
    // each differs from the one before, so that an answer still on its way is not taken for the next
    ["1.2.3", "this is not an amount"],
    ["-5", "must be more than 0"],
    ["1e30", "this is not an amount"],
    ["0", "must be more than 0"],
    ["", "fill this in"],
  ] as const) {
    await price(page).fill(typed);
    await keep(page).click();
    await expect(faults(page)).toContainText(`Price on the tag: ${fault}`);
    await expect(price(page)).toHaveValue(typed);
  }
  await axe(page);
});

test("the understood amount and the price all in stand under the tag while it is typed", async ({ page }) => {
  await open(page, "/log");
  await choose(page, "ply", "Spruce plywood 1/2 in, 4x8");
  await price(page).fill("1,049");
  await expect(page.getByText("Read as 1,049")).toBeVisible();
  await price(page).fill("30");
  // 30.00 + 14 %
  await expect(page.getByText("34.20 CAD per sheet, all in.")).toBeVisible();
  await page.getByLabel("Tax included").check();
  await expect(page.getByText("30.00 CAD per sheet, all in.")).toBeVisible();
});

test("a day to come and a day long past are each named", async ({ page }) => {
  await open(page, "/log");
  await choose(page, "ply", "Spruce plywood 1/2 in, 4x8");
  await price(page).fill("30");
  await page.getByText("More about this price").click();
  for (const [day, fault] of [
    [daysAgo(-9), "this day is still to come"],
    ["1900-01-01", "this day is too long ago"],
  ] as const) {
    await page.getByLabel("Seen on").fill(day);
    await keep(page).click();
    await expect(faults(page)).toContainText(`Seen on: ${fault}`);
  }
});

test("pressed twice, one price is kept; undone it counts no more, and comes back", async ({ page }) => {
  await open(page, "/log");
  await choose(page, "ply", "Spruce plywood 1/2 in, 4x8");
  await price(page).fill("30");
  await keep(page).dblclick();
  await expect(page.getByText("The first price of it")).toBeVisible();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByText("Taken back. The price counts no more.")).toBeVisible();
  await page.getByRole("button", { name: "Bring it back" }).click();
  // only one was kept: brought back, it is the first again
  await expect(page.getByText("The first price of it")).toBeVisible();
});

test("the form remembers the store, and lists what was seen last first", async ({ page, request }) => {
  await storedStore(request, "Kestrel Hill Supply");
  await storedSheet(request, "Gypsum board 1/2 in, 4x8");
  await open(page, "/log");
  await choose(page, "gyp", "Gypsum board 1/2 in, 4x8");
  await page.getByLabel("Store", { exact: true }).selectOption({ label: "Kestrel Hill Supply" });
  await price(page).fill("15");
  await keep(page).click();
  await expect(page.getByText("Kept: Gypsum board 1/2 in, 4x8 at Kestrel Hill Supply.")).toBeVisible();
  await sent(page);
  await open(page, "/log");
  await expect(page.getByLabel("Store", { exact: true }).locator("option:checked")).toHaveText(
    "Kestrel Hill Supply",
  );
});

test("a new price is held against the best offer elsewhere, and none left ends a store's offers", async ({
  page,
  request,
}) => {
  const storeId = await storedStore(request, "Lantern Line Lumber");
  const materialId = await storedSheet(request, "Oriented strand board 7/16 in, 4x8");
  await storedPrice(request, { storeId, materialId, seenOn: daysAgo(2), amount: "20.00" });
  await open(page, `/log?material=${materialId}`);
  await page.getByLabel("Store", { exact: true }).selectOption({ label: "Mill Road Yard" });
  await price(page).fill("18");
  await keep(page).click();
  // 20.00 + 14 % - (18.00 + 14 %) = 22.80 - 20.52
  await expect(
    page.getByText("2.28 each under Lantern Line Lumber, the best offer elsewhere."),
  ).toBeVisible();
  await expect(page.getByText("The lowest of 1 prices seen so far.")).toHaveCount(0);
  await fitsAcross(page);
  await sent(page);
  await open(page, `/log?material=${materialId}`);
  await page.getByLabel("Store", { exact: true }).selectOption({ label: "Mill Road Yard" });
  await page.getByLabel("Terms").selectOption("none-left");
  await page.getByRole("button", { name: "Keep: none left" }).click();
  await expect(page.getByText(/Noted: none left at this store/)).toBeVisible();
});

test("buy 2, get 1 free is read as three for two while it is typed, kept so, and its basis is named", async ({
  page,
  request,
}) => {
  const materialId = await storedSheet(request, "Cement board 1/2 in, 3x5");
  await page.setViewportSize(NARROW);
  await open(page, `/log?material=${materialId}`);
  await page.getByLabel("Store", { exact: true }).selectOption({ label: "Mill Road Yard" });
  await page.getByLabel("Terms").selectOption("special");
  await price(page).fill("10");
  await page.getByText("More about this price").click();
  await page.getByLabel("Buy so many").fill("2");
  await keep(page).click();
  await expect(faults(page)).toContainText("Get so many free: fill this in");
  await expect(page.getByLabel("Buy so many")).toHaveValue("2");
  await page.getByLabel("Get so many free").fill("1");
  // 20.00 for three, and 14 %: 7.60 each
  await expect(page.getByText("7.60 CAD per sheet, all in.")).toBeVisible();
  await axe(page);
  await shot(page, "log-free");
  await keep(page).click();
  await expect(
    page.getByText(/^For 3 sheets, all in \(tax included as cost\), CAD, on .*; delivery and other charges/),
  ).toBeVisible();
  await fitsAcross(page);
  await shot(page, "log-free-kept");
  await sent(page);
  await open(page, `/materials/${materialId}`);
  await expect(page.getByText(/^Per sheet, all in \(tax included as cost\), CAD, on /)).toBeVisible();
  await expect(page.getByText("from 3 sheets, in packs of 3")).toBeVisible();
  await expect(page.getByText("at Mill Road Yard, all in, from 3 sheets on")).toBeVisible();
  await fitsAcross(page);
  await shot(page, "offers-basis");
});

test("the aisle form has no barrier and fits the narrowest phone", async ({ page }) => {
  await page.setViewportSize(NARROW);
  await open(page, "/log");
  await fitsAcross(page);
  await axe(page);
});

test("a price ten times off is asked about before it is kept, and never changed unasked", async ({
  page,
  request,
}) => {
  const storeId = await storedStore(request, "A yard further off");
  const materialId = await storedSheet(request, "Birch plywood 1/4 in, 4x8");
  await storedPrice(request, { storeId, materialId, seenOn: daysAgo(3), amount: "30.00" });
  await open(page, `/log?material=${materialId}`);
  await page.getByLabel("Store", { exact: true }).selectOption({ label: "A yard further off" });
  await price(page).fill("299.80");
  await keep(page).click();
  await expect(page.getByText("Did you mean 29.98?")).toBeVisible();
  await axe(page);
  await page.getByRole("button", { name: "Yes, 29.98" }).click();
  await expect(page.getByText("34.18 CAD per sheet, all in.")).toBeVisible();
  await sent(page);
});

test("beside a special the last shelf price is asked for, and kept where it still stands", async ({
  page,
  request,
}) => {
  const storeId = await storedStore(request, "Second Cut Reuse Centre");
  const materialId = await storedSheet(request, "Fir plywood 3/4 in, 4x8");
  await storedPrice(request, { storeId, materialId, seenOn: daysAgo(9), amount: "38.90" });
  await open(page, `/log?material=${materialId}`);
  await page.getByLabel("Store", { exact: true }).selectOption({ label: "Second Cut Reuse Centre" });
  await page.getByLabel("Terms").selectOption("special");
  await page.getByLabel(/^Your last shelf price here was 38.90, .*: still so before the special/).check();
  await price(page).fill("31");
  await keep(page).click();
  await sent(page);
  await expect(page.getByRole("region", { name: /^At Second Cut Reuse Centre/ })).toContainText("38.90 CAD");
  const seen = async () => {
    const answer = await request.get(`/api/v1/observations?materialId=${materialId}`);
    const { items } = (await answer.json()) as { items: { terms: string; amount: string }[] };
    return items.map(({ terms, amount }) => `${terms} ${Number(amount)}`);
  };
  await expect.poll(seen).toEqual(["special 31", "shelf 38.9", "shelf 38.9"]);
});

test.describe("without scripts", () => {
  test.use({ javaScriptEnabled: false });
  test("it says why it needs them, and where a price can be entered without", async ({ page }) => {
    await open(page, "/log");
    expect(await main(page).innerHTML()).toContain(
      "This form works without a connection and therefore needs scripts.",
    );
    await expect(page.getByRole("link", { name: "Enter a whole receipt" })).toBeVisible();
  });
});
