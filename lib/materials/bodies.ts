import { Decimal, ONE } from "../decimal.ts";
import { inUnit } from "../measure/in-unit.ts";
import { type Dimension, type Quantity, UNITS, type UnitCode } from "../measure/units.ts";
import type { Material } from "./material.ts";

/** Things that hold pieces. A sheet, a piece, one "each" and a roll are the piece. */
export const PACKS: readonly UnitCode[] = ["bundle", "bag", "box"];

/** Packs (bundle, bag, box) and the pieces in them are two measures; the rest are those of `lib/measure`. */
export type Measured = "pack" | "piece" | Exclude<Dimension, "count">;

/** How much a body of a material measures, in base units (those of `lib/measure`). */
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

/** What weighs by its size: volume x density; undefined without either. */
function weighed(volume: Decimal | undefined, density: Quantity | undefined): Decimal | undefined {
  return times(volume, product(density));
}

/** Twelve packs where the material knows packs, else twelve pieces. Coverage, yield and weight are of one purchase unit. */
function twelveUnits(material: Material): Body {
  const { dimensions } = material;
  const { length, faceWidth, faceLength = length, coverageWidth = faceWidth } = dimensions;
  const { thickness, width, nominalThickness, density } = dimensions;
  const boughtByPack = PACKS.includes(material.purchaseUnit);
  const inPack = dimensions.pieces?.value;
  const pieces = boughtByPack || inPack ? times(inPack, TWELVE) : TWELVE;
  const units = boughtByPack ? TWELVE : pieces;
  const actual = times(
    product(thickness, width, length) ?? product(thickness, faceWidth, faceLength),
    pieces,
  );
  return {
    pack: boughtByPack || inPack ? TWELVE : undefined,
    piece: pieces,
    length: times(product(dimensions.coverageLength), units) ?? times(product(length), pieces),
    area: times(product(dimensions.coverage), units) ?? times(product(coverageWidth, faceLength), pieces),
    board: times(boardFeetOfTwelve(material, length), pieces?.dividedBy(TWELVE)),
    panel: times(product(nominalThickness, faceWidth, faceLength), pieces),
    volume: times(product(dimensions.yield), units) ?? actual,
    mass: times(product(dimensions.weight), units) ?? weighed(actual, density),
  };
}

/** Twelve running feet: what is sold by length needs no length of a piece. */
function twelveFeet(material: Material): Body {
  const foot: Quantity = { value: ONE, unit: "linear-foot" };
  const twelve: Quantity = { value: TWELVE, unit: "linear-foot" };
  const { thickness, width, faceWidth, coverageWidth, nominalThickness, density } = material.dimensions;
  const volume = product(thickness, width ?? faceWidth, twelve);
  return {
    length: product(twelve),
    area: product(coverageWidth ?? faceWidth, twelve),
    board: boardFeetOfTwelve(material, foot),
    panel: product(nominalThickness, faceWidth, twelve),
    volume,
    mass: weighed(volume, density),
  };
}

/** Twelve cubic feet of what is sold loose, by volume or by weight. */
function twelveCubicFeet(material: Material): Body {
  const volume = product({ value: TWELVE, unit: "cubic-foot" });
  return { volume, mass: weighed(volume, material.dimensions.density) };
}

/**
 * What the dimensions of a material say about it: twelve purchase units (coverage wins over width covered x face
 * length for area; a face without a length is as long as the piece; a weight wins over density x actual size), then
 * twelve running feet, then twelve cubic feet. Twelve, so that board feet need no division and stay exact. Units: base
 * units. Rounds: only a size whose inches or feet do not end, and pounds per cubic foot, to 40 digits.
 */
export function measuredBodies(material: Material): readonly Body[] {
  return [twelveUnits(material), twelveFeet(material), twelveCubicFeet(material)];
}
