import { PURCHASE_UNITS, type PurchaseUnit, SIZE_UNITS, type UnitCode } from "./units.ts";

/** Ways a unit is written on tags and in lists, beside its own code. "ft" and "m" are lengths; "M" alone is not understood: it is a thousand in one trade and a metre in another. */
const ALIASES: Readonly<Record<string, UnitCode>> = {
  sheets: "sheet",
  sht: "sheet",
  pieces: "piece",
  pc: "piece",
  pcs: "piece",
  ea: "each",
  unit: "each",
  units: "each",
  bundles: "bundle",
  bdl: "bundle",
  rolls: "roll",
  bags: "bag",
  boxes: "box",
  ft: "linear-foot",
  foot: "linear-foot",
  feet: "linear-foot",
  lf: "linear-foot",
  "lin-ft": "linear-foot",
  "linear-ft": "linear-foot",
  "linear-feet": "linear-foot",
  "lineal-foot": "linear-foot",
  "lineal-feet": "linear-foot",
  "'": "linear-foot",
  "′": "linear-foot",
  m: "linear-metre",
  metre: "linear-metre",
  metres: "linear-metre",
  meter: "linear-metre",
  meters: "linear-metre",
  lm: "linear-metre",
  "linear-m": "linear-metre",
  "linear-meter": "linear-metre",
  "linear-metres": "linear-metre",
  "linear-meters": "linear-metre",
  sf: "square-foot",
  sqft: "square-foot",
  "sq-ft": "square-foot",
  ft2: "square-foot",
  "ft²": "square-foot",
  "square-feet": "square-foot",
  sqm: "square-metre",
  "sq-m": "square-metre",
  m2: "square-metre",
  "m²": "square-metre",
  "square-meter": "square-metre",
  "square-metres": "square-metre",
  "square-meters": "square-metre",
  squares: "square",
  bf: "board-foot",
  bdft: "board-foot",
  "bd-ft": "board-foot",
  fbm: "board-foot",
  "board-feet": "board-foot",
  "thousand-board-feet": "mbf",
  mfbm: "mbf",
  "thousand-square-feet": "msf",
  "msf-3/8": "msf-3-8",
  "msf-3/8-basis": "msf-3-8",
  "cu-ft": "cubic-foot",
  ft3: "cubic-foot",
  "ft³": "cubic-foot",
  "cubic-feet": "cubic-foot",
  "cu-yd": "cubic-yard",
  yd3: "cubic-yard",
  "yd³": "cubic-yard",
  "cubic-yards": "cubic-yard",
  m3: "cubic-metre",
  "m³": "cubic-metre",
  "cubic-meter": "cubic-metre",
  "cubic-metres": "cubic-metre",
  "cubic-meters": "cubic-metre",
  lb: "pound",
  lbs: "pound",
  pounds: "pound",
  kg: "kilogram",
  kilograms: "kilogram",
  in: "inch",
  inches: "inch",
  '"': "inch",
  "″": "inch",
  yd: "yard",
  yds: "yard",
  yards: "yard",
  mm: "millimetre",
  millimeter: "millimetre",
  millimetres: "millimetre",
  millimeters: "millimetre",
  cm: "centimetre",
  centimeter: "centimetre",
  centimetres: "centimetre",
  centimeters: "centimetre",
  t: "tonne",
  tonnes: "tonne",
  l: "litre",
  liter: "litre",
  litres: "litre",
  liters: "litre",
  pcf: "pound-per-cubic-foot",
  "lb/ft3": "pound-per-cubic-foot",
  "lb/cu-ft": "pound-per-cubic-foot",
  "kg/m3": "kilogram-per-cubic-metre",
  "kg/m³": "kilogram-per-cubic-metre",
};

const CODES: ReadonlySet<string> = new Set([...PURCHASE_UNITS, ...SIZE_UNITS]);
const BOUGHT_BY: ReadonlySet<string> = new Set(PURCHASE_UNITS);

/**
 * The unit a text names, or null. Capitals, blanks, dots and hyphens do not matter ("MBF", "sq. ft", "linear foot").
 * Units: none converted. Source: abbreviations in common use in the trade (common practice).
 */
export function unitNamed(text: string): UnitCode | null {
  if (text.trim() === "M") return null;
  const key = text
    .trim()
    .toLowerCase()
    .replaceAll(".", "")
    .replaceAll(/[\s_-]+/g, "-");
  if (CODES.has(key)) return key as UnitCode;
  return Object.hasOwn(ALIASES, key) ? (ALIASES[key] ?? null) : null;
}

/** The same for units a price or quantity may be stated in; null for a unit that only measures a size. */
export function purchaseUnitNamed(text: string): PurchaseUnit | null {
  const unit = unitNamed(text);
  return unit !== null && BOUGHT_BY.has(unit) ? (unit as PurchaseUnit) : null;
}
