import { expect, test } from "vitest";
import { drawn, lined, measured, reckoned, viewOf } from "../../support/takeoff-example.ts";

const deck = {
  length: "16 ft",
  span: "12 ft",
  joistSpacing: "16 in",
  rimRows: "2",
  boardWidth: "5 1/2",
  boardGap: "1/8",
};

test("deck boards run across the joists, row by row with their gap", () => {
  const takeoff = reckoned("deck", deck);
  // (144 + 1/8) / (5-1/2 + 1/8) = 25.6
  expect(measured(takeoff, "rows")).toBe("26 piece");
  expect(measured(takeoff, "deckArea")).toBe("192 square-foot");
  expect(lined(takeoff, "deckBoards")).toEqual(["416 linear-foot"]);
  expect(lined(takeoff, "joists")).toEqual(["13 piece at 12 linear-foot"]);
});

test("without rims there is no line for them", () => {
  expect(lined(reckoned("deck", { ...deck, rimRows: "0" }), "rims")).toEqual([]);
});

test("in millimetres the rows are the same", () => {
  const metric = { length: "4,9 m", span: "3,6 m", joistSpacing: "400", boardWidth: "140", boardGap: "3" };
  expect(measured(reckoned("deck", metric, "metric"), "rows")).toBe("26 piece");
});

test("the drawing shows joists and rows", () => {
  const plan = viewOf(reckoned("deck", deck), "plan");
  expect([drawn(plan, "joist"), drawn(plan, "row")]).toEqual([13, 27]);
});

test("boards may be laid without a gap", () => {
  expect(measured(reckoned("deck", { ...deck, boardGap: "0" }), "rows")).toBe("27 piece");
});
