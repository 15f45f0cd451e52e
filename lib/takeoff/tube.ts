import type * as z from "zod";
import { Decimal } from "../decimal.ts";
import { fields } from "../entry-fields.ts";
import { UNITS_OF, type UnitSystem } from "../measure/unit-system.ts";
import type { Calculator } from "./calculator.ts";
import { type Drawing, type Point, rectangle, span, view } from "./drawing.ts";
import { count, length } from "./fields.ts";
import { areaIn, line, measure, type TakeoffResult, volumeIn } from "./result.ts";

const PI = Decimal.acos(-1);
const CORNERS = 48;

/** diameter: inside of the form. */
function inputs(system: UnitSystem) {
  return fields({ diameter: length(system), height: length(system), count: count().prefault("1") });
}
type Inputs = z.output<ReturnType<typeof inputs>>;

/**
 * Concrete of round piers.
 *     volume = pi x (diameter / 2)^2 x height x count
 * Units: cubic feet or cubic metres. Rounds: pi, to 40 digits. Source: Archimedes.
 */
function results(given: Inputs, system: UnitSystem): TakeoffResult {
  const radius = given.diameter.dividedBy(2);
  const circle = radius.times(radius).times(PI);
  return {
    measures: [measure("circleArea", areaIn(system, circle), "pi × (diameter / 2)²")],
    lines: line(
      "concrete",
      volumeIn(system, circle.times(given.height).times(given.count)),
      "circleArea × height × count",
    ),
  };
}

/** One pier from above and from the side. Units: inches or millimetres. */
function drawing(given: Inputs, system: UnitSystem): Drawing {
  const [wide, high] = [given.diameter.toNumber(), given.height.toNumber()];
  const circle = Array.from({ length: CORNERS }, (_, corner): Point => {
    const angle = (corner / CORNERS) * 2 * Math.PI;
    return [(wide / 2) * (1 + Math.cos(angle)), (wide / 2) * (1 + Math.sin(angle))];
  });
  return {
    unit: UNITS_OF[system].length,
    views: [
      view("plan", {
        polygons: [{ name: "concrete", points: circle }],
        spans: [span("diameter", [0, wide / 2], [wide, wide / 2])],
      }),
      view("elevation", {
        polygons: [rectangle("concrete", [0, 0], wide, high)],
        spans: [span("height", [wide, high], [wide, 0]), span("diameter", [0, high], [wide, high])],
      }),
    ],
  };
}

export const tube: Calculator<Inputs> = { inputs, results, drawing };
