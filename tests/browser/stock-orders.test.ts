import { form, main, said, toLot, unfold } from "./support/lot-page.ts";
import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { NARROW } from "./support/sizes.ts";
import { daysAgo, stored, storedPrice, storedSheet, storedStore } from "./support/stored.ts";
import { expect, test } from "./support/test.ts";

test.describe.configure({ mode: "serial" });

const DOOR = "Steel entry door, 36 in";
const PLY = "Spruce plywood 5/8 in, 4x8";

test("the store's own rules are typed once, and a count of days that cannot be is refused", async ({
  page,
  request,
}) => {
  const storeId = await storedStore(request, "Kestrel Hill Supply");
  await open(page, `/settings/stores/${storeId}`);
  await page.getByText("Returns, lower prices, orders").click();
  await page.getByLabel("Takes back for, days").fill("0");
  await page.getByLabel("Kept of a return").fill("120");
  await page.getByRole("button", { name: "Save the store" }).click();
  const faults = main(page).getByRole("alert");
  await expect(faults).toContainText("Takes back for, days: must be more than 0");
  await expect(faults).toContainText("Kept of a return: this percentage is out of range");
  await expect(page.getByLabel("Kept of a return")).toHaveValue("120");
  await page.getByLabel("Takes back for, days").fill("120");
  await page.getByLabel("Kept of a return").fill("10");
  await page.getByRole("button", { name: "Save the store" }).click();
  await expect(page.getByText("Saved.")).toBeVisible();
});

test("a special order with a down payment: what is owed, what came, what is still to come", async ({
  page,
  request,
}) => {
  const materialId = await stored(request, "materials", {
    name: DOOR,
    category: "doors",
    purchaseUnit: "each",
    dimensions: { width: "36 in", length: "80 in" },
  });
  await open(page, `/stock/new?material=${materialId}`);
  await page.getByLabel("From", { exact: true }).selectOption("special-order");
  await main(page).getByLabel("How many").fill("4");
  await page.getByLabel("Store", { exact: true }).selectOption({ label: "Kestrel Hill Supply" });
  await page.getByLabel("Paid for the whole").fill("1000");
  await page.getByLabel("Currency").selectOption("USD");
  await page.getByLabel("before tax").check();
  await page.getByLabel("Bought on").fill(daysAgo(20));
  await page.getByText("More about it").click();
  await page.getByLabel("Not received yet").check();
  const down = page.getByRole("group", { name: "Payment 1" });
  await down.getByLabel("Paid", { exact: true }).fill("300");
  await page.getByLabel("Expected on").fill(daysAgo(25));
  await page.getByRole("button", { name: "Record it" }).click();
  const faults = main(page).getByRole("alert");
  await expect(faults).toContainText("Expected on: the last day is before the first");
  await page.getByLabel("Expected on").fill(daysAgo(2));
  await page.getByRole("button", { name: "Record it" }).click();
  await expect(faults).toContainText(
    "Currency: this is not the currency of the store; say why if it is right",
  );
  await expect(page.getByLabel("Why in another currency")).toBeVisible();
  await page.getByText("More about it").click();
  await expect(down.getByLabel("Paid", { exact: true })).toHaveValue("300");
  await page.getByLabel("Currency", { exact: true }).selectOption("CAD");
  await page.getByRole("button", { name: "Record it" }).click();
  // 1000.00 + 14 % = 1140.00; less 300.00 paid down
  await expect(main(page)).toContainText("Still owed: CAD 840.00.");
  await expect(main(page)).toContainText("4 each on order, nothing of it has come in yet");
  await expect(main(page).locator("dl").first()).toContainText("overdue");
  await expect(page.getByRole("button", { name: "Use", exact: true })).toHaveCount(0);
  await axe(page);
  await shot(page, "lot-ordered-phone");
  const come = form(page, "Receive");
  await come.getByLabel("How many came").fill("5");
  await come.getByRole("button", { name: "Receive" }).click();
  await expect(come.getByRole("alert")).toContainText("How many came: more than what is still to come");
  await come.getByLabel("How many came").fill("1");
  await come.getByLabel("Came in on").fill(daysAgo(30));
  await come.getByRole("button", { name: "Receive" }).click();
  await expect(come.getByRole("alert")).toContainText("Came in on: this is before it was acquired");
  await expect(come.getByLabel("How many came")).toHaveValue("1");
  await come.getByLabel("Came in on").fill(daysAgo(3));
  await come.getByRole("button", { name: "Receive" }).click();
  await expect(said(page)).toContainText("Received.");
  await expect(main(page)).toContainText("3 of them are still on order.");
  await expect(come.getByLabel("How many came")).toHaveValue("3");
  await said(page).getByRole("button", { name: "Undo" }).click();
  await expect(said(page)).toContainText("Taken back.");
  await expect(come.getByLabel("How many came")).toHaveValue("4");
  await said(page).getByRole("button", { name: "Redo" }).click();
  const pay = form(page, "Record the payment");
  await pay.getByLabel("Paid now").fill("400");
  await pay.getByRole("button", { name: "Record the payment" }).click();
  await expect(said(page)).toContainText("Payment recorded.");
  await expect(main(page)).toContainText("Still owed: CAD 440.00.");
  const life = page.getByRole("table", { name: "What happened to it" });
  await expect(life.getByRole("row", { name: /^paid/ })).toHaveCount(2);
  await expect(life.getByRole("row", { name: /^came in/ })).toContainText("1 each");
});

test("bought for nothing, why is asked where it was typed; said, it is kept", async ({ page, request }) => {
  const materialId = await storedSheet(request, PLY);
  await open(page, `/stock/new?material=${materialId}`);
  await main(page).getByLabel("How many").fill("10");
  await page.getByLabel("Store", { exact: true }).selectOption({ label: "Kestrel Hill Supply" });
  await page.getByLabel("Paid for the whole").fill("0");
  await page.getByRole("button", { name: "Record it" }).click();
  await expect(main(page).getByRole("alert")).toContainText("was it really free? Then say why");
  await page.getByLabel("Why it was free").fill("a replacement for a crushed lift");
  await page.getByRole("button", { name: "Record it" }).click();
  await expect(main(page)).toContainText("They cost 0.00 CAD");
  await expect(main(page)).toContainText("a replacement for a crushed lift");
  await page.getByText("Delete this lot").first().click();
  await page.getByRole("button", { name: "Delete this lot" }).click();
});

test("the price fell since it was bought: on Today and on the lot, with the money and the last day", async ({
  page,
  request,
}) => {
  const { items } = await (await request.get("/api/v1/materials")).json();
  const materialId = items.find((one: { name: string }) => one.name === PLY).id;
  const storeId = (await (await request.get("/api/v1/stores")).json()).items[0].id;
  await storedPrice(request, { materialId, storeId, seenOn: daysAgo(0), amount: "50.00" });
  const projectId = await stored(request, "projects", { name: "Heron Lane workshop", status: "live" });
  await stored(request, `projects/${projectId}/requirements`, {
    materialId,
    quantity: "6",
    unit: "sheet",
    neededBy: daysAgo(-30),
    validFrom: daysAgo(30),
  });
  await stored(request, "lots", {
    materialId,
    storeId,
    origin: "bought",
    quantity: "10",
    paid: { amount: "600.00", currency: "CAD", taxIncluded: false, fees: [] },
    orderedOn: daysAgo(5),
    storedAt: "Shed, north wall",
    returnableUntil: daysAgo(2),
    adjustableUntil: daysAgo(-9),
  });
  await open(page, "/");
  const fell = page.getByRole("table", { name: "The price fell since you bought" });
  // (600.00 / 10 - 50.00) x 1.14 x 10 = 114.00
  await expect(fell.getByRole("row", { name: PLY })).toContainText("68.40");
  await expect(fell.getByRole("row", { name: PLY })).toContainText("57.00");
  await expect(fell.getByRole("row", { name: PLY })).toContainText("114.00");
  await axe(page);
  await fell.getByRole("link", { name: PLY }).click();
  await expect(main(page)).toContainText("Kestrel Hill Supply now asks 57.00 per sheet");
  await expect(main(page)).toContainText("For 10 sheets that is 114.00 CAD");
  await expect(main(page)).toContainText("Ask for the difference by");
});

test("after the last return day the reason is asked, and what was typed stays", async ({ page }) => {
  await toLot(page, PLY);
  await unfold(page, "Return to the store");
  const back = form(page, "Return it");
  await back.getByLabel("How many go back").fill("1");
  await back.getByLabel("Refund for all of them, tax in it").fill("61.11");
  await back.getByRole("button", { name: "Return it" }).click();
  await expect(back.getByRole("alert")).toContainText(
    `Reason: the store takes it back only until ${daysAgo(2)}`,
  );
  await expect(back.getByLabel("Refund for all of them, tax in it")).toHaveValue("61.11");
  await expect(back.getByLabel("How many go back")).toHaveValue("1");
  await back.getByLabel("Reason").fill("agreed with the yard");
  await back.getByRole("button", { name: "Return it" }).click();
  await expect(said(page)).toContainText("Returned: 1 sheet.");
  await expect(main(page)).toContainText("10 acquired = 9 free + 1 returned");
  await said(page).getByRole("button", { name: "Undo" }).click();
  await expect(main(page)).toContainText("10 acquired = 10 free");
});

test("the screens fit the narrowest phone", async ({ page }) => {
  await page.setViewportSize(NARROW);
  await toLot(page, DOOR);
  await page.getByText("More with this lot").click();
  await fitsAcross(page);
  await open(page, "/");
  await fitsAcross(page);
});
