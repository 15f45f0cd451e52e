import type { APIRequestContext } from "@playwright/test";
import * as z from "zod";
import { type Line, lineTo } from "./support/line.ts";
import { logPrice, type Phone, phoneAt, readyAt, waiting } from "./support/phone.ts";
import { storedSheet, storedStore } from "./support/stored.ts";
import { expect, test } from "./support/test.ts";

// Each way a phone and its house lose one another: what was entered arrives once, and the phone's own count says so.
test.describe.configure({ timeout: 120_000 });

/** A material for each test, named by a word no other has. */
const WOODS = [
  "oak",
  "alder",
  "birch",
  "cedar",
  "fir",
  "hemlock",
  "larch",
  "maple",
  "pine",
  "spruce",
  "tamarack",
  "walnut",
];
let line: Line;
let phone: Phone | null = null;
let materialId = "";
let made = 0;

test.beforeEach(async ({ program, request }) => {
  line = await lineTo(program.address);
  made += 1;
  if (made === 1) await storedStore(request, "Mill Road Yard");
  materialId = await storedSheet(request, `Board of ${WOODS[made]}`);
});

test.afterEach(async () => {
  await phone?.stop();
  phone = null;
  await line.stop();
});

const ours = () => WOODS[made] ?? "";
const pageShape = z.object({ items: z.array(z.object({ id: z.string(), amount: z.string().nullable() })) });

/** Amounts the books hold of this test's material, and that no id is there twice. */
async function books(request: APIRequestContext): Promise<string[]> {
  const answer = await request.get(`/api/v1/observations?materialId=${materialId}`);
  const { items } = pageShape.parse(await answer.json());
  expect(new Set(items.map(({ id }) => id)).size).toBe(items.length);
  return items.map(({ amount }) => Number(amount).toFixed(2)).sort();
}

async function arrive(request: APIRequestContext, amounts: readonly string[]): Promise<void> {
  await expect.poll(() => books(request), { timeout: 40_000 }).toEqual([...amounts].sort());
}

async function ready(setUp?: Parameters<typeof phoneAt>[0]): Promise<Phone> {
  phone = await phoneAt(setUp);
  await readyAt(phone.page(), line.address);
  return phone;
}

test("the server is stopped: the form opens, five prices wait, and arrive once it is back", async ({
  request,
}) => {
  const page = (await ready()).page();
  await line.turn("down");
  await page.reload();
  await expect(page.getByText("No connection: it works all the same.")).toBeVisible();
  for (const amount of ["31.10", "31.20", "31.30", "31.40", "31.50"]) await logPrice(page, ours(), amount);
  await waiting(page, 5);
  await expect(page.getByText(/^5 entries are kept on this phone/)).toHaveCount(0); // the diamond stands before it
  await expect(
    page.getByText(/5 entries are kept on this phone, waiting to be sent; the oldest for/),
  ).toBeVisible();
  expect(await books(request)).toEqual([]);
  await line.turn("up");
  await page.evaluate(() => dispatchEvent(new Event("online")));
  await waiting(page, 0);
  await arrive(request, ["31.10", "31.20", "31.30", "31.40", "31.50"]);
});

test("the reply is lost after the write: it is sent again, and is there once", async ({ request }) => {
  const page = (await ready()).page();
  await line.turn("lost");
  for (const amount of ["32.10", "32.20", "32.30"]) await logPrice(page, ours(), amount);
  await arrive(request, ["32.10", "32.20", "32.30"]);
  await waiting(page, 3);
  await line.turn("up");
  await page.evaluate(() => dispatchEvent(new Event("online")));
  await waiting(page, 0);
  await arrive(request, ["32.10", "32.20", "32.30"]);
});

test("in flight mode the form opens and keeps", async ({ request }) => {
  const { page, context } = await ready();
  await context().setOffline(true);
  await page().reload();
  await logPrice(page(), ours(), "33.10");
  await waiting(page(), 1);
  expect(await books(request)).toEqual([]);
  await context().setOffline(false);
  await waiting(page(), 0);
  await arrive(request, ["33.10"]);
});

test("two tabs send together, and every price is there once", async ({ request }) => {
  const { page, context } = await ready();
  await line.turn("down");
  for (const amount of ["34.10", "34.20", "34.30"]) await logPrice(page(), ours(), amount);
  const other = await context().newPage();
  await other.goto(`${line.address}/log`);
  await waiting(other, 3);
  await line.turn("up");
  const wake = () => dispatchEvent(new Event("online"));
  await Promise.all([page().evaluate(wake), other.evaluate(wake)]);
  await Promise.all([waiting(page(), 0), waiting(other, 0)]);
  await arrive(request, ["34.10", "34.20", "34.30"]);
});

test("where a browser cannot send by itself, opening the page sends", async ({ request }) => {
  const { page } = await ready((context) =>
    context.addInitScript(() => Reflect.deleteProperty(ServiceWorkerRegistration.prototype, "sync")),
  );
  expect(await page().evaluate(() => "sync" in ServiceWorkerRegistration.prototype)).toBe(false);
  await line.turn("down");
  await logPrice(page(), ours(), "35.10");
  await waiting(page(), 1);
  await line.turn("up");
  await page().reload();
  await waiting(page(), 0);
  await arrive(request, ["35.10"]);
});

test("a connection that is taken and never answered: the form opens from the phone, and what waits arrives later", async ({
  request,
}) => {
  const page = (await ready()).page();
  await line.turn("silent");
  await page.reload({ waitUntil: "commit" });
  await logPrice(page, ours(), "36.10");
  await waiting(page, 1);
  expect(await books(request)).toEqual([]);
  await line.turn("up");
  await page.evaluate(() => dispatchEvent(new Event("online")));
  await arrive(request, ["36.10"]);
  await waiting(page, 0);
});

test("the browser is closed while prices wait: they are there when it opens again", async ({ request }) => {
  const there = await ready();
  await line.turn("down");
  for (const amount of ["37.10", "37.20"]) await logPrice(there.page(), ours(), amount);
  await there.reopen();
  await there.page().goto(`${line.address}/log`);
  await waiting(there.page(), 2);
  expect(await books(request)).toEqual([]);
  await line.turn("up");
  await there.reopen();
  await there.page().goto(`${line.address}/log`);
  await waiting(there.page(), 0);
  await arrive(request, ["37.10", "37.20"]);
});

test("a phone with an older build keeps what waits when the newer one takes over", async ({ request }) => {
  line.instead("/sw.js", (text) => text.replace(/const BUILD = "[^"]*"/, 'const BUILD = "older"'));
  const { page } = await ready();
  expect(await page().evaluate(() => caches.keys())).toEqual(["shell-older"]);
  await line.turn("down");
  await logPrice(page(), ours(), "38.10");
  line.instead("/sw.js", null);
  await line.turn("up");
  await page().evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await expect(page().getByText("A newer version is here.")).toBeVisible();
  await page().evaluate(() => dispatchEvent(new Event("online")));
  await waiting(page(), 0);
  await arrive(request, ["38.10"]);
  await page().reload();
  await logPrice(page(), ours(), "38.20");
  await arrive(request, ["38.10", "38.20"]);
});
