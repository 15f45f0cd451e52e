import { form, main, onDay, said, toLot, unfold } from "./support/lot-page.ts";
import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { LAPTOP, NARROW, PHONE } from "./support/sizes.ts";
import { daysAgo, stored, storedPrice } from "./support/stored.ts";
import { expect, test } from "./support/test.ts";

/*
 * A pile of 52 sheets from the day it is laid in to the report, with every figure worked out by hand.
 *
 * Tax: Nova Scotia, HST 14 % (since 2025-04-01), nobody registered, so all of it is cost. Money rate 7.3 % a year, simple:
 * 7.3 % x 10 / 365 = 0.2 %, x 100 / 365 = 2 %, x 110 / 365 = 2.2 % of what was paid.
 *
 * 110 days ago: 52 at 50.00 on special = 2600.00, + 14 % = 2964.00, 57.00 each; going price 60.00 + 14 % = 68.40.
 * 100 days ago: 2 ruined.  cost 2 x 57 = 114.00; carrying 2964 x 0.2 % x 2/52 = 0.228 = 0.23;        saving  -114.23
 *  10 days ago: 31 used; going 65.00 + 14 % = 74.10. cost 31 x 57 = 1767.00; carrying 2964 x 2 % x 31/52 = 35.34
 *               discount 31 x 68.40 - 1767.00 = 353.40; timing 31 x 5.70 = 176.70; saving 353.40 + 176.70 - 35.34 = 494.76
 *               strict, against the special of 55.00 + 14 % = 62.70 then in force: 31 x 62.70 - 1767.00 - 35.34 = 141.36
 *               6 returned: 6 x 50.00 less 10 % = 270.00, + 14 % = 37.80, = 307.80; cost 342.00; carrying 6.84; saving -41.04
 *               3 sold for 150.00: cost 171.00; carrying 3.42;                                        saving   -24.42
 *       today: 10 ought to be there, 9 are: 1 missing. cost 57.00; carrying 2964 x 2.2 % / 52 = 1.254 = 1.25; saving -58.25
 *
 * In all: 494.76 - 114.23 - 41.04 - 24.42 - 58.25 = 256.82. Strict: 141.36 - 237.94 = -96.58. Carrying 47.08.
 * What made it: special 353.40 + timing 176.70 + returned (307.80 - 342) -34.20 + sold (150 - 171) -21.00
 *               + written off or missing (-114 - 57) -171.00 - carrying 47.08 = 256.82.
 * Cost out 114 + 1767 + 342 + 171 + 57 = 2451.00, cost left 9 x 57 = 513.00, together 2964.00.
 */

test.describe.configure({ mode: "serial" });

const PLY = "Spruce plywood 1/2 in, 4x8";

test("52 sheets are laid in, and the place says that they are too heavy for it", async ({
  page,
  request,
}) => {
  const materialId = await stored(request, "materials", {
    name: PLY,
    category: "sheet-goods",
    purchaseUnit: "sheet",
    dimensions: { faceWidth: "48 in", faceLength: "96 in", weight: "48 lb" },
    sources: { weight: "printed on the lift's tag" },
  });
  const storeId = await stored(request, "stores", {
    name: "Mill Road Yard",
    taxRegion: "CA-NS",
    currency: "CAD",
    returnDays: 120,
    restockingPercent: "10",
  });
  await stored(request, "places", {
    name: "Shed, north wall",
    weight: "2000 lb",
    area: "40 sq ft",
    covered: false,
  });
  await storedPrice(request, { materialId, storeId, seenOn: daysAgo(110), amount: "60.00" });
  await storedPrice(request, { materialId, storeId, seenOn: daysAgo(12), amount: "65.00" });
  await stored(request, "observations", {
    materialId,
    storeId,
    seenOn: daysAgo(12),
    amount: "55.00",
    currency: "CAD",
    per: { quantity: "1", unit: "sheet" },
    taxIncluded: false,
    terms: "special",
    until: daysAgo(5),
  });
  const projectId = await stored(request, "projects", { name: "Heron Lane workshop", status: "live" });
  await stored(request, `projects/${projectId}/requirements`, {
    materialId,
    quantity: "31",
    unit: "sheet",
    neededBy: daysAgo(-10),
    validFrom: daysAgo(115),
  });
  await open(page, "/settings/workspace");
  await page.getByLabel("Money rate, percent a year").fill("7.3");
  await page.getByRole("button", { name: "Save", exact: true }).click();
  await expect(page.getByText("Saved.")).toBeVisible();
  await open(page, `/stock/new?material=${materialId}`);
  await main(page).getByLabel("How many").fill("52");
  await page.getByLabel("Store", { exact: true }).selectOption({ label: "Mill Road Yard" });
  await page.getByLabel("Paid for the whole").fill("2600");
  await page.getByLabel("before tax").check();
  await page.getByLabel("Bought on").fill(daysAgo(110));
  await page.getByLabel("Set aside for").selectOption({ label: "No project: free stock" });
  await page.getByLabel("Stored at").fill("Shed, north wall");
  await page.getByText("More about it").click();
  await page.getByLabel("Bought as").selectOption("special");
  await page.getByRole("button", { name: "Record it" }).click();
  await expect(main(page)).toContainText("52 sheets on hand: 0 set aside, 52 free.");
  await expect(main(page)).toContainText("They cost 2,964.00 CAD, 57.00 each, all in.");
  // 52 x 48 lb = 2,496 lb; x 0.45359237 = 1,132.17 kg
  await expect(main(page)).toContainText("1,132 kg (2,496 lb) (printed on the lift's tag)");
  await page.getByRole("link", { name: "Shed, north wall" }).click();
  await expect(main(page)).toContainText("Weight: 2,496 of 2,000 pounds used, 496 too much");
  // One stack of any height: 4 ft x 8 ft = 32 sq ft
  await expect(main(page)).toContainText("Floor: 32 of 40 square feet used, 8 free");
  await expect(main(page)).toContainText("off the ground on dunnage, stickered, covered and ventilated");
  await expect(main(page)).toContainText("this place is not under a roof: they warp");
  await axe(page);
  await shot(page, "place-phone");
  await page.getByLabel("Material").selectOption({ label: PLY });
  await page.getByRole("button", { name: "How many fit" }).click();
  await expect(said(page)).toContainText(`Room for 0 more sheets of ${PLY}. What stops it: Weight.`);
});

test("2 are ruined, 31 set aside and used; more than there is, or a day before it was bought, is refused", async ({
  page,
}) => {
  await toLot(page, PLY);
  await axe(page);
  await shot(page, "lot-phone");
  await unfold(page, "Write off");
  const off = form(page, "Write off");
  await off.getByLabel("How many to write off").fill("53");
  await onDay(off, 100);
  await off.getByRole("button", { name: "Write off" }).click();
  await expect(off.getByRole("alert")).toContainText("How many to write off: more than what is free");
  await off.getByLabel("How many to write off").fill("2");
  await off.getByLabel("On", { exact: true }).fill(daysAgo(111));
  await off.getByRole("button", { name: "Write off" }).click();
  await expect(off.getByRole("alert")).toContainText("On: this is before it was acquired");
  await off.getByLabel("What happened").selectOption("warped");
  await off.getByLabel("On", { exact: true }).fill(daysAgo(100));
  await off.getByRole("button", { name: "Write off" }).click();
  await expect(said(page)).toContainText("Written off: 2 sheets.");

  const aside = form(page, "Set aside");
  await expect(aside.getByLabel("How many")).toHaveValue("31");
  await onDay(aside, 99);
  await aside.getByRole("button", { name: "Set aside" }).click();
  await expect(said(page)).toContainText("Set aside: 31 sheets.");

  const use = form(page, "Use");
  await expect(use.getByLabel("How many")).toHaveValue("31");
  await onDay(use, -9);
  await use.getByRole("button", { name: "Use" }).click();
  await expect(use.getByRole("alert")).toContainText("On: this day is still to come");
  await use.getByLabel("On", { exact: true }).fill(daysAgo(10));
  await use.getByRole("button", { name: "Use" }).click();
  await expect(said(page)).toContainText("Used: 31 sheets.");
  await expect(main(page)).toContainText("52 acquired = 19 free + 31 used + 2 written off");
});

test("6 go back at the refund suggested, 3 are sold", async ({ page }) => {
  await toLot(page, PLY);
  await unfold(page, "Return to the store");
  const back = form(page, "Return it");
  await back.getByLabel("How many go back").fill("6");
  await expect(back.getByLabel("Refund for all of them, tax in it")).toHaveValue("307.80");
  await expect(back).toContainText(
    "Suggested for 6 sheets: 270.00 for the goods after 10% restocking + 37.80 tax = 307.80 CAD",
  );
  await shot(page, "lot-return-phone");
  await back.getByLabel("On", { exact: true }).fill(daysAgo(10));
  await back.getByRole("button", { name: "Return it" }).click();
  await expect(said(page)).toContainText("Returned: 6 sheets.");
  await unfold(page, "Sell");
  const sale = form(page, "Record the sale");
  await sale.getByLabel("How many are sold").fill("3");
  await sale.getByLabel("Got for all of them").fill("150");
  await onDay(sale, 10);
  await sale.getByRole("button", { name: "Record the sale" }).click();
  await expect(said(page)).toContainText("Sold: 3 sheets.");
  await expect(main(page)).toContainText(
    "52 acquired = 10 free + 31 used + 6 returned + 3 sold + 2 written off",
  );
});

test("a stock-take shows its difference before it is booked, and one undo takes it back", async ({
  page,
}) => {
  await open(page, "/stock/places");
  await page.getByRole("link", { name: "Shed, north wall" }).click();
  await page.getByRole("link", { name: "Count what lies there" }).click();
  await axe(page);
  const counted = main(page).getByRole("textbox", { name: new RegExp(PLY) });
  await counted.fill("nine");
  await page.getByRole("button", { name: "Show the differences" }).click();
  await expect(main(page).getByRole("alert")).toContainText(`${PLY}: this is not an amount`);
  await expect(counted).toHaveValue("nine");
  await counted.fill("9");
  await page.getByRole("button", { name: "Show the differences" }).click();
  const differences = page.getByRole("table", { name: "Differences" });
  await expect(differences.getByRole("row", { name: new RegExp(PLY) })).toContainText("1 sheet missing");
  await shot(page, "stock-take-phone");
  await page.getByRole("button", { name: "Book the differences" }).click();
  await expect(said(page)).toContainText("Counted: one difference booked.");
  await said(page).getByRole("button", { name: "Undo" }).click();
  await expect(said(page)).toContainText("Taken back.");
  await expect(main(page)).toContainText("10 sheets");
  await said(page).getByRole("button", { name: "Redo" }).click();
  await expect(said(page)).toContainText("Counted: one difference booked.");
  await toLot(page, PLY);
  await expect(main(page)).toContainText("9 sheets on hand: 0 set aside, 9 free. They cost 513.00 CAD");
});

test("on a day of its past the lot is as it was then", async ({ page }) => {
  await toLot(page, PLY);
  await page.getByLabel("As of").fill(daysAgo(50));
  await page.getByRole("button", { name: "Show", exact: true }).click();
  await expect(main(page)).toContainText("50 sheets on hand: 31 set aside, 19 free.");
  await expect(page.getByRole("button", { name: "Use", exact: true })).toHaveCount(0);
  await expect(page.getByRole("table", { name: "What happened to it" })).not.toContainText("sold");
  await page.getByLabel("As of").fill(daysAgo(120));
  await page.getByRole("button", { name: "Show", exact: true }).click();
  await expect(main(page)).toContainText("it was not bought yet");
});

test("the report reads the same on paper, on a phone and on a laptop, to the cent", async ({ page }) => {
  for (const [width, media] of [
    [PHONE, "screen"],
    [NARROW, "screen"],
    [LAPTOP, "screen"],
    // A4 and Letter are 794 and 816 px wide at 96 px to the inch.
    [{ width: 794, height: 1123 }, "print"],
    [{ width: 816, height: 1056 }, "print"],
  ] as const) {
    await page.setViewportSize(width);
    await page.emulateMedia({ media });
    await open(page, "/savings/report");
    await fitsAcross(page);
    await expect(main(page)).toContainText("Cost avoided: 256.82 CAD.");
    await expect(main(page)).toContainText(/best offer in force that day: -96\.58/);
    const made = page.getByRole("table", { name: "What made it" });
    for (const [what, figure] of [
      ["special or clearance", "+353.40"],
      ["timing: prices moved until use", "+176.70"],
      ["returned to the store", "-34.20"],
      ["sold on", "-21.00"],
      ["written off or missing", "-171.00"],
      ["carrying cost", "-47.08"],
      ["In all", "+256.82"],
    ] as const) {
      const row = made.locator("tr", { hasText: what });
      await expect(row).toBeVisible();
      await expect(row).toContainText(figure);
    }
    const rows = page.getByRole("table", { name: "Each quantity, once" });
    for (const figure of ["+494.76", "-41.04", "-24.42", "-114.23", "-58.25"])
      await expect(rows).toContainText(figure);
    await expect(rows).toContainText("+141.36");
    // Of one lot first in, first out and the average are the lot's own cost.
    if (media === "screen") await page.locator("summary", { hasText: "For the bookkeeper" }).click();
    const books = page.getByRole("table", { name: "For the bookkeeper" }).locator("tbody tr");
    await expect(books).toContainText("2,451.00");
    await expect(books).toContainText("513.00");
    await shot(page, `report-story-${media}-${width.width}`);
  }
});

test("every figure of a row is the one worked out by hand", async ({ page }) => {
  await page.setViewportSize(LAPTOP);
  await open(page, "/savings/report");
  const row = page
    .getByRole("table", { name: "Each quantity, once" })
    .locator("tbody tr", { hasText: "+494.76" });
  for (const figure of ["1,767.00", "2,120.40", "2,297.10", "+353.40", "+176.70", "35.34"])
    await expect(row).toContainText(figure);
  await axe(page);
  await page.emulateMedia({ colorScheme: "dark" });
  await axe(page);
});

test("the screens fit the narrowest phone and have no barrier in the dark", async ({ page }) => {
  await page.emulateMedia({ colorScheme: "dark" });
  await page.setViewportSize(NARROW);
  await open(page, "/stock");
  await fitsAcross(page);
  await axe(page);
  await shot(page, "stock-dark-narrow");
  await open(page, "/stock/places");
  await fitsAcross(page);
  await axe(page);
  await page.getByRole("link", { name: "Shed, north wall" }).click();
  await fitsAcross(page);
  await axe(page);
  await shot(page, "place-dark-narrow");
  await page.getByRole("link", { name: "Count what lies there" }).click();
  await fitsAcross(page);
  await axe(page);
  await toLot(page, PLY);
  await unfold(page, "Sell");
  await fitsAcross(page);
  await axe(page);
  await page.setViewportSize(LAPTOP);
  await shot(page, "lot-dark-laptop");
  await page.emulateMedia({ colorScheme: "light" });
  await open(page, "/stock");
  await shot(page, "stock-light-laptop");
});
