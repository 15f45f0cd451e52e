import { type Decimal, ZERO } from "../decimal.ts";
import type { UnitSystem } from "../measure/unit-system.ts";
import { areaIn, line, measure, runIn, type TakeoffLine, type TakeoffMeasure } from "./result.ts";

/** What a roof is measured by, in square inches and inches, or square millimetres and millimetres. */
export type RoofMeasures = Readonly<{
  roofArea: Decimal;
  eaves: Decimal;
  rakes: Decimal;
  ridges: Decimal;
  hips: Decimal;
  valleys: Decimal;
  /** The upper edge of a shed roof. */
  highEdges: Decimal;
}>;

/** No edges of any kind, to start from. */
export const NO_EDGES = {
  eaves: ZERO,
  rakes: ZERO,
  ridges: ZERO,
  hips: ZERO,
  valleys: ZERO,
  highEdges: ZERO,
} as const;

/** The lengths of a roof's edges as measures, in the order of the formulas; those there are none of are left out. */
export function edgeMeasures(
  roof: RoofMeasures,
  formulas: Readonly<Partial<Record<keyof RoofMeasures, string>>>,
  system: UnitSystem,
): TakeoffMeasure[] {
  const names = Object.keys(formulas) as (keyof RoofMeasures)[];
  return names
    .filter((name) => name !== "roofArea")
    .map((name) => measure(name, runIn(system, roof[name]), formulas[name] ?? name));
}

/**
 * What covers a roof.
 *     sheathing, underlayment, shingles: the sloped area · starter: eaves (+ rakes) · ridge cap: ridges + hips
 *     valley lining: valleys · edge trim: eaves + rakes + high edges · ice barrier: eaves + valleys, one course
 * Units: square feet and feet, or square metres and metres, before waste and laps (coverage is the material's). Rounds:
 * never. Source: common practice; the wrapper says whether starter runs up the rakes, the local code how far an ice
 * barrier goes.
 */
export function coveringLines(
  roof: RoofMeasures,
  starterAlongRakes: boolean,
  system: UnitSystem,
): TakeoffLine[] {
  const area = areaIn(system, roof.roofArea);
  const { eaves, rakes, ridges, hips, valleys, highEdges } = roof;
  const starter = starterAlongRakes ? eaves.plus(rakes) : eaves;
  return [
    ...line("roofSheathing", area, "roofArea"),
    ...line("underlayment", area, "roofArea"),
    ...line("shingles", area, "roofArea"),
    ...line("starter", runIn(system, starter), starterAlongRakes ? "eaves + rakes" : "eaves"),
    ...line("ridgeCap", runIn(system, ridges.plus(hips)), "ridges + hips"),
    ...line("valleyLining", runIn(system, valleys), "valleys"),
    ...line("edgeTrim", runIn(system, eaves.plus(rakes).plus(highEdges)), "eaves + rakes + highEdges"),
    ...line("iceBarrier", runIn(system, eaves.plus(valleys)), "eaves + valleys"),
  ];
}
