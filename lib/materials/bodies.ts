import { Decimal, ONE } from "../decimal.ts";
import { inUnit } from "../measure/in-unit.ts";
import { type Dimension, type Quantity, UNITS, type UnitCode } from "../measure/units.ts";
import type { Material } from "./material.ts";

/** Packs (bundle, bag, box) and the pieces in them are two measures; the rest are those of `lib/measure`. */
export type Measured = "pack" | "piece" | Exclude<Dimension, "count">;

/** How much a body of a material measures, in base units (metre, square metre, cubic metre, kilogram, board foot). */
export type Body = Readonly<Partial<Record<Measured, Decimal>>>;

/** Under one inch thick counts as one inch. Source: Engineering Aid Basic, chapter 6, board measure. */
const LEAST_THICKNESS = ONE;

function product(...quantities: readonly (Quantity | undefined)[]): Decimal | undefined {
  let total = ONE;
  for (const quantity of quantities) {
    if (quantity === undefined) return undefined;
    total = total.times(quantity.value).times(UNITS[quantity.unit].factor);
  }
  return total;
}

function boardFeet(material: Material, length: Quantity | undefined): Decimal | undefined {
  const { nominalThickness, nominalWidth } = material.dimensions;
  if (!nominalThickness || !nominalWidth || !length) return undefined;
  const thickness = Decimal.max(inUnit(nominalThickness, "inch"), LEAST_THICKNESS);
  return thickness.times(inUnit(nominalWidth, "inch")).times(inUnit(length, "linear-foot")).dividedBy(12);
}

const PACKS: readonly UnitCode[] = ["bundle", "bag", "box"];

function times(value: Decimal | undefined, count: Decimal | undefined): Decimal | undefined {
  return value === undefined || count === undefined ? undefined : value.times(count);
}

/** One pack where the material knows packs, else one piece. Coverage and weight are of one purchase unit. */
function unitBody(material: Material): Body {
  const { dimensions } = material;
  const { length, faceWidth, faceLength = length, thickness, width } = dimensions;
  const boughtByPack = PACKS.includes(material.purchaseUnit);
  const pieces = dimensions.pieces?.value;
  const count = boughtByPack || pieces ? pieces : ONE;
  const units = boughtByPack ? ONE : count;
  return {
    pack: boughtByPack || pieces ? ONE : undefined,
    piece: count,
    length: times(product(length), count),
    area: times(product(dimensions.coverage), units) ?? times(product(faceWidth, faceLength), count),
    board: times(boardFeet(material, length), count),
    volume: times(product(thickness, width, length) ?? product(thickness, faceWidth, faceLength), count),
    mass: times(product(dimensions.weight), units),
  };
}

/** One running foot: what is sold by length needs no length of a piece. */
function runningFoot(material: Material): Body {
  const foot: Quantity = { value: ONE, unit: "linear-foot" };
  const { thickness, width, faceWidth } = material.dimensions;
  return {
    length: product(foot),
    area: product(faceWidth, foot),
    board: boardFeet(material, foot),
    volume: product(thickness, width ?? faceWidth, foot),
  };
}

/**
 * What the dimensions of a material say about it: one purchase unit (coverage wins over face width x face length for
 * area), then one running foot. Units: base units. Rounds: board feet of a length that does not divide by 12, to 40 digits.
 */
export function measuredBodies(material: Material): readonly Body[] {
  return [unitBody(material), runningFoot(material)];
}
