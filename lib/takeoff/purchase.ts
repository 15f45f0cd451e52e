import { type Decimal, roundHalfUp } from "../decimal.ts";
import { PACKS } from "../materials/bodies.ts";
import { type ConversionRefusal, convertFor } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import { inUnit, sameMeasure } from "../measure/in-unit.ts";
import { type Quantity, UNITS, type UnitCode } from "../measure/units.ts";
import type { TakeoffLine } from "./result.ts";
import { wholeDown } from "./spacing.ts";
import { TYPED_HERE, type Yield } from "./yield.ts";

/** Why a line cannot be bought as a material: what convertFor says, a piece shorter than the cut, another measure. */
export type PurchaseRefusal = ConversionRefusal | "piece-too-short" | "another-measure";

/** source: where the yield was read; null where a material's own dimensions were used. */
export type Purchase =
  | Readonly<{ ok: true; quantity: Quantity; source: string | null }>
  | Readonly<{ ok: false; reason: PurchaseRefusal }>;

/** A requirement's quantity has at most so many places. */
const PLACES = 6;

/**
 * Whole pieces of a length from which cuts come.
 *     count / floor(piece / cut);   null: not one cut fits
 * Not rounded: the requirement adds waste first and rounds up once. Units: piece and cut alike.
 */
function piecesFor(count: Decimal, piece: Quantity, cut: Quantity): Decimal | null {
  const each = wholeDown(inUnit(piece, cut.unit).dividedBy(cut.value));
  return each.isZero() ? null : count.dividedBy(each);
}

/** What to convert: pieces of the material's own length where it has one and is not bought by length; else all cuts end to end. */
function wanted({ quantity, cut }: TakeoffLine, material: Material): Quantity | null {
  const { length } = material.dimensions;
  if (cut === null) return quantity;
  if (length === undefined || UNITS[material.purchaseUnit].dimension === "length")
    return { value: cut.value.times(quantity.value), unit: cut.unit };
  const value = piecesFor(quantity.value, length, cut);
  return value === null ? null : { value, unit: "piece" };
}

/**
 * A line in a material's purchase units, before waste, by the material's own dimensions.
 *     measured lines: convertFor;   lines cut to a length: pieces / whole cuts in a piece
 * Units: the material's purchase unit. Rounds: never (waste comes first, then one rounding up, rules.md R8); a division
 * that does not end, to 40 digits. What the dimensions do not say is refused with its reason. Stock is never taken off.
 */
export function purchaseOf(line: TakeoffLine, material: Material): Purchase {
  const quantity = wanted(line, material);
  if (quantity === null) return { ok: false, reason: "piece-too-short" };
  const read = convertFor(material, quantity, material.purchaseUnit);
  return read.ok
    ? { ok: true, quantity: { value: read.value, unit: read.unit }, source: null }
    : { ok: false, reason: read.reason };
}

/**
 * A line in purchase units, before waste, by what one of them gives.
 *     quantity / yield;   lines cut to a length from pieces of one: pieces / whole cuts in a piece
 * Units: the yield's purchase unit. Rounds: as purchaseOf. Refused: a yield of another measure than the line.
 */
export function purchaseByYield(
  { cut, quantity }: Pick<TakeoffLine, "cut" | "quantity">,
  { unit, holds, source }: Yield,
): Purchase {
  if (cut !== null && sameMeasure(holds.unit, cut.unit)) {
    const value = piecesFor(quantity.value, holds, cut);
    return value === null
      ? { ok: false, reason: "piece-too-short" }
      : { ok: true, quantity: { value, unit }, source };
  }
  if (!sameMeasure(quantity.unit, holds.unit)) return { ok: false, reason: "another-measure" };
  const value = quantity.value.dividedBy(inUnit(holds, quantity.unit));
  return { ok: true, quantity: { value, unit }, source };
}

/** Bought by what one holds: bags, bundles, boxes, rolls. */
const HOLDING: readonly UnitCode[] = [...PACKS, "roll"];

/** Whether a line could be bought as a material if only it were known what one purchase unit of it gives. */
export function lacksYield(line: TakeoffLine, material: Material): boolean {
  return HOLDING.includes(material.purchaseUnit) && !purchaseOf(line, material).ok;
}

/**
 * A line in purchase units, before waste: by the material's own dimensions, or where they do not say, by what a person
 * typed that one gives.
 * Units, rounds, refused: as purchaseOf and purchaseByYield.
 */
export function purchaseTyped(line: TakeoffLine, material: Material, holds: Quantity | null): Purchase {
  const own = purchaseOf(line, material);
  if (own.ok || holds === null) return own;
  return purchaseByYield(line, { unit: material.purchaseUnit, holds, source: TYPED_HERE });
}

/** A quantity as a requirement keeps it. Units: as given. Rounds: half up to 6 places, a millionth of a unit. */
export function asRequirement({ value, unit }: Quantity): Quantity {
  return { value: roundHalfUp(value, PLACES), unit };
}
