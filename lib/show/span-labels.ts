import type { Point, Span } from "../takeoff/drawing.ts";

/** A label's place: its middle, and how far it reaches across and down. */
export type LabelBox = Readonly<{ x: number; y: number; width: number; height: number }>;

/** mark: a letter that stands for the text, where there was no room for it; null: the text itself is written. */
export type PlacedLabel = Readonly<{ box: LabelBox; upright: boolean; mark: string | null }>;

/** Of the height of the letters: how wide one is (they are of one width), how high a line. */
const WIDE = 0.62;
const HIGH = 1.25;
/** How far from its line a mark may stand, in heights of the letters: near first. */
const AWAY = [0.9, 1.6, 2.3, 3.1, 4, 5];
const ALPHABET = 26;

function textBox([x, y]: Point, text: string, letters: number, upright: boolean): LabelBox {
  const [long, high] = [text.length * WIDE * letters, HIGH * letters];
  return upright ? { x, y, width: high, height: long } : { x, y, width: long, height: high };
}

/** Whether two labels cover one another. */
export function overlap(one: LabelBox, other: LabelBox): boolean {
  return (
    Math.abs(one.x - other.x) * 2 < one.width + other.width &&
    Math.abs(one.y - other.y) * 2 < one.height + other.height
  );
}

/** A to Z, then AA, AB, and so on. */
export function letterMark(index: number): string {
  const last = String.fromCharCode(65 + (index % ALPHABET));
  return index < ALPHABET ? last : letterMark(Math.floor(index / ALPHABET) - 1) + last;
}

function middleOf({ from, to }: Span): Point {
  return [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
}

function isUpright({ from, to }: Span): boolean {
  return Math.abs(to[1] - from[1]) > Math.abs(to[0] - from[0]);
}

/** Free places beside a line, the near ones first, on the one side and the other and past its ends. */
function places(one: Span, letters: number): Point[] {
  const [x, y] = middleOf(one);
  const [across, down] = [Math.abs(one.to[0] - one.from[0]) / 2, Math.abs(one.to[1] - one.from[1]) / 2];
  return AWAY.flatMap((away): Point[] => {
    const off = away * letters;
    const aside: Point[] = [
      [x, y + off],
      [x, y - off],
    ];
    const beyond: Point[] = [
      [x + across + off, y],
      [x - across - off, y],
    ];
    const below: Point[] = [
      [x, y + down + off],
      [x, y - down - off],
    ];
    return isUpright(one)
      ? [[x + off, y], [x - off, y], ...below]
      : [...aside, ...beyond, [x + off, y + off], [x - off, y + off]];
  });
}

function placeOfMark(one: Span, mark: string, letters: number, taken: readonly LabelBox[]): LabelBox {
  const free = [middleOf(one), ...places(one, letters)]
    .slice(1)
    .map((place) => textBox(place, mark, letters, false));
  const clear = free.find((box) => !taken.some((other) => overlap(box, other)));
  const lowest = Math.max(...taken.map(({ y, height }) => y + height / 2));
  return clear ?? textBox([middleOf(one)[0], lowest + letters], mark, letters, false);
}

/**
 * Where the dimension lines of a view are labelled so that no label covers another: the text along its line where there
 * is room, the longest lines first; else a letter beside it, the same for the same text, to be told below the drawing.
 * Units: those of the drawing; letters: their height. Method: first free place in a fixed order; when none near is free,
 * below all others.
 */
export function spanLabels(spans: readonly Span[], texts: readonly string[], letters: number): PlacedLabel[] {
  const lengthOf = ({ from, to }: Span) => Math.hypot(to[0] - from[0], to[1] - from[1]);
  const whole = spans
    .map((one, at) => ({ one, at, text: texts[at] ?? "", upright: isUpright(one) }))
    .sort((a, b) => lengthOf(b.one) - lengthOf(a.one));
  const taken: LabelBox[] = [];
  const placed = new Map<number, PlacedLabel>();
  for (const { one, at, text, upright } of whole) {
    const box = textBox(middleOf(one), text, letters, upright);
    const room = upright ? Math.abs(one.to[1] - one.from[1]) : Math.abs(one.to[0] - one.from[0]);
    if ((upright ? box.height : box.width) > room || taken.some((other) => overlap(box, other))) continue;
    taken.push(box);
    placed.set(at, { box, upright, mark: null });
  }
  const marks = new Map<string, string>();
  return spans.map((one, at) => {
    const written = placed.get(at);
    if (written !== undefined) return written;
    const text = texts[at] ?? "";
    const mark = marks.get(text) ?? letterMark(marks.size);
    marks.set(text, mark);
    const box = placeOfMark(one, mark, letters, taken);
    taken.push(box);
    return { box, upright: false, mark };
  });
}
