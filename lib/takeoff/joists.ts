import type { Decimal } from "../decimal.ts";
import type { UnitSystem } from "../measure/unit-system.ts";
import { marks, type Point, rectangle, type Stroke, span, type View, view } from "./drawing.ts";
import { count, length } from "./fields.ts";
import { line, piecesOf, runIn, type TakeoffLine } from "./result.ts";
import { atSpacing } from "./spacing.ts";

/** length: along the rims, across the joists; span: along the joists. extraJoists: doubled ones, trimmers. rimRows: rims, both ends together. */
export function joistFields(system: UnitSystem) {
  return {
    length: length(system),
    span: length(system),
    joistSpacing: length(system),
    extraJoists: count({ zero: true }).prefault("0"),
    rimRows: count({ zero: true }).prefault("2"),
  };
}
export type Joists = Readonly<
  Record<"length" | "span" | "joistSpacing" | "extraJoists" | "rimRows", Decimal>
>;

/**
 * Joists and rims of a floor or deck.
 *     joists = ceil(length / spacing) + 1 + extra, each as long as the span;   rims = rows x length
 * Units: pieces; feet or metres. Rounds: joists up to the next whole. What may span how far is not asked here: that is
 * for the local code. Source: common practice of framing.
 */
export function joistLines(given: Joists, system: UnitSystem): TakeoffLine[] {
  const joists = atSpacing(given.length, given.joistSpacing).plus(given.extraJoists);
  return [
    ...line(
      "joists",
      piecesOf(joists),
      "ceil(length / joistSpacing) + 1 + extraJoists",
      runIn(system, given.span),
    ),
    ...line("rims", runIn(system, given.length.times(given.rimRows)), "rimRows × length"),
  ];
}

/** The frame from above: joists down the picture, rims along it; `over` is drawn on it. Units: inches or millimetres. */
export function drawnJoists(
  given: Joists,
  over: Readonly<Partial<Pick<View, "polygons" | "strokes">>>,
): View {
  const [wide, deep] = [given.length.toNumber(), given.span.toNumber()];
  const joists = marks(wide, given.joistSpacing.toNumber()).map(
    (x): Stroke => ({ name: "joist", from: [x, 0], to: [x, deep] }),
  );
  const origin: Point = [0, 0];
  return view("plan", {
    polygons: [rectangle("frame", origin, wide, deep), ...(over.polygons ?? [])],
    strokes: [...joists, ...(over.strokes ?? [])],
    spans: [span("length", [0, deep], [wide, deep]), span("span", [wide, 0], [wide, deep])],
  });
}
