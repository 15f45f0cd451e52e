import { Decimal, ONE } from "../decimal.ts";
import { inUnit } from "../measure/in-unit.ts";
import { type Dimension, type Quantity, UNITS, type UnitCode } from "../measure/units.ts";
import type { Material } from "./material.ts";

/** Things that hold pieces. A sheet, a piece, one "each" and a roll are the piece. */
export const PACKS: readonly UnitCode[] = ["bundle", "bag", "box"];

/** Packs (bundle, bag, box) and the pieces in them are two measures; the rest are those of `lib/measure`. */
export type Measured = "pack" | "piece" | Exclude<Dimension, "count">;

/** How much a body of a material measures, in base units (metre, square metre, cubic metre, kilogram, board foot). */
export type Body = Readonly<Partial<Record<Measured, Decimal>>>;

/** Under one inch thick counts as one inch. Source: Engineering Aid Basic, chapter 6, board measure. */
const LEAST_THICKNESS = ONE;

const TWELVE = new Decimal(12);

function product(...quantities: readonly (Quantity | undefined)[]): Decimal | undefined {
  let total = ONE;
  for (const quantity of quantities) {
    if (quantity === undefined) return undefined;
    total = total.times(quantity.value).times(UNITS[quantity.unit].factor);
  }
  return total;
}

/** Board feet of twelve pieces: thickness (in) x width (in) x length (ft), nominal, without the division by twelve. */
function boardFeetOfTwelve(material: Material, length: Quantity | undefined): Decimal | undefined {
  const { nominalThickness, nominalWidth } = material.dimensions;
  if (!nominalThickness || !nominalWidth || !length) return undefined;
  const thickness = Decimal.max(inUnit(nominalThickness, "inch"), LEAST_THICKNESS);
  return thickness.times(inUnit(nominalWidth, "inch")).times(inUnit(length, "linear-foot"));
}

function times(value: Decimal | undefined, count: Decimal | undefined): Decimal | undefined {
  return value === undefined || count === undefined ? undefined : value.times(count);
}

/** Twelve packs where the material knows packs, else twelve pieces. Coverage and weight are of one purchase unit. */
function twelveUnits(material: Material): Body {
  const { dimensions } = material;
  const { length, faceWidth, faceLength = length, thickness, width } = dimensions;
  const boughtByPack = PACKS.includes(material.purchaseUnit);
  const inPack = dimensions.pieces?.value;
  const pieces = boughtByPack || inPack ? times(inPack, TWELVE) : TWELVE;
  const units = boughtByPack ? TWELVE : pieces;
  return {
    pack: boughtByPack || inPack ? TWELVE : undefined,
    piece: pieces,
    length: times(product(length), pieces),
    area: times(product(dimensions.coverage), units) ?? times(product(faceWidth, faceLength), pieces),
    board: times(boardFeetOfTwelve(material, length), pieces?.dividedBy(TWELVE)),
    volume: times(product(thickness, width, length) ?? product(thickness, faceWidth, faceLength), pieces),
    mass: times(product(dimensions.weight), units),
  };
}

/** Twelve running feet: what is sold by length needs no length of a piece. */
function twelveFeet(material: Material): Body {
  const foot: Quantity = { value: ONE, unit: "linear-foot" };
  const twelve: Quantity = { value: TWELVE, unit: "linear-foot" };
  const { thickness, width, faceWidth } = material.dimensions;
  return {
    length: product(twelve),
    area: product(faceWidth, twelve),
    board: boardFeetOfTwelve(material, foot),
    volume: product(thickness, width ?? faceWidth, twelve),
  };
}

/**
 * What the dimensions of a material say about it: twelve purchase units (coverage wins over face width x face length
 * for area; a face without a length is as long as the piece), then twelve running feet. Twelve, so that board feet need
 * no division and stay exact. Units: base units. Rounds: only a size whose inches or feet do not end, to 40 digits.
 */
export function measuredBodies(material: Material): readonly Body[] {
  return [twelveUnits(material), twelveFeet(material)];
}
