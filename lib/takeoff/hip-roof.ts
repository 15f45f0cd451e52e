import type * as z from "zod";
import { decimal } from "../decimal.ts";
import { fields } from "../entry-fields.ts";
import { UNITS_OF, type UnitSystem } from "../measure/unit-system.ts";
import type { Calculator } from "./calculator.ts";
import { type Drawing, type Point, rectangle, span, view } from "./drawing.ts";
import { length } from "./fields.ts";
import { hipFigures } from "./hip-figures.ts";
import { areaIn, line, measure, piecesOf, runIn, type TakeoffResult } from "./result.ts";
import { coveringLines, edgeMeasures, NO_EDGES } from "./roof-measures.ts";
import { halfSpan, slope } from "./slope.ts";

/** length, width: of the walls, either may be the longer. The ridge runs along the longer. */
function inputs(system: UnitSystem) {
  return fields({
    length: length(system),
    width: length(system),
    slope: slope(),
    overhang: length(system, { zero: true }),
  });
}
const FOUR = decimal(4);
type Inputs = z.output<ReturnType<typeof inputs>>;

/**
 * A roof of four equal slopes over a rectangle; over a square, a pyramid without a ridge.
 *     area = plan with overhangs x slope factor;   hip = run of the common rafter x hip factor, four of them
 *     ridge = longer side - shorter side
 * Units: feet and square feet, or metres. Rounds: the root, to 40 digits. Source: Pythagoras.
 */
function results(given: Inputs, system: UnitSystem): TakeoffResult {
  const around = given.overhang.times(2);
  const [long, wide] = [given.length.plus(around), given.width.plus(around)];
  const run = halfSpan(long, wide);
  const { factor, hip, common } = hipFigures(given.slope);
  const roof = {
    ...NO_EDGES,
    roofArea: long.times(wide).times(factor),
    eaves: long.plus(wide).times(2),
    hips: run.times(hip).times(4),
    ridges: long.minus(wide).abs(),
  };
  return {
    measures: [
      ...common,
      measure(
        "planArea",
        areaIn(system, long.times(wide)),
        "(length + 2 × overhang) × (width + 2 × overhang)",
      ),
      measure("roofArea", areaIn(system, roof.roofArea), "planArea × slopeFactor"),
      measure("run", runIn(system, run), "min(length, width) / 2 + overhang"),
      measure("rafterLength", runIn(system, run.times(factor)), "run × slopeFactor"),
      measure("hipLength", runIn(system, run.times(hip)), "run × hipFactor"),
      ...edgeMeasures(
        roof,
        {
          hips: "4 × hipLength",
          ridges: "max(length, width) − min(length, width)",
          eaves: "2 × (length + width + 4 × overhang)",
        },
        system,
      ),
    ],
    lines: [
      ...coveringLines(roof, false, system),
      ...line("hipRafters", piecesOf(FOUR), "4", runIn(system, run.times(hip))),
      ...line("ridgeBoard", runIn(system, roof.ridges), "ridges"),
    ],
  };
}

/** The four slopes from above. Units: inches or millimetres. */
function drawing(given: Inputs, system: UnitSystem): Drawing {
  const over = given.overhang.toNumber();
  const [right, bottom] = [given.length.toNumber() + 2 * over, given.width.toNumber() + 2 * over];
  const run = Math.min(right, bottom) / 2;
  const [first, last]: readonly [Point, Point] = [
    [run, run],
    [right - run, bottom - run],
  ];
  const [upper, lower] = right >= bottom ? [last, first] : [first, last];
  const corners: readonly Point[] = [
    [0, 0],
    [right, 0],
    [right, bottom],
    [0, bottom],
  ];
  const apexes = [first, upper, last, lower];
  return {
    unit: UNITS_OF[system].length,
    views: [
      view("plan", {
        polygons: [
          ...corners.map((corner, index) => {
            const next = (index + 1) % 4;
            const facet = [corner, corners[next], apexes[next], apexes[index]];
            return { name: "facet", points: facet.filter((point) => point !== undefined) };
          }),
          rectangle("walls", [over, over], right - 2 * over, bottom - 2 * over),
        ],
        strokes: [
          ...corners.map((corner, index) => ({ name: "hip", from: corner, to: apexes[index] ?? corner })),
          ...(right === bottom ? [] : [{ name: "ridge", from: first, to: last }]),
        ],
        spans: [
          span("length", [over, bottom], [right - over, bottom]),
          span("width", [right, over], [right, bottom - over]),
          span("overhang", [0, bottom], [over, bottom]),
        ],
      }),
    ],
  };
}

export const hipRoof: Calculator<Inputs> = { inputs, results, drawing };
