import type * as z from "zod";
import { fields, flag } from "../entry-fields.ts";
import { UNITS_OF, type UnitSystem } from "../measure/unit-system.ts";
import type { Calculator } from "./calculator.ts";
import { type Drawing, rectangle, span, view } from "./drawing.ts";
import { length } from "./fields.ts";
import { areaIn, line, measure, piecesOf, runIn, type TakeoffResult } from "./result.ts";
import { coveringLines, edgeMeasures, NO_EDGES } from "./roof-measures.ts";
import { riseOver, slope, slopeFactor } from "./slope.ts";
import { atSpacing } from "./spacing.ts";

/** length: of the low wall; width: on plan from the low wall to the high one. rafterSpacing null: rafters are not counted. */
function inputs(system: UnitSystem) {
  return fields({
    length: length(system),
    width: length(system),
    slope: slope(),
    lowOverhang: length(system, { zero: true }),
    highOverhang: length(system, { zero: true }),
    rakeOverhang: length(system, { zero: true }),
    rafterSpacing: length(system).nullable().default(null),
    starterAlongRakes: flag().default(false),
  });
}
type Inputs = z.output<ReturnType<typeof inputs>>;

/**
 * A roof of one slope over a rectangle.
 *     rafter = (low overhang + width + high overhang) x slope factor;   area = rafter x (length + 2 x rake overhang)
 * Units: feet and square feet, or metres. Rounds: the root, to 40 digits. Source: Pythagoras.
 */
function results(given: Inputs, system: UnitSystem): TakeoffResult {
  const factor = slopeFactor(given.slope);
  const run = given.width.plus(given.lowOverhang).plus(given.highOverhang);
  const across = given.length.plus(given.rakeOverhang.times(2));
  const rafter = run.times(factor);
  const roof = {
    ...NO_EDGES,
    roofArea: rafter.times(across),
    eaves: across,
    rakes: rafter.times(2),
    highEdges: across,
  };
  const rafters =
    given.rafterSpacing === null
      ? []
      : line(
          "rafters",
          piecesOf(atSpacing(given.length, given.rafterSpacing)),
          "ceil(length / rafterSpacing) + 1",
          runIn(system, rafter),
        );
  return {
    measures: [
      measure("slopeFactor", factor, "sqrt(slope² + 12²) / 12"),
      measure(
        "planArea",
        areaIn(system, run.times(across)),
        "(length + 2 × rakeOverhang) × (width + lowOverhang + highOverhang)",
      ),
      measure("roofArea", areaIn(system, roof.roofArea), "planArea × slopeFactor"),
      measure("rafterLength", runIn(system, rafter), "(width + lowOverhang + highOverhang) × slopeFactor"),
      ...edgeMeasures(
        roof,
        { eaves: "length + 2 × rakeOverhang", highEdges: "eaves", rakes: "2 × rafterLength" },
        system,
      ),
    ],
    lines: [...coveringLines(roof, given.starterAlongRakes, system), ...rafters],
  };
}

/** Plan from above, low side below, and the end wall. Units: inches or millimetres. */
function drawing(given: Inputs, system: UnitSystem): Drawing {
  const [long, wide, rake] = [given.length.toNumber(), given.width.toNumber(), given.rakeOverhang.toNumber()];
  const [low, high] = [given.lowOverhang.toNumber(), given.highOverhang.toNumber()];
  const [right, bottom] = [long + 2 * rake, high + wide + low];
  const rise = riseOver(given.width.plus(given.lowOverhang).plus(given.highOverhang), given.slope).toNumber();
  return {
    unit: UNITS_OF[system].length,
    views: [
      view("plan", {
        polygons: [rectangle("facet", [0, 0], right, bottom), rectangle("walls", [rake, high], long, wide)],
        spans: [
          span("length", [rake, bottom], [rake + long, bottom]),
          span("width", [right, high], [right, high + wide]),
          span("rakeOverhang", [0, bottom], [rake, bottom]),
          span("highOverhang", [right, 0], [right, high]),
          span("lowOverhang", [right, high + wide], [right, bottom]),
        ],
      }),
      view("elevation", {
        strokes: [{ name: "rafter", from: [0, rise], to: [bottom, 0] }],
        spans: [
          span("rafterLength", [0, rise], [bottom, 0]),
          span("rise", [bottom, rise], [bottom, 0]),
          span("width", [low, rise], [low + wide, rise]),
        ],
      }),
    ],
  };
}

export const shedRoof: Calculator<Inputs> = { inputs, results, drawing };
