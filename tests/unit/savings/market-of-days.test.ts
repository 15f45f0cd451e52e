import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { day, observation, SHEET } from "../../support/price-example.ts";
import { amounts, draw, rows, seenBefore, seenLater } from "../../support/saving-example.ts";
import { lotOf, needOf, revisionOf } from "../../support/stock-example.ts";

describe("the strict figure", () => {
  const special = observation("19.00", {
    terms: "special",
    until: day("2026-02-28"),
    seenOn: day("2026-02-20"),
  });
  const observations = [seenBefore, seenLater, special];

  test("is against the best offer in force on the day of the draw, specials included", () => {
    expect(amounts(rows([draw], lotOf(10, 200), { observations })[0], "saving", "strictSaving")).toEqual([
      "24.00",
      "-4.00",
    ]);
  });

  test("takes the best way to buy what the requirement asks for, not what was drawn", () => {
    const five = observation("15.00", {
      terms: "clearance",
      maxQuantity: decimal(5),
      until: day("2026-02-28"),
      seenOn: day("2026-02-20"),
    });
    // ten: 5 x 15 + 5 x 19 = 170, so four of them 68
    expect(
      amounts(rows([draw], lotOf(10, 200), { observations: [...observations, five] })[0], "strictSaving"),
    ).toEqual(["-12.00"]);
  });

  test("does not count a special that had lapsed by then", () => {
    const lapsed = { ...special, until: day("2026-02-24") };
    expect(
      amounts(
        rows([draw], lotOf(10, 200), { observations: [seenBefore, seenLater, lapsed] })[0],
        "strictSaving",
      ),
    ).toEqual(["24.00"]);
  });

  test("is not known where nothing in force covered the requirement", () => {
    const few = { ...seenLater, maxQuantity: decimal(9) };
    const [row] = rows([draw], lotOf(10, 200), { observations: [seenBefore, few] });
    expect(amounts(row, "saving", "strictSaving")).toEqual(["24.00", null]);
  });

  test("counts used ones only where the requirement accepts them", () => {
    const used = observation("10.00", { terms: "used", seenOn: day("2026-02-24") });
    const accepting = [needOf("a", revisionOf(10, { acceptsUsed: true }))];
    const given = { observations: [...observations, used] };
    expect(amounts(rows([draw], lotOf(10, 200), given)[0], "strictSaving")).toEqual(["-4.00"]);
    expect(
      amounts(rows([draw], lotOf(10, 200), { ...given, requirements: accepting })[0], "strictSaving"),
    ).toEqual(["-40.00"]);
  });
});

test("an alternative drawn is measured against buying as many of it as the requirement would take", () => {
  const half = { ...SHEET, id: "half-sheet" };
  const accepted = { alternatives: [{ materialId: "half-sheet", factor: decimal(2) }] };
  const observations = [
    observation("9.00", { materialId: "half-sheet", seenOn: day("2026-02-20") }),
    observation("8.00", {
      materialId: "half-sheet",
      seenOn: day("2026-02-20"),
      terms: "quantity-break",
      minQuantity: decimal(20),
    }),
  ];
  const [row] = rows([draw], lotOf(10, 70, { materialId: "half-sheet" }), {
    requirements: [needOf("a", revisionOf(10), accepted)],
    observations,
    materials: [SHEET, half],
  });
  // ten sheets are twenty halves, which reach the break: four of them cost 32 there and 28 here
  expect(amounts(row, "saving", "strictSaving")).toEqual(["8.00", "4.00"]);
});
