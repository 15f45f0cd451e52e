import type { Page } from "@playwright/test";
import { copyAsCsv } from "../fixtures/index-files.ts";
import { VALET_CSV } from "../fixtures/rate-files.ts";
import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { LAPTOP } from "./support/sizes.ts";
import { daysAgo, storedPrice, storedSheet, storedStore } from "./support/stored.ts";
import { expect, test } from "./support/test.ts";

test.describe.configure({ mode: "serial" });

const button = (page: Page, name: string) => page.getByRole("button", { name, exact: true });
const csv = (name: string, text: string) => ({ name, mimeType: "text/csv", buffer: Buffer.from(text) });
const spoilt = VALET_CSV.replace('"1.2928"', '"1.29 approx"');

test("a file of rates is looked at, taken in without what is wrong in it, and taken back as one", async ({
  page,
}) => {
  await open(page, "/settings/rates");
  await axe(page);
  await page.getByLabel("File", { exact: true }).setInputFiles(csv("rates.csv", spoilt));
  await button(page, "See what it holds").click();
  await expect(page.getByText("Nothing has been taken in yet. 5 new, 0 revised")).toBeVisible();
  const refused = page.getByRole("row", { name: /1\.29 approx/ });
  await expect(refused).toContainText("FXUSDCAD");
  await expect(refused).toContainText("refused");
  await axe(page);
  await fitsAcross(page);
  await shot(page, "rates-file-phone");
  await button(page, "Take it in").click();
  await expect(page.getByText("Taken in: 5 figures were added.")).toBeVisible();
  await expect(page.getByText("USD/CAD").first()).toBeVisible();
  await button(page, "Take it in").click();
  await expect(page.getByText("Nothing was added. 0 new, 0 revised, 5 there already")).toBeVisible();
  await button(page, "Take back what rates.csv added").click();
  await expect(page.getByText("Taken back: what the file had added")).toBeVisible();
  await expect(page.getByText("No exchange rates yet.")).toBeVisible();
  await button(page, "Bring back what rates.csv added").click();
  await expect(page.getByText("USD/CAD").first()).toBeVisible();
});

test("without a file nothing is taken in, and that is said", async ({ page }) => {
  await open(page, "/settings/indices");
  await button(page, "Take it in").click();
  await expect(page.getByRole("main").getByRole("alert")).toContainText("Choose a file first.");
});

test("an index is made from its file, revised by a later one, and keeps what was published before", async ({
  page,
}) => {
  await open(page, "/settings/indices");
  await axe(page);
  await page.getByLabel("File", { exact: true }).setInputFiles(csv("first.csv", copyAsCsv("first")));
  await page.getByLabel("Published on").fill("2023-11-20");
  await button(page, "Take it in").click();
  await expect(page.getByRole("main").getByRole("alert")).toContainText("Name:");
  await page.getByLabel("Name", { exact: true }).fill("Lumber, producer prices");
  await page.getByLabel("Publisher", { exact: true }).fill("US Bureau of Labor Statistics");
  await page.getByLabel("Base", { exact: true }).fill("1982 = 100");
  await button(page, "Take it in").click();
  await expect(page.getByText("Taken in: 5 figures were added.")).toBeVisible();
  await open(page, "/settings/indices");
  await page.getByLabel("File", { exact: true }).setInputFiles(csv("second.csv", copyAsCsv("second")));
  await page.getByLabel("Published on").fill("2023-12-17");
  await page.getByLabel("Index", { exact: true }).selectOption({ label: "Lumber, producer prices (WPU081)" });
  await button(page, "See what it holds").click();
  await expect(page.getByText("1 new, 4 revised, 1 there already")).toBeVisible();
  await shot(page, "index-file-phone");
  await button(page, "Take it in").click();
  await expect(page.getByText("Taken in: 5 figures were added.")).toBeVisible();
  await page.getByRole("link", { name: "Lumber, producer prices" }).click();
  await expect(page.getByRole("row", { name: /Jul 2023/ })).toContainText("272.345");
  await expect(page.getByRole("row", { name: /Jul 2023/ })).toContainText("263.497 (Nov 20, 2023)");
  await axe(page);
  await fitsAcross(page);
  await shot(page, "index-phone");
});

test("a material's page holds its price of a year ago against its index", async ({ page, request }) => {
  const materialId = await storedSheet(request, "Sheet held against an index");
  const storeId = await storedStore(request, "A yard");
  const seen = { materialId, storeId };
  await storedPrice(request, { ...seen, seenOn: daysAgo(365), amount: "40.00" });
  await storedPrice(request, { ...seen, seenOn: daysAgo(0), amount: "46.00" });
  const [then, now] = [daysAgo(365), daysAgo(0)].map((day) => `${day.slice(0, 7)}-01`);
  await open(page, "/settings/indices");
  const values = csv("values.csv", `date,value\n${then},120\n${now},126\n`);
  await page.getByLabel("File", { exact: true }).setInputFiles(values);
  await page.getByLabel("Name", { exact: true }).fill("Panels");
  await page.getByLabel("Series", { exact: true }).fill("PANELS");
  await page.getByLabel("Publisher", { exact: true }).fill("A bureau");
  await button(page, "Take it in").click();
  await expect(page.getByText("Taken in: 2 figures were added.")).toBeVisible();
  await page.getByRole("link", { name: "Panels" }).click();
  await page.getByLabel("Material", { exact: true }).selectOption({ label: "Sheet held against an index" });
  await button(page, "Hold against this index").click();
  await page.getByRole("link", { name: "Sheet held against an index" }).click();
  // 46.00 and 40.00 before tax of 14 %: 45.60 a year ago, in today's prices x 126 / 120 = 47.88; 15 % as it stands.
  await expect(page.getByText("CAD 47.88")).toBeVisible();
  await expect(page.getByText("45.60 × 126.00 ÷ 120.00")).toBeVisible();
  await expect(page.getByText("+15.00% as it stands, +9.52% beside the index")).toBeVisible();
  await expect(page.getByText("+6.00 index points")).toBeVisible();
  await axe(page);
  await fitsAcross(page);
  await shot(page, "material-index-phone");
  await page.setViewportSize(LAPTOP);
  await page.emulateMedia({ colorScheme: "dark" });
  await shot(page, "material-index-dark");
  await open(page, "/settings/indices");
  await axe(page);
  await shot(page, "indices-dark");
});
