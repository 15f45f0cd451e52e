import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import Papa from "papaparse";
import { readSheet } from "read-excel-file/node";
import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { LAPTOP, NARROW, PHONE } from "./support/sizes.ts";
import { expect, test } from "./support/test.ts";

test.use({ demo: true });

const REPORT = "/savings/report";

test("the report answers first, in both measures, and states its terms, its sources and what it is not", async ({
  page,
}) => {
  await open(page, REPORT);
  const main = page.getByRole("main");
  await expect(main).toContainText(/Cost avoided: [\d,.]+ CAD\./);
  await expect(main).toContainText(/Against the best offer in force that day: [+-][\d,.]+ (saved|lost)/);
  await expect(main).toContainText(/\d+ shelf prices at \d+ stores?, seen from/);
  await expect(main).toContainText("It is not tax advice");
  await expect(page.getByRole("img", { name: /Savings through time|Through time/ }).first()).toBeVisible();
});

test("the breakdown and every view add up to one total", async ({ page }) => {
  await open(page, REPORT);
  const cents = (text: string) =>
    Math.round(100 * Number(text.replaceAll(",", "").match(/[+-]?\d+\.\d\d/)?.[0] ?? 0));
  const sums: number[] = [];
  for (const [name, place] of [
    ["What made it", 0],
    ["By project", 0],
    ["By material", 0],
    ["By month of use", 0],
    ["By origin of the lot", 0],
  ] as const) {
    const table = page.getByRole("table", { name });
    const column = await table
      .locator("tbody tr")
      .evaluateAll((rows, at) => rows.map((row) => row.querySelectorAll("td")[at]?.textContent ?? ""), place);
    const foot = await table.locator("tfoot td").nth(place).textContent();
    expect(column.map(cents).reduce((all, one) => all + one, 0)).toBe(cents(foot ?? ""));
    sums.push(cents(foot ?? ""));
  }
  expect(new Set(sums).size).toBe(1);
});

test("all three files say what the page says", async ({ page }) => {
  await open(page, `${REPORT}?until=2100-01-01`);
  const headline =
    (await page.getByRole("main").textContent())?.match(/Cost avoided: ([\d,.]+) CAD/)?.[1] ?? "";
  const file = async (name: string) => {
    const waiting = page.waitForEvent("download");
    await page.getByRole("link", { name }).click();
    const download = await waiting;
    return { name: download.suggestedFilename(), path: await download.path() };
  };
  const pdf = await file("PDF to mail");
  expect(pdf.name).toMatch(/^savings-.*\.pdf$/);
  expect(execFileSync("pdftotext", ["-layout", pdf.path, "-"], { encoding: "utf8" })).toContain(
    `Cost avoided: ${headline} CAD.`,
  );
  const xlsx = await file("Spreadsheet (XLSX)");
  const summary = await readSheet(readFileSync(xlsx.path), "Summary");
  expect(summary.find(([what]) => what === "Realised")?.[1]).toBe(Number(headline.replaceAll(",", "")));
  const csv = await file("Rows as text (CSV)");
  const { data } = Papa.parse<Record<string, string>>(readFileSync(csv.path, "utf8").slice(1), {
    header: true,
  });
  const realised = data
    .filter(({ leftOn }) => leftOn !== "")
    .reduce((all, row) => all + Number(row.saving), 0);
  expect(realised.toFixed(2)).toBe(headline.replaceAll(",", ""));
});

test("a figure leads to its sum, the prices and the receipt behind it", async ({ page }) => {
  await open(page, "/savings");
  const table = page.getByRole("table", { name: "Each quantity, once" });
  await table.locator("tbody a").first().click();
  await expect(page.getByRole("heading", { name: "The sum" })).toBeVisible();
  await expect(page.getByRole("heading", { name: "The lot" })).toBeVisible();
  await expect(page.getByRole("heading", { name: "Carrying, payment by payment" })).toBeVisible();
  await axe(page);
  await shot(page, "savings-why-laptop");
  await page.setViewportSize(NARROW);
  await fitsAcross(page);
  await shot(page, "savings-why-narrow");
});

test("a report is kept, deleted and brought back", async ({ page }) => {
  await open(page, REPORT);
  await page.getByRole("button", { name: "Keep this report" }).click();
  await expect(page.getByText("Report kept.")).toBeVisible();
  await expect(page.getByText("The same report made now has the same figures.")).toBeVisible();
  await page.getByRole("button", { name: "Delete" }).click();
  await expect(page.getByText("Report deleted.")).toBeVisible();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByText("Report brought back.")).toBeVisible();
});

test("the savings can be seen by month, from a link that can be kept", async ({ page }) => {
  await open(page, "/savings?by=month");
  await expect(page.getByRole("table", { name: "By month of use" })).toBeVisible();
  await page.getByRole("link", { name: "By material" }).click();
  await expect(page.getByRole("table", { name: "By material" })).toBeVisible();
});

test("the report has no barrier, fits the narrowest phone, and paper of both sizes", async ({ page }) => {
  await page.setViewportSize(LAPTOP);
  await open(page, REPORT);
  await axe(page);
  await shot(page, "savings-report-laptop");
  await page.emulateMedia({ colorScheme: "dark" });
  await shot(page, "savings-report-laptop-dark");
  await page.setViewportSize(PHONE);
  await shot(page, "savings-report-phone-dark");
  await page.emulateMedia({ colorScheme: "light" });
  await shot(page, "savings-report-phone");
  await page.setViewportSize(NARROW);
  await fitsAcross(page);
  await page.emulateMedia({ media: "print" });
  // 210 mm and 8.5 in less their margins, at 96 px an inch.
  for (const [paper, width] of [
    ["a4", 695],
    ["letter", 718],
  ] as const) {
    await page.setViewportSize({ width, height: 1000 });
    await fitsAcross(page);
    await shot(page, `savings-report-print-${paper}`);
  }
  await expect(page.getByRole("link", { name: "PDF to mail" })).toBeHidden();
  await expect(page.getByRole("navigation").first()).toBeHidden();
});
