import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { LAPTOP, NARROW } from "./support/sizes.ts";
import { daysAgo } from "./support/stored.ts";
import { expect, test } from "./support/test.ts";

test.use({ demo: true });

test("Today says in one sentence what is still to buy on live jobs, and what presses", async ({ page }) => {
  await open(page, "/");
  const answer = page.getByRole("main").locator("header p").first();
  await expect(answer).toContainText(/[\d,]+ CAD still to buy on 2 live jobs\./);
  await expect(answer).toContainText(/of it rests on .+: that price lapses/);
});

test("planned projects stand apart and are not in the sum, finished ones are not on Today", async ({
  page,
}) => {
  await open(page, "/");
  const live = page.getByRole("table", { name: "Live projects" });
  await expect(live.getByRole("row")).toHaveCount(4);
  await expect(live).toContainText("All live projects");
  await expect(page.getByRole("table", { name: "Planned" })).toContainText("Mill Pond cabin");
  await expect(page.getByText("Quarry Street basement suite")).toHaveCount(0);
});

test("a sum that is not whole says at least, and is not compared with the budget", async ({ page }) => {
  await open(page, "/");
  const row = page.getByRole("table", { name: "Planned" }).getByRole("row", { name: /Mill Pond cabin/ });
  await expect(row).toContainText("at least");
  await expect(row).toContainText("not whole");
});

test("what is needed later is folded away and opens without leaving the page", async ({ page }) => {
  await open(page, "/");
  const later = page.getByRole("table", { name: "Needed later" });
  await expect(later).toBeHidden();
  await page.getByText(/more, later$/).click();
  await expect(later).toBeVisible();
});

test("as of an earlier day the page says so, and leads back to today", async ({ page }) => {
  await open(page, "/");
  await page.getByLabel("Show as of").fill(daysAgo(30));
  await page.getByRole("button", { name: "Show" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toContainText("As of");
  await page.getByRole("link", { name: "Back to today" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Today");
});

test("Today has no barrier on a phone, the narrowest one and a laptop, by day and by night", async ({
  page,
}) => {
  await open(page, "/");
  await fitsAcross(page);
  await axe(page);
  await page.setViewportSize(NARROW);
  await fitsAcross(page);
  await page.setViewportSize(LAPTOP);
  await page.emulateMedia({ colorScheme: "dark" });
  await axe(page);
  await shot(page, "today-laptop-dark");
});

test.describe("without scripts", () => {
  test.use({ javaScriptEnabled: false });
  test("Today can be read", async ({ page }) => {
    await open(page, "/");
    await expect(page.getByText(/still to buy on 2 live jobs/)).toBeVisible();
    await expect(page.getByRole("table", { name: "Prices about to lapse" })).toBeVisible();
  });
});
