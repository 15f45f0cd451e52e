import { type Decimal, ONE, roundUpToStep, ZERO } from "../decimal.ts";
import { convertFor } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import { inUnit } from "../measure/in-unit.ts";
import type { Quantity, UnitCode } from "../measure/units.ts";
import { weightOfOne } from "./load-weight.ts";
import type { SpaceMeasure } from "./place.ts";

/** The unit each measure of space is reckoned in. */
export const SPACE_UNITS = {
  area: "square-metre",
  volume: "cubic-metre",
  weight: "kilogram",
  count: "piece",
} as const satisfies Readonly<Record<SpaceMeasure, UnitCode>>;

/** The floor under one stack of panels: its face; null for what is no panel, whose stack has no floor of its own. */
export function footprint({ dimensions }: Material): Decimal | null {
  const { faceWidth, faceLength = dimensions.length } = dimensions;
  if (faceWidth === undefined || faceLength === undefined) return null;
  return metres(faceWidth).times(metres(faceLength));
}

function metres(size: Quantity): Decimal {
  return inUnit(size, "linear-metre");
}

/** How many are in one stack: what a lift holds; null: not known, and then everything is taken to stand in one stack. */
export function inOneStack({ dimensions }: Material): Decimal | null {
  return dimensions.perLift?.value ?? null;
}

/** Room by actual sizes only: what a bag makes when mixed is not the room it takes. */
function volumeOfOne(material: Material): Decimal | null {
  const { yield: _, ...dimensions } = material.dimensions;
  const one = { value: ONE, unit: material.purchaseUnit };
  const room = convertFor({ ...material, dimensions }, one, "cubic-metre");
  return room.ok ? room.value : null;
}

/** Things as bought; what is bought by measure (MBF, feet) is counted in pieces. */
function countOfOne(material: Material): Decimal | null {
  const one = { value: ONE, unit: material.purchaseUnit };
  const counted: readonly string[] = ["sheet", "piece", "each", "bundle", "roll", "bag", "box"];
  if (counted.includes(material.purchaseUnit)) return ONE;
  const pieces = convertFor(material, one, "piece");
  return pieces.ok ? pieces.value : null;
}

/** What one purchase unit takes of a measure that adds up unit by unit; null: not known, never zero. */
export function spaceOfOne(material: Material, measure: Exclude<SpaceMeasure, "area">): Decimal | null {
  if (measure === "weight") return weightOfOne(material);
  return measure === "volume" ? volumeOfOne(material) : countOfOne(material);
}

/**
 * What so much of one material takes up.
 *     volume, weight, count = quantity x what one takes;  area = face of a panel x stacks
 *     stacks = quantity / what a lift holds, rounded up; one stack where that is not known
 * Units: square metres, cubic metres, kilograms, pieces; quantity in purchase units. null: not known, never zero. Rounds: stacks
 * up. Area is the floor under the stack, not the face of every sheet; boards and what has no face have none (say a volume
 * or a weight for their place). Source: common practice, panels are stored flat in stacks (trade.md W5).
 */
export function spaceOf(material: Material, quantity: Decimal, measure: SpaceMeasure): Decimal | null {
  if (quantity.isZero()) return ZERO;
  if (measure !== "area") return spaceOfOne(material, measure)?.times(quantity) ?? null;
  const floor = footprint(material);
  if (floor === null) return null;
  const stack = inOneStack(material);
  return floor.times(stack === null ? ONE : roundUpToStep(quantity.dividedBy(stack), ONE));
}
