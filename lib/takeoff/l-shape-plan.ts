import type { Decimal } from "../decimal.ts";
import { UNITS_OF, type UnitSystem } from "../measure/unit-system.ts";
import { type Drawing, type Point, type Polygon, type Stroke, span, view } from "./drawing.ts";

/** A main part length x width; flush with one end of its long side a wing, wingWidth along it and wingLength away from it. */
export type LShape = Readonly<Record<"length" | "width" | "wingWidth" | "wingLength" | "overhang", Decimal>>;

type Lines = Readonly<{ facets: readonly (readonly Point[])[]; strokes: readonly Stroke[] }>;

function same(one: Point | undefined, other: Point): boolean {
  return one !== undefined && one[0] === other[0] && one[1] === other[1];
}

function withoutRepeats(points: readonly Point[]): Point[] {
  return points.filter((point, index) => !same(points[index - 1], point));
}

/** An L whose arm (width, length) hangs below the right end of its body and is no wider than the body: its slopes and their meeting lines. */
function slopesOf(long: number, wide: number, armWidth: number, armLength: number): Lines {
  const run = Math.min(long, wide) / 2;
  const [left, inner, end] = [0, long - armWidth, wide + armLength];
  const first: Point = [run, run];
  const last: Point = [long - run, wide - run];
  const [upper, lower] = long >= wide ? [last, first] : [first, last];
  const meeting: Point = [long - armWidth / 2, wide - armWidth / 2];
  const apex: Point = [long - armWidth / 2, end - armWidth / 2];
  const corner: Point = [inner, wide];
  const facets: readonly (readonly Point[])[] = [
    [[left, 0], [long, 0], upper, first],
    [[left, 0], first, lower, [left, wide]],
    [[left, wide], lower, last, meeting, corner],
    [[long, 0], [long, end], apex, meeting, last, upper],
    [corner, meeting, apex, [inner, end]],
    [[inner, end], apex, [long, end]],
  ];
  const strokes: readonly Stroke[] = [
    { name: "hip", from: [left, 0], to: first },
    { name: "hip", from: [long, 0], to: upper },
    { name: "hip", from: [left, wide], to: lower },
    { name: "hip", from: [inner, end], to: apex },
    { name: "hip", from: [long, end], to: apex },
    { name: "hip", from: meeting, to: last },
    { name: "valley", from: corner, to: meeting },
    { name: "ridge", from: first, to: last },
    { name: "ridge", from: meeting, to: apex },
  ];
  return {
    facets: facets.map(withoutRepeats),
    strokes: strokes.filter(({ from, to }) => !same(from, to)),
  };
}

/** The L turned so that its main part becomes the arm: as the drawing of a wing wider than the main part. */
function turned([x, y]: Point, right: number, bottom: number): Point {
  return [right - y, bottom - x];
}

/** The slopes of an L-shaped hip roof from above, with the walls under them. Units: inches or millimetres. */
export function drawnLShape(given: LShape, system: UnitSystem): Drawing {
  const over = given.overhang.toNumber();
  const [right, wide] = [given.length.toNumber() + 2 * over, given.width.toNumber() + 2 * over];
  const [wing, deep] = [given.wingWidth.toNumber() + 2 * over, given.wingLength.toNumber()];
  const bottom = wide + deep;
  const plain = wing <= wide;
  const lines = plain ? slopesOf(right, wide, wing, deep) : slopesOf(bottom, wing, wide, right - wing);
  const placed = (point: Point): Point => (plain ? point : turned(point, right, bottom));
  const facets: readonly Polygon[] = lines.facets.map((points) => ({
    name: "facet",
    points: points.map(placed),
  }));
  const walls: Polygon = {
    name: "walls",
    points: [
      [over, over],
      [right - over, over],
      [right - over, bottom - over],
      [right - wing + over, bottom - over],
      [right - wing + over, wide - over],
      [over, wide - over],
    ],
  };
  return {
    unit: UNITS_OF[system].length,
    views: [
      view("plan", {
        polygons: [...facets, walls],
        strokes: lines.strokes.map(({ name, from, to }) => ({ name, from: placed(from), to: placed(to) })),
        spans: [
          span("length", [over, 0], [right - over, 0]),
          span("width", [0, over], [0, wide - over]),
          span("wingWidth", [right - wing + over, bottom], [right - over, bottom]),
          span("wingLength", [right, wide - over], [right, bottom - over]),
          span("overhang", [0, 0], [over, 0]),
        ],
      }),
    ],
  };
}
