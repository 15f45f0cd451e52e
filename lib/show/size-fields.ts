import type { Category, DimensionName } from "../materials/material.ts";
import { DIMENSION_NAMES } from "../materials/material.ts";
import type { PurchaseUnit, UnitCode } from "../measure/units.ts";

/** A size asked for: its name and the unit its field begins with. */
export type SizeField = Readonly<{ name: DimensionName; unit: UnitCode }>;
type CategoryForm = Readonly<{ unit: PurchaseUnit; sizes: readonly SizeField[] }>;

const inch = (name: DimensionName): SizeField => ({ name, unit: "inch" });
const foot = (name: DimensionName): SizeField => ({ name, unit: "linear-foot" });
const area: SizeField = { name: "coverage", unit: "square-foot" };
const pieces: SizeField = { name: "pieces", unit: "piece" };
const weight: SizeField = { name: "weight", unit: "pound" };
const made: SizeField = { name: "yield", unit: "cubic-foot" };
const run: SizeField = { name: "coverageLength", unit: "linear-foot" };

/** What a form asks about each category first, and the unit it is usually bought by. Common practice; anything else can be added. */
const FORMS: Readonly<Record<Category, CategoryForm>> = {
  "sheet-goods": {
    unit: "sheet",
    sizes: [inch("nominalThickness"), inch("thickness"), foot("faceWidth"), foot("faceLength")],
  },
  "dimensional-lumber": {
    unit: "piece",
    sizes: [inch("nominalThickness"), inch("nominalWidth"), foot("length"), inch("thickness"), inch("width")],
  },
  doors: { unit: "each", sizes: [inch("width"), inch("length"), inch("thickness"), inch("jambDepth")] },
  windows: { unit: "each", sizes: [inch("width"), inch("length")] },
  roofing: { unit: "bundle", sizes: [area, run, pieces] },
  siding: { unit: "piece", sizes: [foot("length"), inch("coverageWidth"), area] },
  insulation: { unit: "bag", sizes: [area, inch("thickness"), pieces] },
  masonry: { unit: "bag", sizes: [weight, made, area, pieces] },
  fasteners: { unit: "box", sizes: [pieces, weight, inch("length")] },
  other: { unit: "each", sizes: [foot("length"), area, pieces] },
};

const USUAL_UNIT: Readonly<Record<DimensionName, UnitCode>> = {
  nominalThickness: "inch",
  nominalWidth: "inch",
  thickness: "inch",
  width: "inch",
  length: "linear-foot",
  faceWidth: "linear-foot",
  faceLength: "linear-foot",
  coverageWidth: "inch",
  coverage: "square-foot",
  coverageLength: "linear-foot",
  yield: "cubic-foot",
  pieces: "piece",
  perLift: "piece",
  weight: "pound",
  density: "pound-per-cubic-foot",
  jambDepth: "inch",
};

/** The unit a category is usually bought by. */
export function usualPurchaseUnit(category: Category): PurchaseUnit {
  return FORMS[category].unit;
}

/** The sizes asked for first, and the rest, each in the order of a form. */
export function sizeFields(category: Category): Readonly<{ first: SizeField[]; rest: SizeField[] }> {
  const { sizes } = FORMS[category];
  const rest = DIMENSION_NAMES.filter((name) => !sizes.some((size) => size.name === name));
  return { first: [...sizes], rest: rest.map((name) => ({ name, unit: USUAL_UNIT[name] })) };
}

/** The units a size can be given in. */
export function unitsOfSize(name: DimensionName): UnitCode[] {
  if (name === "coverage") return ["square-foot", "square-metre", "square"];
  if (name === "pieces" || name === "perLift") return ["piece"];
  if (name === "yield") return ["cubic-foot", "cubic-yard", "litre", "cubic-metre"];
  if (name === "density") return ["pound-per-cubic-foot", "kilogram-per-cubic-metre"];
  if (name === "weight") return ["pound", "kilogram"];
  return ["inch", "linear-foot", "millimetre", "centimetre", "linear-metre"];
}
