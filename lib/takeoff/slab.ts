import type * as z from "zod";
import { fields } from "../entry-fields.ts";
import { UNITS_OF, type UnitSystem } from "../measure/unit-system.ts";
import type { Calculator } from "./calculator.ts";
import { type Drawing, rectangle, span, view } from "./drawing.ts";
import { count, length } from "./fields.ts";
import { areaIn, line, measure, type TakeoffResult, volumeIn } from "./result.ts";

/** A slab, or a footing: length of the run, width, thickness (depth), and how many alike. */
function inputs(system: UnitSystem) {
  return fields({
    length: length(system),
    width: length(system),
    thickness: length(system),
    count: count().prefault("1"),
  });
}
type Inputs = z.output<ReturnType<typeof inputs>>;

/**
 * Concrete of a rectangular slab or strip footing.
 *     volume = length x width x thickness x count
 * Units: cubic feet or cubic metres (yards and bags through what is bought). Rounds: only a division that does not end,
 * to 40 digits. Source: geometry.
 */
function results(given: Inputs, system: UnitSystem): TakeoffResult {
  const plan = given.length.times(given.width).times(given.count);
  return {
    measures: [measure("planArea", areaIn(system, plan), "length × width × count")],
    lines: line("concrete", volumeIn(system, plan.times(given.thickness)), "planArea × thickness"),
  };
}

/** From above and cut through. Units: inches or millimetres. */
function drawing(given: Inputs, system: UnitSystem): Drawing {
  const [long, wide, thick] = [
    given.length.toNumber(),
    given.width.toNumber(),
    given.thickness.toNumber(),
  ] as const;
  return {
    unit: UNITS_OF[system].length,
    views: [
      view("plan", {
        polygons: [rectangle("concrete", [0, 0], long, wide)],
        spans: [span("length", [0, wide], [long, wide]), span("width", [long, wide], [long, 0])],
      }),
      view("section", {
        polygons: [rectangle("concrete", [0, 0], wide, thick)],
        spans: [span("width", [0, thick], [wide, thick]), span("thickness", [wide, thick], [wide, 0])],
      }),
    ],
  };
}

export const slab: Calculator<Inputs> = { inputs, results, drawing };
