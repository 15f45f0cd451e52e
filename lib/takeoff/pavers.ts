import type * as z from "zod";
import { fields } from "../entry-fields.ts";
import { UNITS_OF, type UnitSystem } from "../measure/unit-system.ts";
import type { Calculator } from "./calculator.ts";
import { type Drawing, marks, rectangle, type Stroke, span, view } from "./drawing.ts";
import { length } from "./fields.ts";
import { areaIn, line, measure, piecesOf, runIn, type TakeoffResult, volumeIn } from "./result.ts";

/** baseBeyond: how far the gravel runs past the pavers on every side. Depths are of the compacted layers. */
function inputs(system: UnitSystem) {
  return fields({
    length: length(system),
    width: length(system),
    paverLength: length(system),
    paverWidth: length(system),
    joint: length(system, { zero: true }),
    baseDepth: length(system, { zero: true }),
    baseBeyond: length(system, { zero: true }),
    sandDepth: length(system, { zero: true }),
  });
}
type Inputs = z.output<ReturnType<typeof inputs>>;

/**
 * Pavers over a rectangle on sand on gravel.
 *     pavers = length x width / ((paver length + joint) x (paver width + joint))
 *     gravel = (length + 2 x beyond) x (width + 2 x beyond) x depth;   sand = length x width x depth
 * Units: pieces; feet, square and cubic feet, or metres. Rounds: never; a division that does not end, to 40 digits. What
 * gravel loses when it is compacted belongs to the waste. Source: geometry of the module with its joint.
 */
function results(given: Inputs, system: UnitSystem): TakeoffResult {
  const surface = given.length.times(given.width);
  const module = given.paverLength.plus(given.joint).times(given.paverWidth.plus(given.joint));
  const beyond = given.baseBeyond.times(2);
  const base = given.length.plus(beyond).times(given.width.plus(beyond));
  const around = given.length.plus(given.width).times(2);
  return {
    measures: [
      measure("pavedArea", areaIn(system, surface), "length × width"),
      measure("moduleArea", areaIn(system, module), "(paverLength + joint) × (paverWidth + joint)"),
      measure("baseArea", areaIn(system, base), "(length + 2 × baseBeyond) × (width + 2 × baseBeyond)"),
    ],
    lines: [
      ...line("pavers", piecesOf(surface.dividedBy(module)), "pavedArea / moduleArea"),
      ...line("gravel", volumeIn(system, base.times(given.baseDepth)), "baseArea × baseDepth"),
      ...line("beddingSand", volumeIn(system, surface.times(given.sandDepth)), "pavedArea × sandDepth"),
      ...line("edging", runIn(system, around), "2 × (length + width)"),
    ],
  };
}

/** The pavers from above on their base, and the layers cut through. Units: inches or millimetres. */
function drawing(given: Inputs, system: UnitSystem): Drawing {
  const [across, down] = [given.length.toNumber(), given.width.toNumber()];
  const past = given.baseBeyond.toNumber();
  const [sand, gravel] = [given.sandDepth.toNumber(), given.baseDepth.toNumber()];
  const joints: Stroke[] = [
    ...marks(across, given.paverLength.plus(given.joint).toNumber()).map(
      (x): Stroke => ({ name: "joint", from: [x, 0], to: [x, down] }),
    ),
    ...marks(down, given.paverWidth.plus(given.joint).toNumber()).map(
      (y): Stroke => ({ name: "joint", from: [0, y], to: [across, y] }),
    ),
  ];
  return {
    unit: UNITS_OF[system].length,
    views: [
      view("plan", {
        polygons: [
          rectangle("gravel", [-past, -past], across + 2 * past, down + 2 * past),
          rectangle("surface", [0, 0], across, down),
        ],
        strokes: joints,
        spans: [
          span("length", [0, down], [across, down]),
          span("width", [across, down], [across, 0]),
          span("baseBeyond", [-past, down], [0, down]),
        ],
      }),
      view("section", {
        polygons: [
          rectangle("sand", [0, 0], across, sand),
          rectangle("gravel", [-past, sand], across + 2 * past, gravel),
        ],
        spans: [
          span("sandDepth", [across, 0], [across, sand]),
          span("baseDepth", [across + past, sand], [across + past, sand + gravel]),
        ],
      }),
    ],
  };
}

export const pavers: Calculator<Inputs> = { inputs, results, drawing };
