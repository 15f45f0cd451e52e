import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { gappedRows, lappedRows } from "../../../lib/takeoff/boards.ts";
import {
  cornersOf,
  drawn,
  lined,
  measured,
  reckoned,
  refused,
  viewOf,
} from "../../support/takeoff-example.ts";

const siding = { length: "20 ft", height: "8 ft", boardWidth: "7 1/4", laid: "lapped", step: "6 in" };

test("n boards have n - 1 gaps between them", () => {
  const rows = (extent: string) => gappedRows(decimal(extent), decimal("5.5"), decimal("0.25")).toString();
  expect([rows("11.25"), rows("11.3"), rows("5.5")]).toEqual(["2", "3", "1"]);
});

test("the first lapped board covers its whole width, every other its exposure", () => {
  const rows = (extent: string) => lappedRows(decimal(extent), decimal("7.25"), decimal("6")).toString();
  expect([rows("7.25"), rows("13.25"), rows("13.3"), rows("3")]).toEqual(["1", "2", "3", "1"]);
});

test("lapped siding 8 ft high at 6 in exposure takes 16 rows", () => {
  const takeoff = reckoned("boards", siding);
  expect(measured(takeoff, "rows")).toBe("16 piece");
  expect(lined(takeoff, "boards")).toEqual(["320 linear-foot"]);
});

test("openings come off by what a row shows", () => {
  const takeoff = reckoned("boards", { ...siding, openings: [{ width: "3 ft", height: "4 ft" }] });
  expect(lined(takeoff, "boards")).toEqual(["296 linear-foot"]);
});

test("a wall that is all opening takes no boards, not fewer than none", () => {
  const takeoff = reckoned("boards", { ...siding, openings: [{ width: "20 ft", height: "8 ft" }] });
  expect(takeoff.result.lines.every(({ quantity }) => !quantity.value.isNegative())).toBe(true);
});

test("boards side by side take their gap with them", () => {
  const takeoff = reckoned("boards", { ...siding, laid: "gapped", boardWidth: "5 1/2", step: "1/4" });
  expect(measured(takeoff, "rows")).toBe("17 piece");
  expect(measured(takeoff, "rowStep", 4)).toBe("0.4792 linear-foot");
});

test("an exposure of nothing or of more than the board is refused; a gap of nothing is not", () => {
  expect(refused("boards", { ...siding, step: "0" })).toEqual(["inputs.step not-positive"]);
  expect(refused("boards", { ...siding, step: "8 in" })).toEqual(["inputs.step cover-too-wide"]);
  expect(refused("boards", { ...siding, laid: "gapped", step: "0" })).toEqual([]);
  expect(refused("boards", { ...siding, laid: "sideways" })).toEqual(["inputs.laid unknown-choice"]);
});

test("openings larger than the wall are refused", () => {
  const openings = [{ width: "21 ft", height: "1 ft" }];
  expect(refused("boards", { ...siding, openings })).toEqual(["inputs.openings.0.width larger-than-wall"]);
});

test("the drawing shows a line for every row", () => {
  expect(drawn(viewOf(reckoned("boards", siding), "elevation"), "row")).toBe(17);
});

test("rows are drawn from the ground up, at what each shows", () => {
  const wall = viewOf(reckoned("boards", siding), "elevation");
  expect(cornersOf(wall, "surface")[0]?.map(String)).toEqual(["0,0", "240,0", "240,96", "0,96"]);
  expect(wall.strokes.slice(0, 2).map(({ from, to }) => [String(from), String(to)])).toEqual([
    ["0,96", "240,96"],
    ["0,90", "240,90"],
  ]);
  const gapped = { ...siding, laid: "gapped", step: "3/4" };
  expect(viewOf(reckoned("boards", gapped), "elevation").strokes[1]?.from).toEqual([0, 88]);
});
