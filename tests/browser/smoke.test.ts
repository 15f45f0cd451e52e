import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { NARROW } from "./support/sizes.ts";
import { expect, test } from "./support/test.ts";

test("the program says that it and its database are well", async ({ request }) => {
  const response = await request.get("/api/v1/health");
  expect(response.status()).toBe(200);
  expect(await response.json()).toMatchObject({ ok: true });
});

test("an empty workspace opens on Today, with the first step, for everyone", async ({ page }) => {
  await open(page, "/");
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  await axe(page);
  await shot(page, "today-empty");
});

test("Today fits the narrowest phone", async ({ page }) => {
  await page.setViewportSize(NARROW);
  await open(page, "/");
  await fitsAcross(page);
});
