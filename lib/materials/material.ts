import type { LocalDate } from "../calendar/local-date.ts";
import type { PurchaseUnit, Quantity } from "../measure/units.ts";

export const CATEGORIES = [
  "sheet-goods",
  "dimensional-lumber",
  "doors",
  "windows",
  "roofing",
  "siding",
  "insulation",
  "masonry",
  "fasteners",
  "other",
] as const;
export type Category = (typeof CATEGORIES)[number];

/**
 * What one purchase unit (or one piece, where the purchase unit is a measure such as MBF) is.
 * nominalThickness, nominalWidth: lumber's named size. thickness, width: actual size. length: of a piece.
 * faceWidth, faceLength: of a panel. coverage: area one unit covers. pieces: pieces in one bundle, box or bag. weight: of one unit.
 */
export const DIMENSION_NAMES = [
  "nominalThickness",
  "nominalWidth",
  "thickness",
  "width",
  "length",
  "faceWidth",
  "faceLength",
  "coverage",
  "pieces",
  "weight",
] as const;
export type DimensionName = (typeof DIMENSION_NAMES)[number];
export type Dimensions = Readonly<Partial<Record<DimensionName, Quantity>>>;

/** A thing bought by kind and size. Identity that changes use (category, grade, hand, jamb) makes another material. */
export type Material = Readonly<{
  id: string;
  name: string;
  category: Category;
  purchaseUnit: PurchaseUnit;
  dimensions: Dimensions;
  recheckDays: number | null;
  /** Names of tax components that do not apply to this material (R3). */
  exemptFrom: readonly string[];
  note: string | null;
  archivedOn: LocalDate | null;
}>;
