import { EXTREME, TYPED } from "../support/takeoff-inputs.ts";
import { axe, fitsAcross, open, shot } from "./support/page.ts";
import { LAPTOP, NARROW } from "./support/sizes.ts";
import { stored } from "./support/stored.ts";
import { expect, test } from "./support/test.ts";

test.use({ viewport: NARROW, hasTouch: true });

function picture(calculator: string): string {
  return new URL(`./shots/takeoff-320-${calculator}.png`, import.meta.url).pathname;
}

/** An entry as the address of its form says it: "walls.0.length". */
function asked(inputs: unknown, at = ""): [string, string][] {
  if (typeof inputs !== "object" || inputs === null) return [[at, String(inputs)]];
  return Object.entries(inputs).flatMap(([name, value]) => asked(value, at === "" ? name : `${at}.${name}`));
}

test("on the narrowest phone no drawing's labels cover one another or are cut off, however long or small", async ({
  page,
  request,
}) => {
  test.slow();
  const id = await stored(request, "projects", { name: "Quarry Street basement suite", status: "live" });
  for (const [calculator, entries] of Object.entries(EXTREME))
    for (const [at, inputs] of entries.entries()) {
      const query = new URLSearchParams([["sent", "yes"], ["system", "imperial"], ...asked(inputs)]);
      await open(page, `/projects/${id}/takeoff/${calculator}?${query}`);
      const figures = page.getByRole("main").getByRole("figure");
      await expect(figures.first(), `${calculator} ${at}`).toBeVisible();
      const wrong = await figures.evaluateAll((all) =>
        all.flatMap((figure) => {
          const picture = figure.querySelector("svg")?.getBoundingClientRect();
          const texts = [...figure.querySelectorAll("text")].map((one) => one.getBoundingClientRect());
          const over = texts.filter((one, place) =>
            texts
              .slice(place + 1)
              .some(
                (other) =>
                  Math.min(one.right, other.right) - Math.max(one.left, other.left) > 1 &&
                  Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > 4,
              ),
          );
          const cut = texts.filter(
            (one) => !picture || one.left < picture.left - 1 || one.right > picture.right + 1,
          );
          return over.length + cut.length > 0 ? [`${over.length} over, ${cut.length} cut`] : [];
        }),
      );
      expect(wrong, `${calculator} ${at}`).toEqual([]);
      await fitsAcross(page);
      const names = await page
        .getByRole("main")
        .getByRole("region", { name: "What it comes to" })
        .getByRole("rowheader")
        .evaluateAll((all) =>
          all.filter((one) => one.scrollWidth > one.clientWidth).map((one) => one.textContent),
        );
      expect(names, `${calculator} ${at}`).toEqual([]);
      if (at === 0)
        await figures
          .first()
          .locator("..")
          .screenshot({ path: picture(calculator) });
    }
  await page.setViewportSize(LAPTOP);
  await page.emulateMedia({ colorScheme: "dark" });
  const roof = [...asked(TYPED["gable-roof"]), ["sent", "yes"]];
  await open(page, `/projects/${id}/takeoff/gable-roof?${new URLSearchParams(roof)}`);
  await expect(page.getByRole("button", { name: "Turn into requirements" })).toBeVisible();
  await axe(page);
  await shot(page, "takeoff-laptop-dark");
});
