import ICAL from "ical.js";
import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { LAPTOP, NARROW, PHONE } from "./support/sizes.ts";
import { daysAgo, stored, storedPrice, storedSheet, storedStore } from "./support/stored.ts";
import { expect, test } from "./support/test.ts";

// One story in order: what an earlier test stored, a later one uses.
test.describe.configure({ mode: "serial" });

let material = "";
let address = "";

test("a price at or below what was set on the material stands on Today", async ({ page, request }) => {
  const store = await storedStore(request, "Mill Road Yard");
  material = await storedSheet(request, "Spruce plywood 1/2 in");
  await storedPrice(request, { materialId: material, storeId: store, seenOn: daysAgo(1), amount: "33.00" });
  const project = await stored(request, "projects", { name: "Heron Lane workshop", status: "live" });
  await stored(request, `projects/${project}/requirements`, {
    materialId: material,
    quantity: "12",
    unit: "sheet",
    neededBy: daysAgo(-5),
  });
  await open(page, `/materials/${material}`);
  await page.getByLabel("At or below, a sheet").fill("thirty");
  await page.getByRole("button", { name: "Keep", exact: true }).click();
  await expect(page.getByRole("main").getByRole("alert")).toContainText("Tell me");
  await page.getByLabel("At or below, a sheet").fill("37,62");
  await axe(page);
  await fitsAcross(page);
  await page.getByRole("button", { name: "Keep", exact: true }).click();
  await expect(page.getByText("Kept. You are told at or below 37.62.")).toBeVisible();
  await shot(page, "reminders-material-phone");
  await open(page, "/");
  const list = page.locator("#reminders li");
  // By hand: 33.00 and 14 % HST is 37.62. Needed in 5 days, less 2 to be safe.
  await expect(list).toHaveCount(2);
  await expect(list.first()).toContainText("37.62 a sheet at Mill Road Yard, at or below your 37.62");
  await expect(list.last()).toContainText("buy 12 sheets for Heron Lane workshop by");
  await expect(list.last()).toContainText("in 3 days");
});

test("Today with reminders has no barrier on a phone, the narrowest one and a laptop, by day and by night", async ({
  page,
}) => {
  for (const [name, size] of [
    ["narrow", NARROW],
    ["phone", PHONE],
    ["laptop", LAPTOP],
  ] as const) {
    await page.setViewportSize(size);
    await open(page, "/");
    await fitsAcross(page);
    await axe(page);
    await shot(page, `reminders-today-${name}`);
  }
  await page.emulateMedia({ colorScheme: "dark" });
  await axe(page);
  await shot(page, "reminders-today-dark");
});

test("a reminder is done, brought back, and put off", async ({ page }) => {
  await open(page, "/");
  const list = page.locator("#reminders li");
  await list.first().getByRole("button", { name: /^Done/ }).click();
  await expect(page.getByText("Done. It does not come back.")).toBeVisible();
  await expect(list).toHaveCount(1);
  await open(page, "/");
  await expect(list).toHaveCount(1);
  await page.goBack();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(list).toHaveCount(2);
  await list.last().getByLabel("Put off until").selectOption(daysAgo(-7));
  await list
    .last()
    .getByRole("button", { name: /^Put off/ })
    .click();
  await expect(page.getByText("Put off.", { exact: true })).toBeVisible();
  await expect(list).toHaveCount(1);
});

test("the calendar's address is shown once, and a calendar that knows no sign-in reads it", async ({
  page,
  request,
}) => {
  await open(page, "/settings/reminders");
  await page.getByRole("button", { name: "Make an address" }).click();
  const shown = page.getByText("This address is shown only now.");
  await expect(shown).toBeVisible();
  await expect(page.getByText(/^An address was made/)).toBeVisible();
  await axe(page);
  await fitsAcross(page);
  await shot(page, "reminders-settings-phone");
  address = /https?:\S+\.ics/.exec((await shown.textContent()) ?? "")?.[0] ?? "";
  expect(address).toMatch(/\/calendar\/[\w-]{43}\.ics$/);
  const response = await request.get(address);
  expect([response.status(), response.headers()["content-type"]]).toEqual([
    200,
    "text/calendar; charset=utf-8",
  ]);
  const events = new ICAL.Component(ICAL.parse(await response.text()))
    .getAllSubcomponents("vevent")
    .map((event) => new ICAL.Event(event));
  expect(events.map(({ uid }) => uid.split(".")[0]).sort()).toEqual(["buy-by", "price-at-or-below"]);
  const off = events.find(({ uid }) => uid.startsWith("buy-by"));
  expect([off?.startDate.isDate, off?.startDate.toString()]).toEqual([true, daysAgo(-7)]);
  expect(off?.summary).toContain("Heron Lane workshop");
  expect(await (await request.get(address)).text()).toBe(await response.text());
  await open(page, "/settings/reminders");
  await expect(page.getByText("This address is shown only now.")).toHaveCount(0);
});

test("a voided address shows nothing, and so does one nobody made", async ({ page, request }) => {
  await open(page, "/settings/reminders");
  await page.getByRole("button", { name: "Void the address" }).click();
  await expect(page.getByText("The address is void.")).toBeVisible();
  for (const path of [address, `/calendar/${"A".repeat(43)}.ics`, "/calendar/x"])
    expect((await request.get(path)).status()).toBe(404);
  expect((await request.post("/calendar/daily", { data: "" })).status()).toBe(404);
});

test("the days before a lapse are kept, and what is no number of days is refused", async ({ page }) => {
  await open(page, "/settings/reminders");
  const days = page.getByLabel("Offers: so many days before they lapse");
  await expect(days).toHaveValue("3");
  await days.fill("0");
  await page.getByRole("button", { name: "Save" }).click();
  await expect(page.getByRole("main").getByRole("alert")).toContainText("must be more than 0");
  await days.fill("5");
  await page.getByRole("button", { name: "Save" }).click();
  await expect(page.getByText("Saved.")).toBeVisible();
  await expect(days).toHaveValue("5");
  await expect(page.getByText(/^Off\. To have what is new mailed/)).toBeVisible();
  await page.setViewportSize(LAPTOP);
  await axe(page);
  await shot(page, "reminders-settings-laptop");
});

test("the price to be told at is taken away, and the undo brings it back", async ({ page }) => {
  await open(page, `/materials/${material}`);
  await page.getByLabel("At or below, a sheet").fill("");
  await page.getByRole("button", { name: "Keep", exact: true }).click();
  await expect(page.getByText("You are no longer told.")).toBeVisible();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByLabel("At or below, a sheet")).toHaveValue("37.62");
});
