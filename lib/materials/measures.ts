import { ONE } from "../decimal.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import { type Conversion, convertFor } from "./convert.ts";
import type { Category, Material } from "./material.ts";

const BY_AREA: readonly PurchaseUnit[] = ["square-foot", "square-metre"];
const BY_LENGTH: readonly PurchaseUnit[] = ["linear-foot", "linear-metre"];
const BY_MASS: readonly PurchaseUnit[] = ["kilogram", "pound"];
const BY_VOLUME: readonly PurchaseUnit[] = ["cubic-foot", "cubic-yard", "cubic-metre"];

/** The measures a buyer compares each category by, most usual first. Common practice. */
const USUAL: Readonly<Record<Category, readonly PurchaseUnit[]>> = {
  "sheet-goods": [...BY_AREA, "msf", "msf-3-8"],
  "dimensional-lumber": [...BY_LENGTH, "board-foot", "mbf", "cubic-metre", ...BY_AREA],
  doors: [],
  windows: [],
  roofing: [...BY_AREA, "square", ...BY_LENGTH],
  siding: [...BY_AREA, "square", ...BY_LENGTH],
  insulation: [...BY_AREA, ...BY_LENGTH],
  masonry: ["piece", ...BY_AREA, ...BY_MASS, ...BY_VOLUME],
  fasteners: ["piece", ...BY_MASS],
  other: [...BY_LENGTH, ...BY_AREA, ...BY_MASS],
};

/** A piece that is the unit itself by another word says nothing new. */
function saysMore(unit: PurchaseUnit, read: Conversion): boolean {
  return read.ok && !(unit === "piece" && read.value.equals(ONE));
}

/**
 * The units a price of a material can sensibly be read in: its purchase unit first, then its category's usual measures
 * that its dimensions can reach. Rounds: never.
 */
export function measuresOf(material: Material): PurchaseUnit[] {
  const one = { value: ONE, unit: material.purchaseUnit };
  const reachable = USUAL[material.category].filter(
    (unit) => unit !== material.purchaseUnit && saysMore(unit, convertFor(material, one, unit)),
  );
  return [material.purchaseUnit, ...reachable];
}
