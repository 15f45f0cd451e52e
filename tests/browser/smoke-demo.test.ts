import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { LAPTOP } from "./support/sizes.ts";
import { expect, test } from "./support/test.ts";

test.use({ demo: true });

test("Today shows the demo's projects and has no barrier", async ({ page }) => {
  await open(page, "/");
  await expect(page.getByText("Heron Lane workshop").first()).toBeVisible();
  await fitsAcross(page);
  await axe(page);
  await shot(page, "today-demo-phone");
  await page.setViewportSize(LAPTOP);
  await shot(page, "today-demo-laptop");
});
