import type * as z from "zod";
import type { Decimal } from "../decimal.ts";
import { fields, listOf, name, withRules } from "../entry-fields.ts";
import { UNITS_OF, type UnitSystem } from "../measure/unit-system.ts";
import type { Calculator } from "./calculator.ts";
import { marks, rectangle, type Stroke, span, type View, view } from "./drawing.ts";
import { count, crossChecked, faultIf, length } from "./fields.ts";
import { areaIn, line, measure, piecesOf, runIn, sumOf, type TakeoffResult } from "./result.ts";
import { wholeUp } from "./spacing.ts";

const MOST_SLOPES = 40;

/**
 * slopes: rectangular, eave along it and slopeLength up it. coverWidth: what one panel covers once lapped, overallWidth
 * from edge to edge; coverSource: where the cover was read (published guides disagree, so it is the product's own).
 */
function inputs(system: UnitSystem) {
  const slope = fields({ eave: length(system), slopeLength: length(system), count: count().prefault("1") });
  const entry = fields({
    slopes: listOf(slope, MOST_SLOPES),
    coverWidth: length(system),
    overallWidth: length(system).nullable().default(null),
    coverSource: name().nullable().default(null),
  });
  const some = withRules(entry, [
    { path: "slopes", code: "missing", broken: ({ slopes }) => Array.isArray(slopes) && slopes.length === 0 },
  ]);
  return crossChecked(some, ({ coverWidth, overallWidth }) =>
    faultIf(overallWidth?.lessThan(coverWidth) ?? false, "coverWidth", "cover-too-wide"),
  );
}
type Inputs = z.output<ReturnType<typeof inputs>>;
type Slope = Inputs["slopes"][number];

/** Panels of each length, in the order they were named. */
function byLength(given: Inputs): [Decimal, Decimal][] {
  const panels = (slope: Slope) => wholeUp(slope.eave.dividedBy(given.coverWidth)).times(slope.count);
  const lengths = new Map(given.slopes.map((slope) => [slope.slopeLength.toString(), slope.slopeLength]));
  return [...lengths.values()].map((long) => [
    long,
    sumOf(given.slopes.filter((slope) => slope.slopeLength.equals(long)).map(panels)),
  ]);
}

/**
 * Metal panels from eave to ridge, by what each covers and never by its overall width.
 *     panels = ceil(eave / cover width) for each slope;   side lap = overall width - cover width
 * Units: pieces, each cut to the slope's length; square feet, or metres. Rounds: up to the next whole panel per slope.
 * Slopes that narrow to a hip are not asked here. Source: metal panel coverage guides (order by coverage width).
 */
function results(given: Inputs, system: UnitSystem): TakeoffResult {
  const covered = sumOf(given.slopes.map((slope) => slope.eave.times(slope.slopeLength).times(slope.count)));
  const lap = given.overallWidth?.minus(given.coverWidth) ?? null;
  return {
    measures: [
      measure("coveredArea", areaIn(system, covered), "sum(eave × slopeLength × count)"),
      ...(lap === null ? [] : [measure("sideLap", runIn(system, lap), "overallWidth − coverWidth")]),
    ],
    lines: byLength(given).flatMap(([long, panels]) =>
      line("metalPanels", piecesOf(panels), "sum(ceil(eave / coverWidth) × count)", runIn(system, long)),
    ),
  };
}

/** One slope laid flat, its panels side by side, the last as wide as it is bought. Units: inches or millimetres. */
function drawnSlope(slope: Slope, given: Inputs): View {
  const [eave, up, cover] = [
    slope.eave.toNumber(),
    slope.slopeLength.toNumber(),
    given.coverWidth.toNumber(),
  ];
  const joints = marks(Math.ceil(eave / cover - 1e-9) * cover, cover).map(
    (x): Stroke => ({ name: "panel", from: [x, 0], to: [x, up] }),
  );
  return view("elevation", {
    polygons: [rectangle("surface", [0, 0], eave, up)],
    strokes: joints,
    spans: [
      span("eave", [0, up], [eave, up]),
      span("slopeLength", [eave, up], [eave, 0]),
      span("coverWidth", [0, 0], [cover, 0]),
    ],
  });
}

export const metalPanels: Calculator<Inputs> = {
  inputs,
  results,
  drawing: (given, system) => ({
    unit: UNITS_OF[system].length,
    views: given.slopes.map((slope) => drawnSlope(slope, given)),
  }),
};
