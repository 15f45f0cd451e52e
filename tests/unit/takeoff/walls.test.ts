import { expect, test } from "vitest";
import {
  cornersOf,
  drawn,
  lined,
  measured,
  reckoned,
  refused,
  viewOf,
} from "../../support/takeoff-example.ts";

const door = { width: "3 ft", height: "7 ft" };
const window = { width: "4 ft", height: "3 ft", count: "2" };
const long = { length: "32 ft", height: "97 1/8", extraStuds: "4", openings: [door, window] };
const short = { length: "24 ft", height: "97 1/8", openings: [] };
const framing = {
  walls: [long, short],
  studSpacing: "16 in",
  studsPerOpening: "2",
  plateRows: "3",
  plateThickness: "1 1/2",
  drywallFaces: "1",
};

test("studs stand at the spacing with both ends, plus what is stated for corners and openings", () => {
  const takeoff = reckoned("walls", framing);
  // 32 ft: 25 + 4 + 3 x 2; 24 ft: 19.
  expect(lined(takeoff, "studs")).toEqual(["54 piece at 7.71875 linear-foot"]);
});

test("studs of walls of another height are a line of their own", () => {
  const low = { ...short, height: "4 ft" };
  expect(lined(reckoned("walls", { ...framing, walls: [long, low] }), "studs")).toEqual([
    "19 piece at 3.625 linear-foot",
    "35 piece at 7.71875 linear-foot",
  ]);
});

test("plates run the whole length as often as stated", () => {
  expect(lined(reckoned("walls", framing), "plates")).toEqual(["168 linear-foot"]);
  expect(lined(reckoned("walls", { ...framing, plateRows: "0" }), "plates")).toEqual([]);
});

test("sheathing is the walls without their openings, on one face", () => {
  const takeoff = reckoned("walls", {
    ...framing,
    walls: [
      { ...long, height: "8 ft" },
      { ...short, height: "8 ft" },
    ],
  });
  expect(measured(takeoff, "wallArea")).toBe("448 square-foot");
  expect(measured(takeoff, "openingArea")).toBe("45 square-foot");
  expect(lined(takeoff, "wallSheathing")).toEqual(["403 square-foot"]);
  expect(lined(takeoff, "houseWrap")).toEqual(["403 square-foot"]);
});

test("drywall is hung over openings smaller than stated, on as many faces as stated", () => {
  const eight = { ...framing, walls: [{ ...long, height: "8 ft" }] };
  const drywall = (more: object) => lined(reckoned("walls", { ...eight, ...more }), "drywall");
  expect(drywall({})).toEqual(["211 square-foot"]);
  expect(drywall({ drywallDeductsFrom: "20" })).toEqual(["235 square-foot"]);
  expect(drywall({ drywallDeductsFrom: "21" })).toEqual(["235 square-foot"]);
  expect(drywall({ drywallDeductsFrom: "32", drywallFaces: "2" })).toEqual(["512 square-foot"]);
  expect(drywall({ drywallFaces: "0" })).toEqual([]);
});

test("an opening wider or higher than its wall is refused by its side, too many by their area", () => {
  const wall = (openings: object[]) => ({ ...framing, walls: [short, { ...short, openings }] });
  expect(refused("walls", wall([{ width: "25 ft", height: "9 ft" }]))).toEqual([
    "inputs.walls.1.openings.0.width larger-than-wall",
    "inputs.walls.1.openings.0.height larger-than-wall",
  ]);
  expect(refused("walls", wall([{ ...door, count: "10" }]))).toEqual([
    "inputs.walls.1.openings larger-than-wall",
  ]);
});

test("an opening as large as its wall is still an opening", () => {
  const open = { ...short, openings: [{ width: "24 ft", height: "97 1/8" }] };
  expect(lined(reckoned("walls", { ...framing, walls: [open] }), "wallSheathing")).toEqual([]);
});

test("a wall no higher than its plates has no room for studs", () => {
  expect(refused("walls", { ...framing, walls: [{ ...short, height: "4 1/2" }] })).toEqual([
    "inputs.walls.0.height no-room-for-studs",
  ]);
});

test("no walls, a spacing of 0 and three faces are refused", () => {
  expect(refused("walls", { ...framing, walls: [], studSpacing: "0" })).toEqual([
    "inputs.studSpacing not-positive",
    "inputs.walls missing",
  ]);
  expect(refused("walls", { ...framing, drywallFaces: "3" })).toEqual(["inputs.drywallFaces too-large"]);
});

test("each wall is drawn with its plates, studs and openings", () => {
  const takeoff = reckoned("walls", framing);
  const [first, second] = takeoff.drawing.views;
  if (first === undefined || second === undefined) throw new Error("two walls, two views");
  expect(["plate", "stud", "opening"].map((name) => drawn(first, name))).toEqual([3, 25, 3]);
  expect(["plate", "stud", "opening"].map((name) => drawn(second, name))).toEqual([3, 19, 0]);
  expect(viewOf(takeoff, "elevation").box).toEqual({ x: 0, y: 0, width: 384, height: 97.125 });
});

test("plates lie at the bottom and on top, studs between them, openings spread along the wall", () => {
  const one = { length: "10 ft", height: "8 ft", openings: [{ width: "2 ft", height: "4 ft", count: "2" }] };
  const wall = viewOf(reckoned("walls", { ...framing, walls: [one] }), "elevation");
  const tops = (name: string) => cornersOf(wall, name).map((points) => String(points[0]));
  expect(tops("plate")).toEqual(["0,0", "0,1.5", "0,94.5"]);
  expect(wall.strokes.slice(0, 2).map(({ from, to }) => [String(from), String(to)])).toEqual([
    ["0,3", "0,94.5"],
    ["16,3", "16,94.5"],
  ]);
  expect(tops("opening")).toEqual(["24,24", "72,24"]);
});
