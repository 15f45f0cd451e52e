import { form, main, said, toLot, unfold } from "./support/lot-page.ts";
import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { NARROW } from "./support/sizes.ts";
import { daysAgo, stored, storedSheet, storedStore } from "./support/stored.ts";
import { expect, test } from "./support/test.ts";

test.describe.configure({ mode: "serial" });

const PLY = "Spruce plywood 5/8 in, 4x8";

test("a place says what it holds; a second one of the same name is refused", async ({ page }) => {
  await open(page, "/stock/places");
  await axe(page);
  await page.getByRole("link", { name: "Add a place" }).click();
  await axe(page);
  await page.getByLabel("Name").fill("Shed, north wall");
  await page.getByLabel("Weight", { exact: true }).fill("heavy");
  await page.getByRole("button", { name: "Add a place" }).click();
  await expect(main(page).getByRole("alert")).toContainText("Weight: this is not a size");
  await expect(page.getByLabel("Weight", { exact: true })).toHaveValue("heavy");
  await page.getByLabel("Weight", { exact: true }).fill("2,000");
  await page.getByLabel("Floor", { exact: true }).fill("40");
  await page.getByLabel("Under a roof").selectOption("no");
  await page.getByRole("button", { name: "Add a place" }).click();
  await expect(page.getByText("Place added.")).toBeVisible();
  await expect(main(page)).toContainText("Weight: 0 of 2,000 pounds used, 2,000 free");
  await open(page, "/stock/places/new");
  await page.getByLabel("Name").fill("shed, NORTH wall");
  await page.getByRole("button", { name: "Add a place" }).click();
  await expect(main(page).getByRole("alert")).toContainText("Name: this name is taken");
});

test("set aside for one project, some goes to another at its own cost; taken back, all of it is", async ({
  page,
  request,
}) => {
  const materialId = await storedSheet(request, PLY);
  const storeId = await storedStore(request, "Kestrel Hill Supply");
  for (const [name, days] of [
    ["Heron Lane workshop", 30],
    ["Birch Road kitchen", 40],
  ] as const) {
    const projectId = await stored(request, "projects", { name, status: "live" });
    await stored(request, `projects/${projectId}/requirements`, {
      materialId,
      quantity: "6",
      unit: "sheet",
      neededBy: daysAgo(-days),
      validFrom: daysAgo(30),
    });
  }
  await stored(request, "lots", {
    materialId,
    storeId,
    origin: "bought",
    quantity: "10",
    paid: { amount: "600.00", currency: "CAD", taxIncluded: false, fees: [] },
    orderedOn: daysAgo(5),
    storedAt: "Shed, north wall",
  });
  await toLot(page, PLY);
  const aside = form(page, "Set aside");
  await aside.getByLabel("How many").fill("6");
  // Needed first, it stands first.
  await expect(aside.getByLabel("For", { exact: true }).locator("option:checked")).toContainText(
    "Heron Lane workshop",
  );
  await aside.getByRole("button", { name: "Set aside" }).click();
  await expect(said(page)).toContainText("Set aside: 6 sheets.");
  await unfold(page, "Move to another project");
  const go = form(page, "Move to that project");
  await go.getByLabel("How many go there").fill("7");
  await go.getByRole("button", { name: "Move to that project" }).click();
  await expect(go.getByRole("alert")).toContainText("How many go there: more than what is set aside");
  await go.getByLabel("How many go there").fill("2");
  await go.getByRole("button", { name: "Move to that project" }).click();
  await expect(said(page)).toContainText("Moved to the other project, at its own cost.");
  const held = page.getByRole("table", { name: "Where it is" });
  // 684.00 / 10 = 68.40 each
  await expect(held.getByRole("row", { name: /Birch Road kitchen/ })).toContainText("136.80");
  await said(page).getByRole("button", { name: "Undo" }).click();
  await expect(held.getByRole("row", { name: /Heron Lane workshop/ })).toContainText("6 sheets");
  await said(page).getByRole("button", { name: "Redo" }).click();
  await expect(held.getByRole("row", { name: /Heron Lane workshop/ })).toContainText("4 sheets");
});

test("of 3 used, one came back; left-overs go back to stock in one step and undo in one", async ({
  page,
}) => {
  await toLot(page, PLY);
  const use = form(page, "Use");
  await use.getByLabel("How many").fill("3");
  await use.getByRole("button", { name: "Use" }).click();
  await expect(main(page)).toContainText("10 acquired = 3 set aside + 4 free + 3 used");
  await unfold(page, "Came back unused");
  const unused = form(page, "Take back");
  await unused.getByLabel("How many came back").fill("4");
  await unused.getByRole("button", { name: "Take back" }).click();
  await expect(unused.getByRole("alert")).toContainText("How many came back: more than was used");
  await unused.getByLabel("How many came back").fill("1");
  await unused.getByRole("button", { name: "Take back" }).click();
  await expect(main(page)).toContainText("10 acquired = 4 set aside + 4 free + 2 used");
  await said(page).getByRole("button", { name: "Undo" }).click();
  await expect(main(page)).toContainText("10 acquired = 3 set aside + 4 free + 3 used");

  await open(page, "/projects");
  await page.getByRole("link", { name: "Heron Lane workshop" }).first().click();
  await page.getByRole("link", { name: "Left-overs" }).click();
  await axe(page);
  await shot(page, "left-overs-phone");
  await expect(page.getByRole("table", { name: "Becomes free" })).toContainText("1 sheet");
  const came = main(page).getByRole("textbox", { name: new RegExp(PLY) });
  await came.fill("9");
  await page.getByRole("button", { name: "Take them back" }).click();
  await expect(main(page).getByRole("alert")).toContainText(`${PLY}: more than was used`);
  await expect(came).toHaveValue("9");
  await came.fill("1");
  await page.getByRole("button", { name: "Take them back" }).click();
  await expect(said(page)).toContainText("Left-overs are back in stock, at cost.");
  await toLot(page, PLY);
  // Used 2; of the project nothing is set aside any more, of the other project 2.
  await expect(main(page)).toContainText("10 acquired = 2 set aside + 6 free + 2 used");
  // Undone from the lot's page, where it is one of the things that happened: all of it goes.
  const life = page.getByRole("table", { name: "What happened to it" });
  await life
    .getByRole("row", { name: /^set free/ })
    .first()
    .getByRole("button", { name: "Undo" })
    .click();
  await expect(main(page)).toContainText("10 acquired = 3 set aside + 4 free + 3 used");
});

test("moved in part at a cost; each place says what lies there, and its rent is shared before it is booked", async ({
  page,
  request,
}) => {
  await stored(request, "places", { name: "Garage", count: "5" });
  await toLot(page, PLY);
  const move = form(page, "Move");
  await expect(move.getByLabel("How many to move")).toHaveValue("7");
  await move.getByLabel("How many to move").fill("8");
  await move.getByRole("button", { name: "Move" }).click();
  await expect(move.getByRole("alert")).toContainText("How many to move: more than lies there");
  await move.getByLabel("How many to move").fill("4");
  await move.getByLabel("To", { exact: true }).selectOption({ label: "Garage" });
  await move.getByText("Another day, or a reason").click();
  await move.getByLabel("What moving it cost").fill("12.50");
  await move.getByRole("button", { name: "Move" }).click();
  await expect(said(page)).toContainText("Moved: 4 sheets.");
  await expect(main(page)).toContainText("Shed, north wall: 3; Garage: 4");
  await open(page, "/stock");
  await page.getByText("Narrow the list").click();
  await page.getByLabel("Where").selectOption({ label: "Garage" });
  await page.getByRole("button", { name: "Show", exact: true }).click();
  await expect(page.getByRole("table", { name: "Lots on hand" }).locator("tbody tr")).toHaveCount(1);
  await expect(main(page)).toContainText("weight not known");

  await open(page, "/stock/places");
  await page.getByRole("link", { name: "Garage" }).click();
  await expect(main(page)).toContainText("Pieces: 4 of 5 pieces used, 1 free");
  await expect(main(page)).toContainText(`The weight of ${PLY} is not known`);
  await page.getByLabel("Material").selectOption({ label: PLY });
  await page.getByRole("button", { name: "How many fit" }).click();
  await expect(main(page)).toContainText(`Room for 1 more sheet of ${PLY}. What stops it: Pieces.`);
  await page.getByRole("link", { name: "Rent or other cost of it" }).click();
  await axe(page);
  await page.getByLabel("Cost", { exact: true }).fill("30");
  await page.getByLabel("From").fill(daysAgo(0));
  await page.getByLabel("Until").fill(daysAgo(-3));
  await page.getByRole("button", { name: "Show the shares" }).click();
  await expect(main(page).getByRole("alert")).toContainText("Until: this day is still to come");
  await expect(page.getByLabel("Cost", { exact: true })).toHaveValue("30");
  await page.getByLabel("Until").fill(daysAgo(0));
  await page.getByRole("button", { name: "Show the shares" }).click();
  await expect(main(page)).toContainText(`The size of ${PLY} is not known by this measure`);
  await page.getByLabel("Shared by").selectOption("count");
  await page.getByRole("button", { name: "Show the shares" }).click();
  await expect(page.getByRole("table", { name: "Shares" })).toContainText("CAD 30.00");
  await shot(page, "place-money-phone");
  await page.getByRole("button", { name: "Book the shares" }).click();
  await expect(said(page)).toContainText("Shared: one lot bears it.");
  await toLot(page, PLY);
  await expect(page.getByRole("table", { name: "What happened to it" })).toContainText("cost of storing");
  await open(page, "/stock/places");
  await page.getByRole("link", { name: "Garage" }).click();
  await page.getByRole("link", { name: "Change or archive it" }).click();
  await axe(page);
  await page.getByRole("button", { name: "Archive" }).click();
  await expect(said(page)).toContainText("Archived.");
  await said(page).getByRole("button", { name: "Undo" }).click();
  await expect(said(page)).toContainText("Back in use.");
});

test("the screens fit the narrowest phone", async ({ page }) => {
  await page.setViewportSize(NARROW);
  await toLot(page, PLY);
  await page.getByText("More with this lot").click();
  await fitsAcross(page);
  await open(page, "/stock/places/new");
  await fitsAcross(page);
});
