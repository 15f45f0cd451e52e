import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import type { BasketPoint, ProjectBasket } from "../../../lib/exposure/basket.ts";
import { type BasketItem, basketIndex } from "../../../lib/prices/basket-index.ts";
import { percentBetween, pointsBetween } from "../../../lib/prices/index-levels.ts";
import { BASKET_DRAWING, basketDrawing } from "../../../lib/show/basket-drawing.ts";
import { basketText } from "../../../lib/show/basket-text.ts";
import { day } from "../../support/price-example.ts";

const item = (key: string, quantity: number, base: string | null, now: string | null): BasketItem => ({
  key,
  quantity: decimal(quantity),
  basePrice: base === null ? null : decimal(base),
  price: now === null ? null : decimal(now),
});
const JOB = [
  item("sheets", 28, "16.48", "19.97"),
  item("bundles", 27, "36.00", "37.50"),
  item("studs", 40, "3.98", "3.58"),
];
const atBase = (items: readonly BasketItem[]) => items.map((one) => ({ ...one, price: one.basePrice }));

/** A basket on as many days as items are given for, a month apart. */
function basketOf(...days: readonly (readonly BasketItem[])[]): ProjectBasket {
  const points = days.map((items, at): BasketPoint => {
    const index = basketIndex(items);
    const before = basketIndex(days[at - 1] ?? []);
    const sinceBefore =
      index.known && before.known
        ? {
            points: pointsBetween(before.level, index.level),
            percent: percentBetween(before.level, index.level),
          }
        : null;
    return { day: day(`2026-0${at + 1}-02`), index, sinceBefore };
  });
  const last = points.at(-1);
  if (last === undefined) throw new Error("no day");
  return { base: day("2026-01-02"), day: last.day, points, now: last.index };
}
const text = (basket: ProjectBasket) => basketText(basket, "CAD", "en-CA");

describe("a basket index as text", () => {
  const shown = text(basketOf(atBase(JOB), JOB));

  test("says level, points and percent each in its own form", () => {
    expect(shown.now).toMatchObject({
      level: "107.67",
      points: "+7.67",
      percent: "+7.67%",
      way: "more",
      before: "1,592.64",
      now: "1,714.86",
    });
  });

  test("shows contributions that add up to the points shown, and each material's own change in percent", () => {
    expect(shown.now?.rows.map(({ materialId, points, percent }) => [materialId, points, percent])).toEqual([
      ["sheets", "+6.14", "+21.18%"],
      ["bundles", "+2.54", "+4.17%"],
      ["studs", "-1.01", "-10.05%"],
    ]);
  });

  test("lists the days with the newest first", () => {
    expect(shown.days.map((row) => [row.day, row.level, row.points, row.percent])).toEqual([
      ["Feb 2, 2026", "107.67", "+7.67", "+7.67%"],
      ["Jan 2, 2026", "100.00", null, null],
    ]);
  });

  test("says when it costs less, and when the same", () => {
    expect(text(basketOf(atBase(JOB), [item("studs", 40, "3.98", "3.58")])).now?.way).toBe("less");
    expect(text(basketOf(atBase(JOB), atBase(JOB))).now).toMatchObject({
      way: "same",
      points: "0.00",
      percent: "0.00%",
    });
  });

  test("over a part says which, and how much of the cost it is", () => {
    const part = text(basketOf(atBase(JOB), [...JOB.slice(0, 2), item("studs", 40, "3.98", null)]));
    expect(part.coverage).toEqual({
      whole: false,
      known: 2,
      of: 3,
      share: "90%",
      missing: [{ materialId: "studs", missing: "price" }],
    });
  });

  test("that is not known has no figures at all", () => {
    const none = text(basketOf([item("studs", 40, "3.98", null)]));
    expect(none.now).toBeNull();
    expect(none.days[0]).toMatchObject({ level: null, points: null, percent: null });
  });
});

describe("a basket index as a line", () => {
  const draw = (basket: ProjectBasket) => basketDrawing(basket, "en-CA");
  const gap = [...JOB.slice(0, 2), item("studs", 40, "3.98", null)];

  test("goes from the left edge at the base to the right edge on the day, a rise upwards", () => {
    const drawing = draw(basketOf(atBase(JOB), JOB));
    const [, x0 = "", y0 = "", x1 = "", y1 = ""] =
      /^M(\S+) (\S+)L(\S+) (\S+)$/.exec(drawing?.path ?? "") ?? [];
    expect([x0, x1]).toEqual([
      BASKET_DRAWING.left.toFixed(1),
      (BASKET_DRAWING.width - BASKET_DRAWING.right).toFixed(1),
    ]);
    expect(Number(y1)).toBeLessThan(Number(y0));
    expect(Number(y1)).toBeGreaterThanOrEqual(BASKET_DRAWING.top);
    expect(drawing?.grid.find(({ base }) => base)?.y).toBe(y0);
    expect(Number(drawing?.grid[0]?.y)).toBe(BASKET_DRAWING.height - BASKET_DRAWING.bottom);
    expect(drawing?.ends).toEqual(["Jan 2, 2026", "Feb 2, 2026"]);
    expect(drawing?.last).toEqual({ x: x1, y: y1 });
  });

  test("has the base's 100 among its steps", () => {
    expect(
      draw(basketOf(atBase(JOB), JOB))
        ?.grid.filter(({ base }) => base)
        .map(({ label }) => label),
    ).toEqual(["100"]);
  });

  test("breaks where a day lacks a material of the base day", () => {
    expect(
      draw(basketOf(atBase(JOB), JOB, gap, JOB, JOB))
        ?.path.match(/[ML]/g)
        ?.join(""),
    ).toBe("MLML");
  });

  test("is not drawn from one day", () => {
    expect(draw(basketOf(atBase(JOB), gap))).toBeNull();
    expect(draw(basketOf([item("studs", 40, null, null)]))).toBeNull();
  });
});
