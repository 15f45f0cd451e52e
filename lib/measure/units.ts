import { type Decimal, decimal } from "../decimal.ts";

/**
 * What a unit measures. "board" is nominal lumber measure and "panel" nominal panel measure, both kept apart from real
 * volume; "density" is mass by volume, for a material's figures only; "count" is things as sold.
 */
export type Dimension = "count" | "length" | "area" | "board" | "panel" | "volume" | "mass" | "density";

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
  "msf-3-8",
  "cubic-foot",
  "cubic-yard",
  "cubic-metre",
  "pound",
  "kilogram",
] as const;
export type PurchaseUnit = (typeof PURCHASE_UNITS)[number];

/** Further units, for dimensions of a material only. */
export const SIZE_UNITS = [
  "inch",
  "yard",
  "millimetre",
  "centimetre",
  "tonne",
  "litre",
  "pound-per-cubic-foot",
  "kilogram-per-cubic-metre",
] as const;
export type UnitCode = PurchaseUnit | (typeof SIZE_UNITS)[number];

export type Quantity = Readonly<{ value: Decimal; unit: UnitCode }>;

/**
 * A unit: what it measures and how many base units it is, exactly. Base units: metre, square metre, cubic metre,
 * kilogram, kilogram per cubic metre, board foot, cubic metre of nominal panel; a counted thing is only ever itself
 * (`lib/materials` knows how things relate).
 * rec20: its live code in UN/CEFACT Recommendation 20 (revision 17e, 2021); null where the code was deleted or none is.
 */
export type Unit = Readonly<{
  dimension: Dimension;
  factor: Decimal;
  rec20: string | null;
  source: string;
}>;

const COUNTED = "a thing as sold";
const YARD_AND_POUND = "international yard and pound agreement of 1959";
const SI = "International System of Units";
const BOARD = "board measure: 1 ft x 1 ft x 1 in nominal; M is a thousand";
const PANEL = "thousand square feet of 3/8 in nominal thickness";

/** 0.45359237 kg in 0.028316846592 m3: the only factor that does not end, to 40 digits. */
const POUND_PER_CUBIC_FOOT = decimal("0.45359237").dividedBy("0.028316846592").toString();

function unit(dimension: Dimension, factor: string, rec20: string | null, source: string): Unit {
  return { dimension, factor: decimal(factor), rec20, source };
}

/** Every unit with its exact factor. 1 inch = 25.4 mm and 1 pound = 0.45359237 kg by definition; the rest follows. */
export const UNITS: Readonly<Record<UnitCode, Unit>> = {
  sheet: unit("count", "1", null, COUNTED),
  piece: unit("count", "1", "H87", COUNTED),
  each: unit("count", "1", "EA", COUNTED),
  bundle: unit("count", "1", null, COUNTED),
  roll: unit("count", "1", null, COUNTED),
  bag: unit("count", "1", null, COUNTED),
  box: unit("count", "1", null, COUNTED),
  inch: unit("length", "0.0254", "INH", YARD_AND_POUND),
  "linear-foot": unit("length", "0.3048", "LF", YARD_AND_POUND),
  yard: unit("length", "0.9144", "YRD", YARD_AND_POUND),
  millimetre: unit("length", "0.001", "MMT", SI),
  centimetre: unit("length", "0.01", "CMT", SI),
  "linear-metre": unit("length", "1", "LM", SI),
  "square-foot": unit("area", "0.09290304", "FTK", YARD_AND_POUND),
  "square-metre": unit("area", "1", "MTK", SI),
  square: unit("area", "9.290304", "SQR", "roofing square: 100 square feet"),
  msf: unit("area", "92.90304", null, "thousand square feet, surface measure"),
  "board-foot": unit("board", "1", "BFT", BOARD),
  mbf: unit("board", "1000", "MBF", BOARD),
  "msf-3-8": unit("panel", "0.884901456", null, PANEL),
  "cubic-foot": unit("volume", "0.028316846592", "FTQ", YARD_AND_POUND),
  "cubic-yard": unit("volume", "0.764554857984", "YDQ", YARD_AND_POUND),
  "cubic-metre": unit("volume", "1", "MTQ", SI),
  litre: unit("volume", "0.001", "LTR", SI),
  pound: unit("mass", "0.45359237", "LBR", YARD_AND_POUND),
  kilogram: unit("mass", "1", "KGM", SI),
  tonne: unit("mass", "1000", "TNE", SI),
  "kilogram-per-cubic-metre": unit("density", "1", null, SI),
  "pound-per-cubic-foot": unit("density", POUND_PER_CUBIC_FOOT, null, YARD_AND_POUND),
};

/** Whether a unit counts things ("3 pieces") and does not measure them ("3 ft"). */
export function isCounted(unit: UnitCode): boolean {
  return UNITS[unit].dimension === "count";
}
