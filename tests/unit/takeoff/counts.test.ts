import { expect, test } from "vitest";
import { cornersOf, measured, reckoned, refused, viewOf } from "../../support/takeoff-example.ts";

const hinges = { name: "Hinge 4 in", perItem: "3" };
const doors = { name: "Door 2868 left", count: "4", parts: [hinges, { name: "Lever", perItem: "1" }] };
const more = { name: "Door 3068 right", count: "2", parts: [{ ...hinges, name: "hinge 4 IN" }] };

test("things are counted, and what belongs to each with them, one name once", () => {
  const { result } = reckoned("counts", { items: [doors, more] });
  expect(result.lines.map(({ label, quantity }) => `${quantity.value} ${label}`)).toEqual([
    "4 Door 2868 left",
    "18 Hinge 4 in",
    "4 Lever",
    "2 Door 3068 right",
  ]);
});

test("the items are added up, their parts are not", () => {
  expect(measured(reckoned("counts", { items: [doors, more] }), "items")).toBe("6 each");
});

test("a square is drawn for each item, no more than can be seen", () => {
  expect(viewOf(reckoned("counts", { items: [doors, more] }), "parts").polygons.length).toBe(6);
  const many = { items: [{ name: "Screw", count: "5000" }] };
  expect(viewOf(reckoned("counts", many), "parts").polygons.length).toBe(120);
});

test("no items, no name and a half are refused", () => {
  expect(refused("counts", { items: [] })).toEqual(["inputs.items missing"]);
  expect(refused("counts", { items: [{ name: " ", count: "0.5" }] })).toEqual([
    "inputs.items.0.name missing",
    "inputs.items.0.count not-whole",
  ]);
});

test("squares stand apart in rows of twelve", () => {
  const items = [{ name: "Window", count: "14" }];
  const corners = cornersOf(viewOf(reckoned("counts", { items }), "parts"), "Window");
  expect([0, 1, 11, 12, 13].map((index) => corners[index]?.[0]?.join())).toEqual([
    "0,0",
    "2,0",
    "22,0",
    "0,2",
    "2,2",
  ]);
});
