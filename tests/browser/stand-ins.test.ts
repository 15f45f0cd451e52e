import type { Page } from "@playwright/test";
import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { PHONE } from "./support/sizes.ts";
import { expect, test } from "./support/test.ts";

test.use({ demo: true, viewport: PHONE, hasTouch: true });

const STUD = "Stud 2x4, 92-5/8 in";
const BOARD = "Spruce 2x4, 8 ft";
const table = (page: Page, name: string) => page.getByRole("region", { name });
const rowOf = (page: Page, name: string, start: string) =>
  table(page, name)
    .getByRole("row")
    .filter({ has: page.getByRole("rowheader").filter({ hasText: new RegExp(`^${start}`) }) });

async function toProject(page: Page, name: string) {
  await open(page, "/projects");
  await page.getByRole("link", { name }).click();
  await expect(page.getByRole("heading", { level: 1, name })).toBeVisible();
}

test("what is bought in place of another is marked, at the need and where it is bought", async ({ page }) => {
  await toProject(page, "Birch Road kitchen");
  await expect(rowOf(page, "What to buy, and where", STUD)).toContainText(
    `stands in for ${BOARD} (factor 1.0)`,
  );
  await expect(rowOf(page, "Needed against locked in", BOARD)).toContainText(
    `${STUD} stands in (factor 1.0)`,
  );
  await axe(page);
  await fitsAcross(page);
  await shot(page, "stand-ins-phone");
});

test("free stock of what stands in is offered, and marked once it is set aside", async ({ page }) => {
  await toProject(page, "Birch Road kitchen");
  await table(page, "Needed against locked in").getByRole("link", { name: BOARD }).click();
  await expect(page.getByLabel("Lot")).toContainText(`of ${STUD}, which stands in (factor 1.0)`);
  await page.getByRole("button", { name: "Set aside" }).click();
  await expect(page.getByText("Set aside. Its price no longer moves.")).toBeVisible();
  await expect(rowOf(page, "What is locked in, by lot", STUD)).toContainText(
    `stands in for ${BOARD} (factor 1.0)`,
  );
});

test("a thinner panel is refused as a stand-in, with the reason", async ({ page }) => {
  await toProject(page, "Heron Lane workshop");
  await table(page, "Needed against locked in")
    .getByRole("link", { name: "Spruce plywood 1/2 in, 4x8" })
    .click();
  await page.getByText("Another material, or another day").click();
  const row = page.getByRole("group", { name: "Other material 1" });
  await row.getByLabel("Material").fill("7/16");
  await page.getByRole("option", { name: "Oriented strand board 7/16 in, 4x8" }).click();
  await row.getByLabel("How many of it do the work of one").fill("1");
  await page.getByRole("button", { name: "Save", exact: true }).click();
  const why = "what is thinner or smaller cannot stand in for it";
  await expect(page.getByRole("main").getByRole("alert")).toContainText(why);
  await expect(row.getByLabel("Material")).toHaveValue("Oriented strand board 7/16 in, 4x8");
  await axe(page);
});
