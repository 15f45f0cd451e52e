import type { Decimal } from "../decimal.ts";
import { marks, rectangle, type Stroke, span, type View, view } from "./drawing.ts";
import { drawnOpenings, type Opening } from "./openings.ts";

type Wall = Readonly<{ length: Decimal; height: Decimal; openings: readonly Opening[] }>;
type Framing = Readonly<Record<"studSpacing" | "plateRows" | "plateThickness", Decimal>>;

/** One wall seen from the side: plates, studs at the spacing, openings spread evenly. Units: inches or millimetres. */
export function drawnWall(wall: Wall, { studSpacing, plateRows, plateThickness }: Framing): View {
  const [wide, high] = [wall.length.toNumber(), wall.height.toNumber()];
  const thick = plateThickness.toNumber();
  // One at the bottom, the rest on top; more than a few rows are drawn as three.
  const rows = Math.min(3, plateRows.toNumber());
  const tops = Math.max(0, rows - 1);
  const plates = Array.from({ length: rows }, (_, row) =>
    rectangle("plate", [0, row < tops ? row * thick : high - thick], wide, thick),
  );
  const studs = marks(wide, studSpacing.toNumber()).map(
    (x): Stroke => ({
      name: "stud",
      from: [x, tops * thick],
      to: [x, rows === 0 ? high : high - thick],
    }),
  );
  return view("elevation", {
    polygons: [
      rectangle("wall", [0, 0], wide, high),
      ...plates,
      ...drawnOpenings(wall.openings, [0, 0], wide).map(({ name, points }) => ({
        name,
        points: points.map(([x, y]) => [x, y + (high - lowest(points)) / 2] as const),
      })),
    ],
    strokes: studs,
    spans: [span("length", [0, high], [wide, high]), span("height", [wide, high], [wide, 0])],
  });
}

function lowest(points: readonly (readonly [number, number])[]): number {
  return points.reduce((most, [, y]) => Math.max(most, y), 0);
}
