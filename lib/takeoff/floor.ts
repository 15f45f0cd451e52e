import type * as z from "zod";
import { fields } from "../entry-fields.ts";
import { UNITS_OF, type UnitSystem } from "../measure/unit-system.ts";
import type { Calculator } from "./calculator.ts";
import { crossChecked } from "./fields.ts";
import { drawnJoists, joistFields, joistLines } from "./joists.ts";
import { drawnOpenings, openingArea, openingFaults, openings } from "./openings.ts";
import { areaIn, line, measure, type TakeoffResult } from "./result.ts";

function inputs(system: UnitSystem) {
  const entry = fields({ ...joistFields(system), openings: openings(system) });
  return crossChecked(entry, (given) =>
    openingFaults(given.openings, [given.length, given.span], "openings"),
  );
}
type Inputs = z.output<ReturnType<typeof inputs>>;

/**
 * A rectangular floor: joists, rims and what lies on them.
 *     subfloor = length x span - openings
 * Units: pieces; feet and square feet, or metres. Rounds: joists up to the next whole. Source: common practice of framing.
 */
function results(given: Inputs, system: UnitSystem): TakeoffResult {
  const whole = given.length.times(given.span);
  const open = openingArea(given.openings);
  const net = areaIn(system, whole.minus(open));
  return {
    measures: [
      measure("floorArea", areaIn(system, whole), "length × span"),
      measure("openingArea", areaIn(system, open), "sum(openings)"),
      measure("netArea", net, "floorArea − openingArea"),
    ],
    lines: [...joistLines(given, system), ...line("subfloor", net, "netArea")],
  };
}

export const floor: Calculator<Inputs> = {
  inputs,
  results,
  drawing: (given, system) => ({
    unit: UNITS_OF[system].length,
    views: [drawnJoists(given, { polygons: drawnOpenings(given.openings, [0, 0], given.length.toNumber()) })],
  }),
};
