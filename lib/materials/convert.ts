import { type Decimal, decimal, ONE, roundUpToStep } from "../decimal.ts";
import { inUnit, sameMeasure } from "../measure/in-unit.ts";
import { type PurchaseUnit, type Quantity, UNITS, type UnitCode } from "../measure/units.ts";
import { type Measured, measuredBodies, PACKS } from "./bodies.ts";
import type { Material } from "./material.ts";

/** Why a material cannot be read in a unit: what is not known of it, or what makes no sense. */
export const CONVERSION_REFUSALS = [
  "pieces-unknown",
  "length-unknown",
  "nominal-size-unknown",
  "area-unknown",
  "length-cannot-cover-area",
  "actual-size-unknown",
  "weight-unknown",
  "another-pack",
] as const;
export type ConversionRefusal = (typeof CONVERSION_REFUSALS)[number];

export type Conversion =
  | Readonly<{ ok: true; value: Decimal; unit: UnitCode }>
  | Readonly<{ ok: false; reason: ConversionRefusal }>;

function measureOf(unit: UnitCode): Measured {
  const { dimension } = UNITS[unit];
  if (dimension !== "count") return dimension;
  return PACKS.includes(unit) ? "pack" : "piece";
}

/** A box is not a bundle and a roll is no sheet: another word than the one it is bought by is not guessed at. */
function anotherPack(material: Material, unit: UnitCode): boolean {
  const own = material.purchaseUnit;
  if (PACKS.includes(own)) return PACKS.includes(unit) && unit !== own;
  return (own === "sheet" && unit === "roll") || (own === "roll" && unit === "sheet");
}

function refusal(material: Material, from: Measured, to: Measured): ConversionRefusal {
  const pair = [from, to];
  if (pair.includes("length") && pair.includes("area")) return "length-cannot-cover-area";
  const { dimensions } = material;
  const weighed = dimensions.weight !== undefined || dimensions.density !== undefined;
  if ((pair.includes("mass") && !weighed) || pair.includes("density")) return "weight-unknown";
  if (pair.includes("area")) {
    const width = dimensions.coverageWidth ?? dimensions.faceWidth;
    const face = width !== undefined && (dimensions.faceLength ?? dimensions.length) !== undefined;
    if (dimensions.coverage === undefined && !face) return "area-unknown";
  }
  if (pair.includes("board") && !(dimensions.nominalThickness && dimensions.nominalWidth))
    return "nominal-size-unknown";
  if (pair.includes("panel") && !(dimensions.nominalThickness && dimensions.faceWidth))
    return "nominal-size-unknown";
  const section = dimensions.thickness && (dimensions.width || dimensions.faceWidth);
  const bySize = pair.includes("volume") || (pair.includes("mass") && dimensions.weight === undefined);
  if (bySize && !section) return "actual-size-unknown";
  if ((pair.includes("pack") || PACKS.includes(material.purchaseUnit)) && dimensions.pieces === undefined)
    return "pieces-unknown";
  return "length-unknown";
}

/**
 * A quantity of a material read in another unit, through the material's dimensions only.
 *     value x (what one body of it measures in `to`) / (what the same body measures in `from`)
 * Units: any. Rounds: only a division that does not end, to 40 digits. Never guesses: what the dimensions do not say is
 * a refusal with its reason. Board feet and the 3/8 in basis come from nominal sizes, volume from actual ones, weight from what one weighs
 * or else from actual sizes.
 * Source: rules.md R4 (a price per MBF and per piece of one board agree to the cent).
 */
export function convertFor(material: Material, quantity: Quantity, to: UnitCode): Conversion {
  if (sameMeasure(quantity.unit, to)) return { ok: true, value: inUnit(quantity, to), unit: to };
  if (anotherPack(material, quantity.unit) || anotherPack(material, to))
    return { ok: false, reason: "another-pack" };
  const from = measureOf(quantity.unit);
  const target = measureOf(to);
  // Two words for one piece; two kinds of pack are never one.
  if (from === target)
    return from === "piece"
      ? { ok: true, value: quantity.value, unit: to }
      : { ok: false, reason: "another-pack" };
  for (const body of measuredBodies(material)) {
    const over = body[from];
    const by = body[target];
    if (over === undefined || by === undefined || over.isZero()) continue;
    const value = quantity.value
      .times(UNITS[quantity.unit].factor)
      .times(by)
      .dividedBy(over.times(UNITS[to].factor));
    return { ok: true, value, unit: to };
  }
  return { ok: false, reason: refusal(material, from, target) };
}

/** The smallest part of a unit a store sells: a thousandth of an MBF or MSF (one board foot, one square foot), whatever its basis, else one whole. */
export function purchaseStep(unit: PurchaseUnit): Decimal {
  return unit === "mbf" || unit === "msf" || unit === "msf-3-8" ? decimal("0.001") : ONE;
}

/** A quantity rounded up, once, to what can be bought. Units: `unit` in and out. Source: rules.md R8. */
export function roundUpToPurchase(value: Decimal, unit: PurchaseUnit): Decimal {
  return roundUpToStep(value, purchaseStep(unit));
}
