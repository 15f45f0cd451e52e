import type { LocalDate } from "../calendar/local-date.ts";
import type { PurchaseUnit, Quantity } from "../measure/units.ts";
import type { Identity } from "./identity.ts";

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
 * nominalThickness, nominalWidth: the named size of lumber; of a panel the thickness category stamped on it. thickness,
 * width: actual size. length: of a piece. faceWidth, faceLength: of a panel. coverageWidth: what a lapped panel or board
 * covers of its width. coverage: area one unit covers. coverageLength: run one unit covers. yield: volume one unit makes.
 * pieces: pieces in one bundle, box or bag. perLift: purchase units in a lift or on a pallet. weight: of one unit.
 * density: of the actual wood, where the weight follows from the size. jambDepth: of a door with its frame.
 */
export const DIMENSION_NAMES = [
  "nominalThickness",
  "nominalWidth",
  "thickness",
  "width",
  "length",
  "faceWidth",
  "faceLength",
  "coverageWidth",
  "coverage",
  "coverageLength",
  "yield",
  "pieces",
  "perLift",
  "weight",
  "density",
  "jambDepth",
] as const;
export type DimensionName = (typeof DIMENSION_NAMES)[number];
export type Dimensions = Readonly<Partial<Record<DimensionName, Quantity>>>;

/** Figures of a material that someone published, or that are common practice: each may say where it was read. */
export const FIGURE_NAMES = [...DIMENSION_NAMES, "shelfLifeDays"] as const;
export type FigureName = (typeof FIGURE_NAMES)[number];
export type Sources = Readonly<Partial<Record<FigureName, string>>>;

/** A thing bought by kind and size. Identity that changes use (thickness category, grade, hand, jamb) makes another material. */
export type Material = Readonly<{
  id: string;
  name: string;
  category: Category;
  purchaseUnit: PurchaseUnit;
  dimensions: Dimensions;
  identity: Identity;
  /** Days it keeps unopened and stored as it should be; null: no limit known. */
  shelfLifeDays: number | null;
  sources: Sources;
  recheckDays: number | null;
  /** Names of tax components that do not apply to this material (R3). */
  exemptFrom: readonly string[];
  note: string | null;
  archivedOn: LocalDate | null;
}>;
