import { onConnection } from "../../lib/launch/postgres-connection.mjs";
import { type Line, lineTo } from "./support/line.ts";
import { axe, shot } from "./support/page.ts";
import { logPrice, type Phone, phoneAt, readyAt, waiting } from "./support/phone.ts";
import { storedSheet, storedStore } from "./support/stored.ts";
import { expect, test } from "./support/test.ts";

// What the books refuse stays on the phone with its reason; what they lost is offered again; a clock that is wrong is asked.
test.describe.configure({ timeout: 120_000 });

let line: Line;
let phone: Phone | null = null;
let storeMade = false;

test.beforeEach(async ({ program, request }) => {
  line = await lineTo(program.address);
  if (!storeMade) await storedStore(request, "Mill Road Yard");
  storeMade = true;
});

test.afterEach(async () => {
  await phone?.stop();
  phone = null;
  await line.stop();
});

async function ready(setUp?: Parameters<typeof phoneAt>[0]): Promise<Phone> {
  phone = await phoneAt(setUp);
  await readyAt(phone.page(), line.address);
  return phone;
}

test("a material archived meanwhile: the price stays, with the reason, and is put right", async ({
  request,
}) => {
  const gone = await storedSheet(request, "Board of rowan");
  const other = await storedSheet(request, "Board of willow");
  const page = (await ready()).page();
  await line.turn("down");
  await logPrice(page, "rowan", "41.10");
  expect((await request.delete(`/api/v1/materials/${gone}`)).ok()).toBe(true);
  await line.turn("up");
  await page.evaluate(() => dispatchEvent(new Event("online")));
  const refused = page.getByRole("region", { name: "One entry was refused, and is still here" });
  await expect(refused).toContainText(
    "Board of rowan, Mill Road Yard: 41.1Material: is archived; restore it first",
  );
  await axe(page);
  await shot(page, "log-refused");
  await refused.getByLabel("Material").selectOption({ label: "Board of willow" });
  await refused.getByRole("button", { name: "Send again" }).click();
  await expect(refused).toHaveCount(0);
  await waiting(page, 0);
  const answer = await request.get(`/api/v1/observations?materialId=${other}`);
  expect(await answer.text()).toContain('"amount":"41.1');
});

test("books put back to an earlier state are offered what they had acknowledged, and hold it once", async ({
  request,
  program,
}) => {
  const materialId = await storedSheet(request, "Board of elm");
  const page = (await ready()).page();
  for (const amount of ["42.10", "42.20"]) await logPrice(page, "elm", amount);
  await waiting(page, 0);
  const count = async () => {
    const answer = await request.get(`/api/v1/observations?materialId=${materialId}`);
    return ((await answer.json()) as { items: unknown[] }).items.length;
  };
  await expect.poll(count).toBe(2);
  await onConnection(program.databaseUrl, async (client) => {
    await client.query("set session_replication_role = replica"); // as a restore does: no trigger runs
    await client.query("delete from observation where material_id = $1", [materialId]);
  });
  expect(await count()).toBe(0);
  await page.reload();
  await expect.poll(count, { timeout: 30_000 }).toBe(2);
  await waiting(page, 0);
});

test("a phone whose clock says 2019 is asked for the day, and nothing is kept without it", async ({
  request,
}) => {
  const materialId = await storedSheet(request, "Board of poplar");
  const there = await ready();
  await line.turn("down");
  await there.context().clock.setFixedTime(new Date("2019-05-06T12:00:00Z"));
  await there.page().reload();
  const page = there.page();
  await page.getByRole("combobox", { name: "Material" }).fill("poplar");
  await page.getByRole("listbox", { name: "Material" }).getByRole("option").first().click();
  await page.getByLabel("Price on the tag").fill("43.10");
  await page.getByRole("button", { name: "Keep this price" }).click();
  await expect(page.getByRole("main").getByRole("alert")).toContainText("Seen on: fill this in");
  await expect(page.getByText("This phone’s clock cannot be right. Which day is it?")).toBeVisible();
  await waiting(page, 0);
  const today = new Intl.DateTimeFormat("en-CA", {
    dateStyle: "short",
    timeZone: "America/Halifax",
  }).format();
  await page.getByLabel("Seen on").fill(today);
  await page.getByRole("button", { name: "Keep this price" }).click();
  await waiting(page, 1);
  await line.turn("up");
  await page.evaluate(() => dispatchEvent(new Event("online")));
  await waiting(page, 0);
  const answer = await request.get(`/api/v1/observations?materialId=${materialId}`);
  expect(await answer.text()).toContain(`"seenOn":"${today}"`);
});

test("bought offline: price, lot and what it is set aside for arrive together, once", async ({ request }) => {
  const materialId = await storedSheet(request, "Board of beech");
  const page = (await ready()).page();
  await line.turn("down");
  await logPrice(page, "beech", "44.10");
  const bought = page.getByRole("region", { name: "Bought some of it?" });
  await bought.getByLabel("How many").fill("3");
  await bought.getByRole("button", { name: "Bought 3 of it" }).click();
  await expect(page.getByText("Recorded: 3 sheets of Board of beech.")).toBeVisible();
  await waiting(page, 2);
  await line.turn("up");
  await page.evaluate(() => dispatchEvent(new Event("online")));
  await waiting(page, 0);
  const answer = await request.get(`/api/v1/lots?materialId=${materialId}`);
  const { items } = (await answer.json()) as { items: { quantity: string; materialId: string }[] };
  expect(
    items.filter((lot) => lot.materialId === materialId).map(({ quantity }) => Number(quantity)),
  ).toEqual([3]);
});
