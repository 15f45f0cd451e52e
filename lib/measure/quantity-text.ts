import { type Decimal, decimal } from "../decimal.ts";
import { unitNamed } from "./unit-aliases.ts";
import type { Quantity } from "./units.ts";

/** A number as written on a tape or a tag: 48, 3.5, 5/8, 92-5/8, 92 5/8. */
const NUMBER = String.raw`(?:(\d+)[\s-]+)?(\d+)\/(\d+)|(\d+(?:\.\d+)?|\.\d+)`;
const WRITTEN = new RegExp(String.raw`^(?:${NUMBER})\s*(.*)$`, "s");
const FEET_AND_INCHES = /^(\d+)\s*(?:'|′|ft\.?|feet|foot)[\s-]*(\d.*)$/i;

/** Digits beyond this are no size of a material. */
const LONGEST = 60;

function numberOf(whole?: string, over?: string, under?: string, plain?: string): Decimal | null {
  if (plain !== undefined) return decimal(plain);
  if (over === undefined || under === undefined || /^0+$/.test(under)) return null;
  return decimal(over)
    .dividedBy(under)
    .plus(whole ?? 0);
}

function simple(text: string): Quantity | null {
  const [, whole, over, under, plain, word] = WRITTEN.exec(text) ?? [];
  const value = numberOf(whole, over, under, plain);
  const unit = unitNamed(word ?? "");
  return value === null || unit === null ? null : { value, unit };
}

/**
 * A quantity as a person writes it, or null: "48 in", "92-5/8 in", "1220 mm", "8 ft", "8' 6-1/2\"" (read in inches).
 * A number without a unit, a comma or a sign is null: it is not guessed at. Rounds: only a fraction that does not end
 * (1/3), to 40 digits.
 */
export function quantityOf(text: string): Quantity | null {
  const written = text.trim();
  if (written.length > LONGEST) return null;
  const [, feet, rest] = FEET_AND_INCHES.exec(written) ?? [];
  if (feet === undefined || rest === undefined) return simple(written);
  const inches = simple(rest);
  if (inches?.unit !== "inch") return null;
  return { value: decimal(feet).times(12).plus(inches.value), unit: "inch" };
}
