import type { UnitCode } from "../measure/units.ts";

/** Across and down, in the entry's own unit (inches or millimetres); plain numbers, for drawing only. */
export type Point = readonly [x: number, y: number];

export type Polygon = Readonly<{ name: string; points: readonly Point[] }>;
export type Stroke = Readonly<{ name: string; from: Point; to: Point }>;
/** A dimension line: the field or measure it shows and its value in the drawing's unit. */
export type Span = Readonly<{ name: string; from: Point; to: Point; value: number }>;

export const VIEW_NAMES = ["plan", "elevation", "section", "parts"] as const;
export type View = Readonly<{
  name: (typeof VIEW_NAMES)[number];
  polygons: readonly Polygon[];
  strokes: readonly Stroke[];
  spans: readonly Span[];
  /** What all of it fits in. */
  box: Readonly<{ x: number; y: number; width: number; height: number }>;
}>;
export type Drawing = Readonly<{ unit: UnitCode; views: readonly View[] }>;

/** More marks than this are a grey area: none is drawn. */
const MOST_MARKS = 200;

/** A rectangle by its upper left corner and size. Units: the drawing's. */
export function rectangle(name: string, [x, y]: Point, width: number, height: number): Polygon {
  return {
    name,
    points: [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ],
  };
}

/** A dimension line with the length between its ends as value. Units: the drawing's. Rounds: to a millionth, as inputs are. */
export function span(name: string, from: Point, to: Point): Span {
  const value = Math.hypot(to[0] - from[0], to[1] - from[1]);
  return { name, from, to, value: Math.round(value * 1e6) / 1e6 };
}

/** Places every `spacing` from 0, and `extent` itself at the end; none when they are too many to be seen. Units: the drawing's. */
export function marks(extent: number, spacing: number): number[] {
  const whole = Math.ceil(extent / spacing - 1e-9);
  if (!(whole <= MOST_MARKS)) return [];
  return Array.from({ length: whole + 1 }, (_, index) => Math.min(index * spacing, extent));
}

/** A view and the box it fits in. Units: the drawing's. */
export function view(
  name: View["name"],
  parts: Readonly<Partial<Pick<View, "polygons" | "strokes" | "spans">>>,
): View {
  const { polygons = [], strokes = [], spans = [] } = parts;
  const points = [
    ...polygons.flatMap((polygon) => polygon.points),
    ...[...strokes, ...spans].flatMap(({ from, to }) => [from, to]),
  ];
  const left = points.reduce((least, [x]) => Math.min(least, x), Number.POSITIVE_INFINITY);
  const top = points.reduce((least, [, y]) => Math.min(least, y), Number.POSITIVE_INFINITY);
  const right = points.reduce((most, [x]) => Math.max(most, x), Number.NEGATIVE_INFINITY);
  const bottom = points.reduce((most, [, y]) => Math.max(most, y), Number.NEGATIVE_INFINITY);
  const box =
    points.length === 0
      ? { x: 0, y: 0, width: 0, height: 0 }
      : { x: left, y: top, width: right - left, height: bottom - top };
  return { name, polygons, strokes, spans, box };
}
