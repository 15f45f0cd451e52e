import { expect, test } from "vitest";
import { marks, rectangle, span, view } from "../../../lib/takeoff/drawing.ts";

test("marks stand at every spacing and at the end", () => {
  expect(marks(40, 16)).toEqual([0, 16, 32, 40]);
  expect(marks(32, 16)).toEqual([0, 16, 32]);
});

test("more marks than can be seen are not drawn", () => {
  expect(marks(201, 1)).toEqual([]);
  expect(marks(200, 1).length).toBe(201);
  expect(marks(1, 0)).toEqual([]);
});

test("the box of a view holds everything in it", () => {
  const { box } = view("plan", {
    polygons: [rectangle("wall", [-2, 1], 4, 3)],
    strokes: [{ name: "ridge", from: [0, -5], to: [0, 0] }],
    spans: [span("length", [0, 9], [3, 9])],
  });
  expect(box).toEqual({ x: -2, y: -5, width: 5, height: 14 });
  expect(view("plan", {}).box).toEqual({ x: 0, y: 0, width: 0, height: 0 });
});

test("a dimension line knows its length", () => {
  expect(span("side", [0, 0], [3, 4]).value).toBe(5);
});

test("a rectangle goes around from its upper left corner", () => {
  expect(rectangle("wall", [1, 2], 10, 20).points.map(String)).toEqual(["1,2", "11,2", "11,22", "1,22"]);
});
