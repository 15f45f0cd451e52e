import { ONE } from "../decimal.ts";
import { convertFor } from "../materials/convert.ts";
import { DIMENSION_NAMES, type DimensionName, type Material } from "../materials/material.ts";
import { measuresOf } from "../materials/measures.ts";
import type { UnitCode } from "../measure/units.ts";
import { quantityText } from "./money-text.ts";
import { sizeText } from "./size-text.ts";

/** source: where the figure was read; null: nobody said. */
export type SizeRow = Readonly<{ name: DimensionName; text: string; unit: UnitCode; source: string | null }>;
export type MeasureRow = Readonly<{ unit: UnitCode; text: string; exact: string }>;

/** The sizes a material was given, in the order of a form. Rounds: to three places where it is no fraction of an inch. */
export function sizeRows(material: Material, locale: string): SizeRow[] {
  return DIMENSION_NAMES.flatMap((name) => {
    const size = material.dimensions[name];
    if (size === undefined) return [];
    const source = material.sources[name] ?? null;
    return [{ name, text: sizeText(size, locale), unit: size.unit, source }];
  });
}

/** What one purchase unit of a material is in each measure it is compared by. Rounds: to three places, for reading. */
export function measuresOfOne(material: Material, locale: string): MeasureRow[] {
  const one = { value: ONE, unit: material.purchaseUnit };
  return measuresOf(material).flatMap((unit) => {
    const read = unit === material.purchaseUnit ? null : convertFor(material, one, unit);
    return read?.ok ? [{ unit, text: quantityText(read.value, locale), exact: read.value.toFixed() }] : [];
  });
}
