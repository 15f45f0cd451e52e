import type * as z from "zod";
import { fields, flag } from "../entry-fields.ts";
import { UNITS_OF, type UnitSystem } from "../measure/unit-system.ts";
import type { Calculator } from "./calculator.ts";
import { type Drawing, rectangle, type Span, span, view } from "./drawing.ts";
import { area, length } from "./fields.ts";
import { areaIn, measure, type TakeoffResult } from "./result.ts";
import { coveringLines } from "./roof-measures.ts";

const SQUARE = { imperial: 144, metric: 1_000_000 } as const;
const EDGES = ["eaves", "rakes", "ridges", "hips", "valleys", "highEdges"] as const;

/** A roof already measured: its sloped area and the lengths of its edges; what there is none of is 0. */
function inputs(system: UnitSystem) {
  const edge = length(system, { zero: true }).prefault("0");
  return fields({
    slopedArea: area(system),
    eaves: length(system),
    rakes: edge,
    ridges: edge,
    hips: edge,
    valleys: edge,
    highEdges: edge,
    starterAlongRakes: flag().default(false),
  });
}
type Inputs = z.output<ReturnType<typeof inputs>>;

/** What covers a measured roof: see coveringLines. Units: square feet and feet, or metres. Rounds: never. */
function results(given: Inputs, system: UnitSystem): TakeoffResult {
  const roof = { ...given, roofArea: given.slopedArea.times(SQUARE[system]) };
  return {
    measures: [measure("roofArea", areaIn(system, roof.roofArea), "slopedArea")],
    lines: coveringLines(roof, given.starterAlongRakes, system),
  };
}

/** A square as large as the roof, and its edges as lines one under another. Units: inches or millimetres. */
function drawing(given: Inputs, system: UnitSystem): Drawing {
  const side = Math.sqrt(given.slopedArea.times(SQUARE[system]).toNumber());
  const some = EDGES.filter((name) => !given[name].isZero());
  const edges = some.map((name, index): Span => {
    const y = side * (1.1 + 0.1 * index);
    return span(name, [0, y], [given[name].toNumber(), y]);
  });
  return {
    unit: UNITS_OF[system].length,
    views: [view("parts", { polygons: [rectangle("surface", [0, 0], side, side)], spans: edges })],
  };
}

export const roofing: Calculator<Inputs> = { inputs, results, drawing };
