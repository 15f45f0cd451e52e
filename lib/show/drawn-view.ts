import { decimal } from "../decimal.ts";
import { lengthText } from "../measure/length-text.ts";
import type { UnitSystem } from "../measure/unit-system.ts";
import type { Point, View } from "../takeoff/drawing.ts";

const MARGIN = 12;
const LETTERS = 26;

/** Where a dimension line runs and what is written along it; turned: it reads upwards. */
export type Dimension = Readonly<{
  key: string;
  name: string;
  from: Point;
  to: Point;
  x: number;
  y: number;
  turn: string | undefined;
  length: string;
}>;
export type Outline = Readonly<{ key: string; name: string; corners: string }>;
export type Line = Readonly<{ key: string; name: string; from: Point; to: Point }>;

/** A view ready to be drawn. letters: the height of its writing, in the drawing's unit. */
export type DrawnView = Readonly<{
  box: string;
  letters: number;
  outlines: readonly Outline[];
  lines: readonly Line[];
  dimensions: readonly Dimension[];
}>;

/** A view of a takeoff with room around it for its dimensions. Units: the drawing's. Rounds: lengths as lengthText. */
export function drawnView(view: View, system: UnitSystem): DrawnView {
  const { x, y, width, height } = view.box;
  const largest = Math.max(width, height, 1);
  const around = largest / MARGIN;
  return {
    box: [x - around, y - around, width + 2 * around, height + 2 * around].join(" "),
    letters: largest / LETTERS,
    outlines: view.polygons.map(({ name, points }, at) => ({
      key: `${name} ${at}`,
      name,
      corners: points.map((point) => point.join(",")).join(" "),
    })),
    lines: view.strokes.map((stroke, at) => ({ key: `${stroke.name} ${at}`, ...stroke })),
    dimensions: view.spans.map(({ name, from, to, value }, at) => {
      const [middle, level] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
      const upright = Math.abs(to[1] - from[1]) > Math.abs(to[0] - from[0]);
      return {
        key: `${name} ${at}`,
        name,
        from,
        to,
        x: middle,
        y: level,
        turn: upright ? `rotate(-90 ${middle} ${level})` : undefined,
        length: lengthText(decimal(value), system),
      };
    }),
  };
}
