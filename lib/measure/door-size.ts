import { type Decimal, decimal } from "../decimal.ts";

/** A door's width and height. Units: inches. */
export type DoorSize = Readonly<{ width: Decimal; height: Decimal }>;

/** Feet and inches run together, 2868 or 2/8 x 6/8; or inches, 32 x 80. */
const RUN_TOGETHER = /^([1-9])(1[01]|[0-9])([1-9])(1[01]|[0-9])$/;
const FEET_AND_INCHES = /^([1-9])[/-](1[01]|[0-9]) ?[x×] ?([1-9])[/-](1[01]|[0-9])$/i;
const INCHES = /^([1-9]\d{1,2}) ?[x×] ?([1-9]\d{1,2})( ?(?:in|"))?$/i;

function inches(feet = "0", over = "0"): Decimal {
  return decimal(feet).times(12).plus(over);
}

/**
 * A door's size as it is called: "2868" and "2/8 x 6/8" are 2 ft 8 in by 6 ft 8 in, "32 x 80" is in inches; null for
 * anything else ("2x4" is no door). Units: inches. Rounds: never. Source: how doors are called (common practice).
 */
export function doorSizeOf(text: string): DoorSize | null {
  const written = text.trim();
  const feet = RUN_TOGETHER.exec(written) ?? FEET_AND_INCHES.exec(written);
  if (feet !== null) return { width: inches(feet[1], feet[2]), height: inches(feet[3], feet[4]) };
  const plain = INCHES.exec(written);
  return plain === null ? null : { width: decimal(plain[1] ?? 0), height: decimal(plain[2] ?? 0) };
}

/** What a door of a size is called: 32 x 80 in is "2868". Units: inches, whole. Source: as `doorSizeOf`. */
export function doorCall(width: number, height: number): string {
  return [width, height].map((side) => `${Math.floor(side / 12)}${side % 12}`).join("");
}
