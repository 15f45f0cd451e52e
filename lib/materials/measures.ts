import { ONE } from "../decimal.ts";
import type { UnitCode } from "../measure/units.ts";
import { type Conversion, convertFor } from "./convert.ts";
import type { Category, Material } from "./material.ts";

const BY_AREA: readonly UnitCode[] = ["square-foot", "square-metre"];
const BY_LENGTH: readonly UnitCode[] = ["linear-foot", "linear-metre"];
const BY_MASS: readonly UnitCode[] = ["kilogram", "pound"];
const BY_VOLUME: readonly UnitCode[] = ["cubic-foot", "cubic-yard", "cubic-metre"];

/** The measures a buyer compares each category by, most usual first. Common practice. */
const USUAL: Readonly<Record<Category, readonly UnitCode[]>> = {
  "sheet-goods": [...BY_AREA, "msf", "msf-3-8"],
  "dimensional-lumber": [...BY_LENGTH, "board-foot", "mbf", "cubic-metre", ...BY_AREA],
  doors: [],
  windows: [],
  roofing: [...BY_AREA, "square", ...BY_LENGTH, "piece"],
  siding: [...BY_AREA, "square", ...BY_LENGTH, "piece"],
  insulation: [...BY_AREA, ...BY_LENGTH, "piece", "cubic-foot", "cubic-metre"],
  masonry: ["piece", ...BY_AREA, ...BY_MASS, ...BY_VOLUME],
  fasteners: ["piece", ...BY_MASS],
  other: ["piece", ...BY_LENGTH, ...BY_AREA, ...BY_MASS, "litre"],
};

/** A piece that is the unit itself by another word says nothing new. */
function saysMore(unit: UnitCode, read: Conversion): boolean {
  return read.ok && !(unit === "piece" && read.value.equals(ONE));
}

/**
 * The units a price of a material can sensibly be read in: its purchase unit first, then its category's usual measures
 * that its dimensions can reach. Rounds: never.
 */
export function measuresOf(material: Material): UnitCode[] {
  const one = { value: ONE, unit: material.purchaseUnit };
  const reachable = USUAL[material.category].filter(
    (unit) => unit !== material.purchaseUnit && saysMore(unit, convertFor(material, one, unit)),
  );
  return [material.purchaseUnit, ...reachable];
}
