import type { Page } from "@playwright/test";
import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { LAPTOP, NARROW } from "./support/sizes.ts";
import { daysAgo, stored, storedSheet, storedStore } from "./support/stored.ts";
import { expect, test } from "./support/test.ts";

const main = (page: Page) => page.getByRole("main");
const faults = (page: Page) => main(page).getByRole("alert");
const field = (page: Page, label: string) => main(page).getByLabel(label, { exact: true });
const PLY = "Spruce plywood 1/2 in, 4x8";

test.describe.configure({ mode: "serial" });

async function toLot(page: Page) {
  await open(page, "/stock");
  await page.getByRole("link", { name: PLY }).first().click();
  await expect(page.getByRole("heading", { level: 1, name: PLY })).toBeVisible();
}

test("with nothing stored the list says what a lot is, and offers to record one", async ({ page }) => {
  await open(page, "/stock");
  await axe(page);
  await page.getByRole("link", { name: "Record a lot" }).click();
  await expect(page.getByText("First a material")).toBeVisible();
});

test("a receipt that cannot be right is refused in words, and everything typed stays", async ({
  page,
  request,
}) => {
  const materialId = await storedSheet(request, PLY);
  await storedStore(request, "Mill Road Yard");
  const projectId = await stored(request, "projects", { name: "Heron Lane workshop", status: "live" });
  await stored(request, `projects/${projectId}/requirements`, {
    materialId,
    quantity: "10",
    unit: "sheet",
    neededBy: daysAgo(-60),
    validFrom: daysAgo(30),
  });
  await open(page, `/stock/new?material=${materialId}`);
  await axe(page);
  await field(page, "How many").fill("8");
  await field(page, "Store").selectOption({ label: "Mill Road Yard" });
  await field(page, "Paid for the whole").fill("0");
  await field(page, "Bought on").fill(daysAgo(-9));
  await page.getByRole("button", { name: "Record it" }).click();
  await expect(faults(page)).toContainText("Paid for the whole: was it really free? Then say why");
  await field(page, "Paid for the whole").fill("200");
  await page.getByRole("button", { name: "Record it" }).click();
  await expect(faults(page)).toContainText("Bought on: this day is still to come");
  await expect(field(page, "How many")).toHaveValue("8");
  await expect(field(page, "Store").locator("option:checked")).toHaveText("Mill Road Yard");
  await field(page, "Bought on").fill(daysAgo(3));
  await main(page).getByLabel("before tax").check();
  await field(page, "Set aside for").selectOption({ index: 0 });
  await field(page, "Stored at").fill("Shed, north wall");
  await page.getByRole("button", { name: "Record it" }).dblclick();
  await expect(page.getByText(`Recorded: ${PLY}.`)).toBeVisible();
  // 200.00 + 14 % = 228.00, / 8 = 28.50
  await expect(main(page)).toContainText(
    "8 sheets on hand: 8 set aside, 0 free. They cost 228.00 CAD, 28.50 each",
  );
  await expect(main(page)).toContainText("Stored panels: off the ground on dunnage");
});

test("used, then taken back, the sheets are there again", async ({ page }) => {
  await toLot(page);
  await axe(page);
  await field(page, "How many").fill("9");
  await page.getByRole("button", { name: "Use" }).click();
  await expect(faults(page)).toContainText("How many: more than what is free");
  await expect(field(page, "How many")).toHaveValue("9");
  await field(page, "How many").fill("3");
  await page.getByRole("button", { name: "Use" }).click();
  await expect(page.getByText("Used: 3 sheets.")).toBeVisible();
  await expect(main(page)).toContainText("8 acquired = 5 set aside + 3 used");
  await main(page).getByRole("status").getByRole("button", { name: "Undo" }).click();
  await expect(page.getByText("Taken back.")).toBeVisible();
  await expect(main(page)).toContainText("8 acquired = 8 set aside");
  const undone = page
    .getByRole("table", { name: "What happened to it" })
    .getByRole("row", { name: /used, undone/ });
  await undone.getByRole("button", { name: "Redo" }).click();
  await expect(main(page)).toContainText("8 acquired = 5 set aside + 3 used");
});

test("what something later needs cannot be taken back, and that is named", async ({ page }) => {
  await toLot(page);
  const events = page.getByRole("table", { name: "What happened to it" });
  // 3 used of 8: without the setting aside they were free all the same, so it can be undone; set free first, then it cannot
  await page.getByRole("button", { name: "Set free" }).click();
  await expect(page.getByText("Set free: 5 sheets.")).toBeVisible();
  await events
    .getByRole("row", { name: /^set aside/ })
    .getByRole("button", { name: "Undo" })
    .click();
  await expect(
    page.getByText(/It cannot be taken back: set free of 5 on .+ came after and needs it/),
  ).toBeVisible();
});

test("free sheets are set aside again, and what happened says before and after", async ({ page }) => {
  await toLot(page);
  const form = page.locator("form", { has: page.getByRole("button", { name: "Set aside", exact: true }) });
  await expect(form.getByLabel("How many")).toHaveValue("5");
  await form.getByLabel("How many").fill("2");
  await form.getByRole("button", { name: "Set aside" }).click();
  await expect(page.getByText("Set aside: 2 sheets.")).toBeVisible();
  const newest = page.getByRole("table", { name: "What happened to it" }).getByRole("row").nth(1);
  await expect(newest).toContainText("5 → 3");
  await expect(newest).toContainText("owner");
});

test("a deleted lot counts no more, and comes back by its undo", async ({ page }) => {
  await toLot(page);
  await page.getByText("Delete this lot").first().click();
  await page.getByRole("button", { name: "Delete this lot" }).click();
  await expect(page.getByText("Deleted.")).toBeVisible();
  await axe(page);
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByText(`Back in the books: ${PLY}.`)).toBeVisible();
  await expect(main(page)).toContainText("5 sheets on hand: 2 set aside, 3 free");
});

test("salvage may cost nothing, and its caution stands with it", async ({ page, request }) => {
  const materials = await (await request.get("/api/v1/materials")).json();
  await open(page, `/stock/new?material=${materials.items[0].id}`);
  await field(page, "From").selectOption("salvaged");
  await field(page, "How many").fill("2");
  await field(page, "Paid for the whole").fill("0");
  await page.getByRole("button", { name: "Record it" }).click();
  await expect(main(page)).toContainText("They cost 0.00 CAD");
  await expect(main(page)).toContainText("Salvaged lumber has no current grade stamp");
});

test("the screens fit the narrowest phone and have no barrier on a laptop", async ({ page }) => {
  await page.setViewportSize(NARROW);
  await open(page, "/stock");
  await fitsAcross(page);
  await open(page, "/stock/new");
  await fitsAcross(page);
  await toLot(page);
  await fitsAcross(page);
  await page.setViewportSize(LAPTOP);
  await axe(page);
  await shot(page, "lot-laptop");
});
