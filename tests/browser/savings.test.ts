import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { LAPTOP, NARROW } from "./support/sizes.ts";
import { expect, test } from "./support/test.ts";

test.use({ demo: true });

const number = (text: string) => Number(text.replaceAll(",", "").match(/[+-]?\d+\.\d\d/)?.[0]);

test("the headline gives both measures, and the definition stands under it", async ({ page }) => {
  await open(page, "/savings");
  const main = page.getByRole("main");
  await expect(main).toContainText(/CAD of cost avoided so far, against the going price on the day of use/);
  await expect(main).toContainText(/Against the best offer in force that day: [\d.,]+ (saved|lost)/);
  await expect(main).toContainText("This is cost avoidance, not money earned");
  await expect(main).toContainText("Saving = discount + timing − carrying cost.");
});

test("in every row and every total the parts add up to the saving, to the cent", async ({ page }) => {
  await open(page, "/savings");
  for (const [table, parts] of [
    ["In all", [0, 1, 2, 3]],
    ["Each quantity, once", [3, 4, 5, 6]],
  ] as const) {
    const rows = await page
      .getByRole("table", { name: table })
      .locator("tbody tr")
      .evaluateAll((all) =>
        all.map((row) => [...row.querySelectorAll("td")].map((cell) => cell.textContent ?? "")),
      );
    expect(rows.length).toBeGreaterThan(1);
    for (const row of rows) {
      const [discount, timing, carrying, saving] = parts.map((index) => number(row[index] ?? ""));
      const sum = Math.round(100 * ((discount ?? 0) + (timing ?? 0) - (carrying ?? 0)));
      expect(sum).toBe(Math.round(100 * (saving ?? 0)));
    }
  }
});

test("a loss stands in the same size of type as a saving, with its word", async ({ page }) => {
  await open(page, "/savings");
  const cells = page.getByRole("table", { name: "Each quantity, once" }).locator("tbody td:nth-of-type(7)");
  const sizes = await cells.evaluateAll((all) =>
    all.map((cell) => {
      const figure = document.createTreeWalker(cell, NodeFilter.SHOW_TEXT).nextNode();
      return getComputedStyle(figure?.parentElement ?? cell).fontSize;
    }),
  );
  expect(new Set(sizes).size).toBe(1);
  await expect(cells.filter({ hasText: "lost" }).first()).toContainText("-");
  await expect(cells.filter({ hasText: "saved" }).first()).toContainText("+");
});

test("narrowed to a project and a period, only its rows are left, and the address can be kept", async ({
  page,
}) => {
  await open(page, "/savings");
  await page
    .getByRole("combobox", { name: "Project" })
    .selectOption({ label: "Quarry Street basement suite" });
  await page.getByRole("button", { name: "Show", exact: true }).click();
  const table = page.getByRole("table", { name: "Each quantity, once" });
  await expect(table.locator("tbody tr")).toHaveCount(5);
  await expect(table).not.toContainText("Heron Lane workshop");
  await page.getByLabel("From").fill("1999-01-01");
  await page.getByLabel("Until").fill("1999-12-31");
  await page.getByRole("button", { name: "Show", exact: true }).click();
  await expect(page.getByText("Nothing left a lot in this period, and nothing is set aside.")).toBeVisible();
  expect(new URL(page.url()).searchParams.get("until")).toBe("1999-12-31");
  await page.getByRole("link", { name: "Show all" }).click();
  await expect(table.locator("tbody tr")).toHaveCount(13);
});

test("Savings has no barrier and fits the narrowest phone", async ({ page }) => {
  await page.setViewportSize(NARROW);
  await open(page, "/savings");
  await fitsAcross(page);
  await page.setViewportSize(LAPTOP);
  await axe(page);
  await shot(page, "savings-laptop");
});
