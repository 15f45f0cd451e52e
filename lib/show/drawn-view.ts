import { type Decimal, decimal, roundHalfUp } from "../decimal.ts";
import { lengthText } from "../measure/length-text.ts";
import type { UnitSystem } from "../measure/unit-system.ts";
import type { Point, View } from "../takeoff/drawing.ts";
import { type LabelBox, spanLabels } from "./span-labels.ts";

/** Room around the drawing, and the height of its writing, as parts of its larger side. */
const MARGIN = 40;
const LETTERS = 20;

/** Where a dimension line runs and what is written at it; turned: it reads upwards. mark: a letter that stands for the text. */
export type Dimension = Readonly<{
  key: string;
  from: Point;
  to: Point;
  /** The middle of its label. */
  x: number;
  y: number;
  /** What lies under the label, by its upper left corner. */
  ground: Readonly<{ x: number; y: number; width: number; height: number }>;
  turn: string | undefined;
  text: string;
  mark: string | null;
}>;
export type Outline = Readonly<{ key: string; name: string; corners: string }>;
export type Line = Readonly<{ key: string; name: string; from: Point; to: Point }>;

/** A view ready to be drawn. letters: the height of its writing, in the drawing's unit. legend: what each mark stands for. */
export type DrawnView = Readonly<{
  box: string;
  letters: number;
  outlines: readonly Outline[];
  lines: readonly Line[];
  dimensions: readonly Dimension[];
  legend: readonly Readonly<{ mark: string; text: string }>[];
}>;

/** Parts of an inch or millimetre that are told. */
const FINEST = { imperial: 64, metric: 10 } as const;

function toTape(value: Decimal, system: UnitSystem): Decimal {
  return roundHalfUp(value.times(FINEST[system]), 0).dividedBy(FINEST[system]);
}

/** What the view and all its labels fit in, with a little room. */
function boxAround({ box }: View, labels: readonly LabelBox[], room: number): string {
  const sides = [
    { left: box.x, top: box.y, right: box.x + box.width, bottom: box.y + box.height },
    ...labels.map(({ x, y, width, height }) => ({
      left: x - width / 2,
      top: y - height / 2,
      right: x + width / 2,
      bottom: y + height / 2,
    })),
  ];
  const left = Math.min(...sides.map((side) => side.left)) - room;
  const top = Math.min(...sides.map((side) => side.top)) - room;
  const right = Math.max(...sides.map((side) => side.right)) + room;
  const bottom = Math.max(...sides.map((side) => side.bottom)) + room;
  return [left, top, right - left, bottom - top].join(" ");
}

/**
 * A view of a takeoff with its dimensions labelled, none over another and none cut off; an overhang of
 * nothing is no dimension. named: a field or measure in
 * words. Units: the drawing's. Rounds: lengths for reading, half up to a sixty-fourth of an inch or a tenth of a millimetre.
 */
export function drawnView(view: View, system: UnitSystem, named: (name: string) => string): DrawnView {
  const largest = Math.max(view.box.width, view.box.height, 1);
  const letters = largest / LETTERS;
  const read = (value: number) => lengthText(toTape(decimal(value), system), system);
  const spans = view.spans.filter(({ value }) => value !== 0);
  const texts = spans.map(({ name, value }) => `${named(name)} ${read(value)}`);
  const labels = spanLabels(spans, texts, letters);
  const dimensions = spans.flatMap(({ name, from, to }, at): Dimension[] => {
    const label = labels[at];
    if (label === undefined) return [];
    const { x, y } = label.box;
    const turn = label.upright ? `rotate(-90 ${x} ${y})` : undefined;
    const ground = { ...label.box, x: x - label.box.width / 2, y: y - label.box.height / 2 };
    return [{ key: `${name} ${at}`, from, to, x, y, ground, turn, text: texts[at] ?? "", mark: label.mark }];
  });
  const told = dimensions.flatMap(({ mark, text }) => (mark === null ? [] : [[mark, text] as const]));
  return {
    box: boxAround(
      view,
      labels.map(({ box }) => box),
      largest / MARGIN,
    ),
    letters,
    outlines: view.polygons.map(({ name, points }, at) => ({
      key: `${name} ${at}`,
      name,
      corners: points.map((point) => point.join(",")).join(" "),
    })),
    lines: view.strokes.map((stroke, at) => ({ key: `${stroke.name} ${at}`, ...stroke })),
    dimensions,
    legend: [...new Map(told)].map(([mark, text]) => ({ mark, text })),
  };
}
