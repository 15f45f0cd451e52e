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

/** length: of the walls along the ridge; width: of the walls across it. rafterSpacing null: rafters are not counted. */
function inputs(system: UnitSystem) {
  return fields({
    length: length(system),
    width: length(system),
    slope: slope(),
    eaveOverhang: length(system, { zero: true }),
    rakeOverhang: length(system, { zero: true }),
    rafterSpacing: length(system).nullable().default(null),
    starterAlongRakes: flag().default(false),
  });
}
type Inputs = z.output<ReturnType<typeof inputs>>;

/**
 * A roof of two equal slopes over a rectangle.
 *     rafter = (width / 2 + eave overhang) x slope factor;   ridge = length + 2 x rake overhang
 *     area = plan with overhangs x slope factor
 * Rafters run from the ridge's centre line to the eave's edge, without allowance for cuts or the ridge board.
 * Units: feet and square feet, or metres. Rounds: the root, to 40 digits. Source: Pythagoras; checked against a printed
 * 28 ft house at 4 in 12 (tests/references/takeoff-roofs.test.ts).
 */
function results(given: Inputs, system: UnitSystem): TakeoffResult {
  const factor = slopeFactor(given.slope);
  const ridge = given.length.plus(given.rakeOverhang.times(2));
  const run = given.width.dividedBy(2).plus(given.eaveOverhang);
  const rafter = run.times(factor);
  const plan = ridge.times(run).times(2);
  const roof = {
    ...NO_EDGES,
    roofArea: plan.times(factor),
    eaves: ridge.times(2),
    rakes: rafter.times(4),
    ridges: ridge,
  };
  const rafters =
    given.rafterSpacing === null
      ? []
      : line(
          "rafters",
          piecesOf(atSpacing(given.length, given.rafterSpacing).times(2)),
          "2 × (ceil(length / rafterSpacing) + 1)",
          runIn(system, rafter),
        );
  return {
    measures: [
      measure("slopeFactor", factor, "sqrt(slope² + 12²) / 12"),
      measure("planArea", areaIn(system, plan), "(length + 2 × rakeOverhang) × (width + 2 × eaveOverhang)"),
      measure("roofArea", areaIn(system, roof.roofArea), "planArea × slopeFactor"),
      measure("rafterLength", runIn(system, rafter), "(width / 2 + eaveOverhang) × slopeFactor"),
      ...edgeMeasures(
        roof,
        { ridges: "length + 2 × rakeOverhang", eaves: "2 × ridges", rakes: "4 × rafterLength" },
        system,
      ),
    ],
    lines: [
      ...coveringLines(roof, given.starterAlongRakes, system),
      ...rafters,
      ...line("ridgeBoard", runIn(system, ridge), "ridges"),
    ],
  };
}

/** Plan from above with the walls under it, and the gable end. Units: inches or millimetres. */
function drawing(given: Inputs, system: UnitSystem): Drawing {
  const [long, wide] = [given.length.toNumber(), given.width.toNumber()];
  const [eave, rake] = [given.eaveOverhang.toNumber(), given.rakeOverhang.toNumber()];
  const [right, bottom] = [long + 2 * rake, wide + 2 * eave];
  const rise = riseOver(given.width.dividedBy(2).plus(given.eaveOverhang), given.slope).toNumber();
  const drop = rise - riseOver(given.width.dividedBy(2), given.slope).toNumber();
  return {
    unit: UNITS_OF[system].length,
    views: [
      view("plan", {
        polygons: [
          rectangle("facet", [0, 0], right, bottom / 2),
          rectangle("facet", [0, bottom / 2], right, bottom / 2),
          rectangle("walls", [rake, eave], long, wide),
        ],
        strokes: [{ name: "ridge", from: [0, bottom / 2], to: [right, bottom / 2] }],
        spans: [
          span("length", [rake, bottom], [rake + long, bottom]),
          span("width", [right, eave], [right, eave + wide]),
          span("rakeOverhang", [0, bottom], [rake, bottom]),
          span("eaveOverhang", [right, 0], [right, eave]),
        ],
      }),
      view("elevation", {
        polygons: [
          {
            name: "gable",
            points: [
              [eave, rise - drop],
              [eave + wide / 2, 0],
              [eave + wide, rise - drop],
            ],
          },
        ],
        strokes: [
          { name: "rafter", from: [0, rise], to: [bottom / 2, 0] },
          { name: "rafter", from: [bottom / 2, 0], to: [bottom, rise] },
        ],
        spans: [
          span("rafterLength", [0, rise], [bottom / 2, 0]),
          span("rise", [bottom / 2, rise], [bottom / 2, 0]),
          span("width", [eave, rise], [eave + wide, rise]),
        ],
      }),
    ],
  };
}

export const gableRoof: Calculator<Inputs> = { inputs, results, drawing };
