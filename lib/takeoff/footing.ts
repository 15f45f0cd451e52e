import type * as z from "zod";
import { fields, listOf, withRules } from "../entry-fields.ts";
import { UNITS_OF, type UnitSystem } from "../measure/unit-system.ts";
import type { Calculator } from "./calculator.ts";
import { type Drawing, rectangle, span, view } from "./drawing.ts";
import { length } from "./fields.ts";
import { line, measure, runIn, sumOf, type TakeoffResult, volumeIn } from "./result.ts";

const MOST_RUNS = 60;

/** Strip footings of one section. runs: their lengths, corners counted in one of the two that meet. */
function inputs(system: UnitSystem) {
  const entry = fields({
    runs: listOf(fields({ length: length(system) }), MOST_RUNS),
    width: length(system),
    depth: length(system),
  });
  return withRules(entry, [
    { path: "runs", code: "missing", broken: ({ runs }) => Array.isArray(runs) && runs.length === 0 },
  ]);
}
type Inputs = z.output<ReturnType<typeof inputs>>;

/**
 * Concrete of strip footings.
 *     volume = sum of lengths x width x depth
 * Units: cubic feet or cubic metres. Rounds: only a division that does not end, to 40 digits. Source: geometry.
 */
function results(given: Inputs, system: UnitSystem): TakeoffResult {
  const run = sumOf(given.runs.map((one) => one.length));
  return {
    measures: [measure("runLength", runIn(system, run), "sum(length)")],
    lines: line(
      "concrete",
      volumeIn(system, run.times(given.width).times(given.depth)),
      "runLength × width × depth",
    ),
  };
}

/** The runs one under another from above, and the section. Units: inches or millimetres. */
function drawing(given: Inputs, system: UnitSystem): Drawing {
  const [wide, deep] = [given.width.toNumber(), given.depth.toNumber()];
  const runs = given.runs.map((one, index) => ({ y: index * wide * 2, long: one.length.toNumber() }));
  return {
    unit: UNITS_OF[system].length,
    views: [
      view("plan", {
        polygons: runs.map(({ y, long }) => rectangle("concrete", [0, y], long, wide)),
        // Runs of one length are marked once.
        spans: runs
          .filter(({ long }, at) => runs.findIndex((other) => other.long === long) === at)
          .map(({ y, long }) => span("length", [0, y + wide], [long, y + wide])),
      }),
      view("section", {
        polygons: [rectangle("concrete", [0, 0], wide, deep)],
        spans: [span("width", [0, deep], [wide, deep]), span("depth", [wide, deep], [wide, 0])],
      }),
    ],
  };
}

export const footing: Calculator<Inputs> = { inputs, results, drawing };
