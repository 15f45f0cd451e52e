import { type Decimal, decimal } from "../decimal.ts";
import type { Quantity } from "../measure/units.ts";

/** A dressed, dry softwood size. poundsPerFoot: at 35 lb per cubic foot, two decimals as printed; null where not printed. */
export type DressedSize = Readonly<{
  name: string;
  nominalThickness: Quantity;
  nominalWidth: Quantity;
  thickness: Quantity;
  width: Quantity;
  poundsPerFoot: Decimal | null;
  fromMemory: boolean;
}>;

function inches(value: string): Quantity {
  return { value: decimal(value), unit: "inch" };
}

function size(
  name: string,
  [nominalThickness, nominalWidth]: readonly [string, string],
  [thickness, width]: readonly [string, string],
  poundsPerFoot: string | null,
): DressedSize {
  return {
    name,
    nominalThickness: inches(nominalThickness),
    nominalWidth: inches(nominalWidth),
    thickness: inches(thickness),
    width: inches(width),
    poundsPerFoot: poundsPerFoot === null ? null : decimal(poundsPerFoot),
    fromMemory: poundsPerFoot === null,
  };
}

/**
 * Nominal to dressed size of common softwood lumber, in inches. The width of an 8 loses three quarters, not a half.
 * Source: PS 20 American Softwood Lumber Standard, as tabulated in "Softwood Lumber Dimensions" (engineering reference
 * page); those without a weight per foot from memory.
 */
export const DRESSED_SIZES: readonly DressedSize[] = [
  size("1x2", ["1", "2"], ["0.75", "1.5"], "0.27"),
  size("1x4", ["1", "4"], ["0.75", "3.5"], "0.64"),
  size("1x6", ["1", "6"], ["0.75", "5.5"], "1.00"),
  size("1x8", ["1", "8"], ["0.75", "7.25"], "1.32"),
  size("1x10", ["1", "10"], ["0.75", "9.25"], "1.69"),
  size("1x12", ["1", "12"], ["0.75", "11.25"], "2.05"),
  size("2x4", ["2", "4"], ["1.5", "3.5"], "1.28"),
  size("2x6", ["2", "6"], ["1.5", "5.5"], "2.00"),
  size("2x8", ["2", "8"], ["1.5", "7.25"], "2.64"),
  size("2x10", ["2", "10"], ["1.5", "9.25"], "3.37"),
  size("2x12", ["2", "12"], ["1.5", "11.25"], "4.10"),
  size("4x4", ["4", "4"], ["3.5", "3.5"], "2.98"),
  size("5/4x6", ["1.25", "6"], ["1", "5.5"], null),
  size("1x3", ["1", "3"], ["0.75", "2.5"], null),
  size("2x2", ["2", "2"], ["1.5", "1.5"], null),
  size("2x3", ["2", "3"], ["1.5", "2.5"], null),
  size("4x6", ["4", "6"], ["3.5", "5.5"], null),
  size("6x6", ["6", "6"], ["5.5", "5.5"], null),
];

/** The dressed size of a nominal one ("2x4"), or null when it is not in the table: never computed by a rule of thumb. */
export function dressedSize(name: string): DressedSize | null {
  return DRESSED_SIZES.find((entry) => entry.name === name.trim().toLowerCase().replace("×", "x")) ?? null;
}
