import { expect, test } from "vitest";
import { savingsDrawing, WIDE_BOX } from "../../../lib/show/savings-drawing.ts";
import { day } from "../../support/price-example.ts";
import { cad } from "../../support/stock-example.ts";

const point = (on: string, saved: number, lost: number) => ({
  on: day(on),
  saved: cad(saved),
  lost: cad(lost),
  net: cad(saved + lost),
});
const mark = (on: string, unrealised: number, notKnown = 0) => ({
  on: day(on),
  unrealised: cad(unrealised),
  notKnown,
});
const until = day("2026-03-02");
const drawing = savingsDrawing(
  [point("2026-01-01", 100, 0), point("2026-01-31", 100, -50)],
  [mark("2026-01-31", 30), mark("2026-03-02", 20)],
  until,
  WIDE_BOX,
  "en-CA",
);

test("gains stand on the line of nothing, losses hang from it, and the sum steps between", () => {
  const zero = Number(drawing?.zero);
  const heights = (path: string | undefined) =>
    [...(path ?? "").matchAll(/V([\d.]+)/g)].map(([, y]) => Number(y));
  expect(heights(drawing?.saved).every((y) => y <= zero)).toBe(true);
  expect(heights(drawing?.lost).every((y) => y >= zero)).toBe(true);
  for (const path of [drawing?.saved, drawing?.lost]) expect(path?.endsWith(`V${drawing?.zero}Z`)).toBe(true);
  expect(Number(drawing?.end.y)).toBeLessThan(zero);
  expect(drawing?.end.y).toBe(heights(drawing?.net).at(-1)?.toFixed(1));
});

test("half of the days stand half of the way across", () => {
  // 30 of 60 days
  expect(drawing?.marks[0]?.x).toBe(((WIDE_BOX.left + WIDE_BOX.width - WIDE_BOX.right) / 2).toFixed(1));
});

test("what is held stands on what is realised that day", () => {
  const at = (value: number) => drawing?.grid.find(({ label }) => label === String(value))?.y;
  // 100 - 50 + 30 and 100 - 50 + 20 are both between 50 and 100
  for (const { y } of drawing?.marks ?? []) {
    expect(Number(y)).toBeLessThan(Number(at(50)));
    expect(Number(y)).toBeGreaterThan(Number(at(100)));
  }
});

test("a mark that knows nothing is not drawn, and with nothing known there is no picture", () => {
  expect(savingsDrawing([], [mark("2026-03-02", 0, 2)], until, WIDE_BOX, "en-CA")).toBe(null);
  expect(savingsDrawing([], [], until, WIDE_BOX, "en-CA")).toBe(null);
});
