import type { Decimal } from "../decimal.ts";

/** What a unit measures. "board" is nominal lumber measure, kept apart from real volume; "count" is things as sold. */
export type Dimension = "count" | "length" | "area" | "board" | "volume" | "mass";

/** Units a price or a quantity can be stated in. */
export const PURCHASE_UNITS = [
  "sheet",
  "piece",
  "each",
  "bundle",
  "roll",
  "bag",
  "box",
  "linear-foot",
  "linear-metre",
  "square-foot",
  "square-metre",
  "square",
  "board-foot",
  "mbf",
  "msf",
  "cubic-foot",
  "cubic-yard",
  "cubic-metre",
  "pound",
  "kilogram",
] as const;
export type PurchaseUnit = (typeof PURCHASE_UNITS)[number];

/** Further units, for dimensions of a material only. */
export const SIZE_UNITS = ["inch", "millimetre", "centimetre", "tonne", "litre"] as const;
export type UnitCode = PurchaseUnit | (typeof SIZE_UNITS)[number];

export type Quantity = Readonly<{ value: Decimal; unit: UnitCode }>;
